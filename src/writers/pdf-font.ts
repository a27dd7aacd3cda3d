/** The lettering's font in a PDF: read once for many documents, and set letter by letter as drawings measure it. */
import { glyphOf } from '../drawing/glyphs.js';

/** What pdfkit asks of a font, and what we use of it. Lengths in font units. */
interface Face {
  glyphForCodePoint(code: number): FaceGlyph;
  layout(text: string): FaceRun;
}

interface FaceGlyph {
  readonly advanceWidth: number;
}

/** pdfkit scales the positions in place and then asks for the advance width: hence it is worked out when asked for. */
interface FaceRun {
  readonly glyphs: FaceGlyph[];
  readonly positions: { xAdvance: number; yAdvance: number; xOffset: number; yOffset: number }[];
  readonly advanceWidth: number;
}

const faces = new WeakMap<Uint8Array, Face>();

/** Makes the font the document's own. Reading its tables takes longer than a page: the same bytes are read once only. */
export function useFont(document: PDFKit.PDFDocument, bytes: Uint8Array): void {
  const known = faces.get(bytes);
  // pdfkit takes a font that it has read before as well as bytes, but its types don't say so
  document.font((known ?? bytes) as Uint8Array);
  if (known) return;
  const { font } = (document as unknown as { _font: { font: Face } })._font;
  font.layout = (text) => layOut(font, text);
  faces.set(bytes, font);
}

/** Each character is one letter, as wide and as kerned as in `textWidth`: no ligatures, so that every box holds. */
function layOut(face: Face, text: string): FaceRun {
  const characters = [...text];
  const positions = characters.map((character, i) => {
    const { advance, kerning } = glyphOf(character);
    const xAdvance = advance + (kerning.get(characters[i + 1] ?? '') ?? 0);
    return { xAdvance, yAdvance: 0, xOffset: 0, yOffset: 0 };
  });
  return {
    glyphs: characters.map((character) => face.glyphForCodePoint(character.codePointAt(0)!)),
    positions,
    get advanceWidth() {
      return positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    },
  };
}
