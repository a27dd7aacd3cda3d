/** Sheets as a PDF. The only file that knows pdfkit, which is slow to start: import it when a PDF is asked for. */
import PDFDocument from 'pdfkit';
import { printable } from '../drawing/lettering.js';
import type { Sheet } from '../sheets/sheet.js';
import type { Pack } from './pdf-face.js';
import { PdfFont } from './pdf-font.js';
import { drawSheet, PdfPaths } from './pdf-sheet.js';

export interface PdfOptions {
  readonly title: string;
  /** a TrueType font; hand over the same array for every document, and it is read once */
  readonly font: Uint8Array;
  /** deflates all that is deflated, and the font once for all documents; without it pdfkit does, in its own way */
  readonly pack?: Pack;
}

/** pdfkit wants a date and its files are numbered by it: a fixed one, so that the same sheets give the same bytes. */
const noDate = new Date(0);

/** The whole file. Rejects when a sheet has a coordinate that isn't finite. */
export async function toPdf(sheets: readonly Sheet[], options: PdfOptions): Promise<Uint8Array> {
  const document = new PDFDocument({
    autoFirstPage: false,
    // no built-in font: a bundle doesn't carry their metrics
    font: '',
    info: {
      Title: printable(options.title),
      Creator: 'Staveloft',
      Producer: 'Staveloft',
      CreationDate: noDate,
    },
  });
  const bytes = collect(document);
  if (options.pack) packWith(document, options.pack);
  switchOffScaling(document);
  const font = new PdfFont(document, options.font, options.pack);
  const resources = { font, paths: new PdfPaths() };
  for (const sheet of sheets) drawSheet(document, resources, sheet);
  font.end();
  document.end();
  return bytes;
}

/** ISO 32000-1, 12.2: the print dialogue starts at actual size. pdfkit ends this object itself. */
function switchOffScaling(document: PDFKit.PDFDocument): void {
  const { data } = (document as unknown as { _root: { data: Record<string, unknown> } })._root;
  data['ViewerPreferences'] = document.ref({ PrintScaling: 'None' });
}

/** An object of the file that may have a stream. pdfkit's types show less than it offers. */
interface Reference {
  compress: boolean;
  buffer: Uint8Array[];
  finalize(): void;
}

/** pdfkit has no setting for how streams are deflated. */
function packWith(document: PDFKit.PDFDocument, pack: Pack): void {
  const maker = document as unknown as { ref(data?: object): Reference };
  const make = maker.ref.bind(document);
  maker.ref = (data) => {
    const reference = make(data);
    const finalize = reference.finalize.bind(reference);
    reference.finalize = () => {
      if (reference.compress && reference.buffer.length > 0) {
        reference.buffer = [pack(joined(reference.buffer))];
        reference.compress = false;
      }
      finalize();
    };
    return reference;
  };
}

function collect(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    document.on('end', () => resolve(joined(chunks)));
    document.on('error', reject);
  });
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
