/**
 * The lettering's font in a PDF, set letter by letter as drawings measure it. pdfkit can embed fonts, but the package
 * that it reads them with takes as long to load and to run as all the rest of a page; a font whose letters stand in the
 * order of the text, one glyph a character, needs five small objects (ISO 32000-1, 9.7 and 9.10.3).
 */
import { capHeight, glyphOf } from '../drawing/glyphs.js';
import { formatNumber } from './number.js';
import { readTrueType, viewOf, type TrueType } from './truetype.js';
import { subsetOf } from './truetype-subset.js';

/** Units of the font to its size, and of a PDF's widths. */
const unitsPerEm = 2048;
const inThousandths = 1000 / unitsPerEm;

/** Size of the font, in mm, at which its capitals are 1 mm high. */
export const sizeForCapitals = unitsPerEm / capHeight;

/** Its name on every page. */
const resource = 'F1';
/** Subsets are told by six capitals. */
const baseFont = 'STAVES+DejaVuSans';

/** An object of the file. pdfkit's types show less than it offers. */
interface Reference {
  readonly data: Record<string, unknown>;
  write(chunk: string | Uint8Array): void;
  end(chunk?: string | Uint8Array): void;
}

const faces = new WeakMap<Uint8Array, TrueType>();

/** One document's font: name it on a page, set text in it, and write it when all text is set. */
export class PdfFont {
  private readonly face: TrueType;
  private readonly reference: Reference;
  /** the glyphs used, each with a character that it shows */
  private readonly used = new Map<number, string>();
  private readonly encoded = new Map<string, string>();
  /** by the character, as it is written */
  private readonly codes = new Map<string, string>();

  /** Reads the same bytes once only. Throws when they are no TrueType font. */
  constructor(
    private readonly document: PDFKit.PDFDocument,
    bytes: Uint8Array,
  ) {
    const face = faces.get(bytes) ?? readTrueType(bytes);
    faces.set(bytes, face);
    this.face = face;
    this.reference = this.object({});
  }

  /** Its name on the current page. */
  name(): string {
    const { fonts } = this.document.page as unknown as { fonts: Record<string, unknown> };
    fonts[resource] ??= this.reference;
    return `/${resource}`;
  }

  /**
   * The text as the operand of TJ: hexadecimal glyph numbers, whatever it says, with kerning between them. Each character
   * is one letter, as wide and as kerned as in `textWidth`: no ligatures, so that every box holds.
   */
  encode(text: string): string {
    const before = this.encoded.get(text);
    if (before !== undefined) return before;
    const encoded = this.encodeAnew(text);
    this.encoded.set(text, encoded);
    return encoded;
  }

  private encodeAnew(text: string): string {
    let operand = '[<';
    let at = 0;
    let character = characterAt(text, at);
    while (character !== '') {
      at += character.length;
      const next = characterAt(text, at);
      operand += this.codeOf(character);
      const kern = glyphOf(character).kerning.get(next);
      if (kern) operand += `> ${formatNumber(-kern * inThousandths)} <`;
      character = next;
    }
    return `${operand}>]`;
  }

  private codeOf(character: string): string {
    return this.codes.get(character) ?? this.codeAnew(character);
  }

  private codeAnew(character: string): string {
    const glyph = this.face.glyphOf(character.codePointAt(0)!);
    if (!this.used.has(glyph)) this.used.set(glyph, character);
    const code = hex(glyph);
    this.codes.set(character, code);
    return code;
  }

  /** Writes the font, with what the document uses of it. */
  end(): void {
    const glyphs = [...this.used.keys()].sort((a, b) => a - b);
    const toUnicode = this.object({});
    toUnicode.end(characterMap(glyphs.map((glyph) => [glyph, this.used.get(glyph)!])));
    Object.assign(this.reference.data, {
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: baseFont,
      Encoding: 'Identity-H',
      DescendantFonts: [this.descendant(glyphs)],
      ToUnicode: toUnicode,
    });
    this.reference.end();
  }

  private descendant(glyphs: readonly number[]): Reference {
    const widthOf = (glyph: number): number =>
      glyphOf(this.used.get(glyph)!).advance * inThousandths;
    const descendant = this.object({
      Type: 'Font',
      Subtype: 'CIDFontType2',
      BaseFont: baseFont,
      CIDSystemInfo: {
        // pdfkit writes these as strings, not as names
        Registry: new String('Adobe'),
        Ordering: new String('Identity'),
        Supplement: 0,
      },
      CIDToGIDMap: 'Identity',
      FontDescriptor: this.descriptor(glyphs),
      W: glyphs.flatMap((glyph) => [glyph, [widthOf(glyph)]]),
    });
    descendant.end();
    return descendant;
  }

  /** Heights from the font's own tables; a non-symbolic flag would promise an encoding that isn't used. */
  private descriptor(glyphs: readonly number[]): Reference {
    const head = viewOf(this.face.tables.get('head')!);
    const hhea = viewOf(this.face.tables.get('hhea')!);
    const file = this.object({});
    file.write(subsetOf(this.face, glyphs));
    file.end();
    const symbolic = 4;
    const descriptor = this.object({
      Type: 'FontDescriptor',
      FontName: baseFont,
      Flags: symbolic,
      FontBBox: [36, 38, 40, 42].map((at) => head.getInt16(at) * inThousandths),
      ItalicAngle: 0,
      Ascent: hhea.getInt16(4) * inThousandths,
      Descent: hhea.getInt16(6) * inThousandths,
      CapHeight: capHeight * inThousandths,
      // unknown to the font; 0 says so
      StemV: 0,
      FontFile2: file,
    });
    descriptor.end();
    return descriptor;
  }

  private object(data: Record<string, unknown>): Reference {
    return this.document.ref(data) as unknown as Reference;
  }
}

/** The character that begins there; empty past the end. */
function characterAt(text: string, at: number): string {
  return at < text.length ? String.fromCodePoint(text.codePointAt(at)!) : '';
}

function hex(number: number): string {
  return number.toString(16).padStart(4, '0');
}

/** ISO 32000-1, 9.10.3: at most a hundred entries to a block. */
const longestBlock = 100;

/** Which character each glyph shows, so that text can be searched and copied. */
function characterMap(pairs: readonly (readonly [glyph: number, character: string])[]): string {
  const blocks: string[] = [];
  for (let i = 0; i < pairs.length; i += longestBlock) {
    const block = pairs.slice(i, i + longestBlock);
    const lines = block.map(([glyph, character]) => `<${hex(glyph)}> <${utf16(character)}>`);
    blocks.push(`${block.length} beginbfchar`, ...lines, 'endbfchar');
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<0000> <ffff>',
    'endcodespacerange',
    ...blocks,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n');
}

function utf16(character: string): string {
  return Array.from({ length: character.length }, (_, i) => hex(character.charCodeAt(i))).join('');
}
