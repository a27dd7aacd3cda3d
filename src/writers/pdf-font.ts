/** The lettering's font in a PDF: read once for many documents, and set letter by letter as drawings measure it. */
import { capHeight, glyphOf } from '../drawing/glyphs.js';
import { formatNumber } from './number.js';

/** Size of the font, in mm, at which its capitals are 1 mm high; it has 2048 units to the em. */
export const sizeForCapitals = 2048 / capHeight;

/** What pdfkit's embedded font offers beside its published types. */
interface EmbeddedFont {
  readonly id: string;
  readonly font: Face;
  ref(): unknown;
  /** hexadecimal glyph numbers of the document's subset, and how far each moves on, in thousandths of the size */
  encode(text: string, features: readonly string[]): [string[], Advance[]];
}

interface Advance {
  readonly xAdvance: number;
  readonly advanceWidth: number;
}

/** What pdfkit asks of a font file, and what we use of it. Lengths in font units. */
interface Face {
  glyphForCodePoint(code: number): unknown;
  layout(text: string): FaceRun;
}

/** pdfkit scales the positions in place and adds each glyph's own width. */
interface FaceRun {
  readonly glyphs: readonly unknown[];
  readonly positions: readonly { xAdvance: number }[];
}

const faces = new WeakMap<Uint8Array, Face>();

/** Makes the font the document's own. Reading its tables takes longer than a page: the same bytes are read once only. */
export function useFont(document: PDFKit.PDFDocument, bytes: Uint8Array): void {
  const known = faces.get(bytes);
  // pdfkit takes a font that it has read before as well as bytes, but its types don't say so
  document.font((known ?? bytes) as Uint8Array);
  if (known) return;
  const { font } = fontOf(document);
  font.layout = (text) => layOut(font, text);
  faces.set(bytes, font);
}

/** Each character is one letter, as wide and as kerned as in `textWidth`: no ligatures, so that every box holds. */
function layOut(face: Face, text: string): FaceRun {
  const characters = [...text];
  return {
    glyphs: characters.map((character) => face.glyphForCodePoint(character.codePointAt(0)!)),
    positions: characters.map((character, i) => {
      const { advance, kerning } = glyphOf(character);
      return { xAdvance: advance + (kerning.get(characters[i + 1] ?? '') ?? 0) };
    }),
  };
}

/** The name of the font on the current page. */
export function fontName(document: PDFKit.PDFDocument): string {
  const font = fontOf(document);
  const { fonts } = document.page as unknown as { fonts: Record<string, unknown> };
  fonts[font.id] ??= font.ref();
  return `/${font.id}`;
}

/** The text as the operand of TJ: hexadecimal glyph numbers, whatever it says, with kerning between them. */
export function encodeText(document: PDFKit.PDFDocument, text: string): string {
  // with a list of features, even an empty one, pdfkit sets the text in one piece
  const [codes, advances] = fontOf(document).encode(text, []);
  const parts = codes.map((code, i) => {
    const { xAdvance, advanceWidth } = advances[i]!;
    const kern = formatNumber(advanceWidth - xAdvance);
    return kern === '0' || i === codes.length - 1 ? code : `${code}> ${kern} <`;
  });
  return `[<${parts.join('')}>]`;
}

function fontOf(document: PDFKit.PDFDocument): EmbeddedFont {
  return (document as unknown as { _font: EmbeddedFont })._font;
}
