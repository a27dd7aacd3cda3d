/**
 * From a drawing or a form to the bytes of a PDF. What is to be printed is plain data, which can be handed to another thread
 * as it is.
 */
import type { Drawing } from './drawing/drawing.js';
import type { Form } from './drawing/form.js';
import { wordsIn, type Language } from './language.js';
import { formSheets } from './sheets/form-sheets.js';
import type { PaperName } from './sheets/paper.js';
import type { Sheet } from './sheets/sheet.js';
import { toSheets, type SheetOptions } from './sheets/sheets.js';
import { sheetWords } from './sheets/words.js';

/** All that a PDF hangs on but its font. */
export interface Printing extends Pick<SheetOptions, 'titleBlock' | 'units' | 'printed'> {
  /** of the file */
  readonly title: string;
  /** a drawing as it is to be seen on this paper, or a form */
  readonly content: { readonly drawing: Drawing } | { readonly form: Form };
  readonly paper: PaperName;
  /** of what is written beside the piece */
  readonly language: Language;
}

/**
 * `font` is a TrueType font; the same array for every file is read once only. `pack` deflates (RFC 1950); without it pdfkit does.
 * Rejects where `toSheets` throws.
 */
export async function printPdf(
  printing: Printing,
  font: Uint8Array,
  pack?: (bytes: Uint8Array) => Uint8Array,
): Promise<Uint8Array> {
  const sheets = await sheetsOf(printing);
  const { toPdf } = await import('./writers/pdf.js');
  return toPdf(sheets, { title: printing.title, font, ...(pack && { pack }) });
}

async function sheetsOf({ content, language, ...given }: Printing): Promise<Sheet[]> {
  const options = { ...given, words: await wordsIn(sheetWords, language) };
  return 'form' in content ? formSheets(content.form, options) : toSheets(content.drawing, options);
}
