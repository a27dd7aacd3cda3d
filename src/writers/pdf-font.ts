/**
 * The lettering's font in a PDF, set letter by letter as drawings measure it. pdfkit can embed fonts, but the package
 * that it reads them with takes as long to load and to run as all the rest of a page; a font whose letters stand in the
 * order of the text, one glyph a character, needs five small objects (ISO 32000-1, 9.7 and 9.10.3).
 */
import { capHeight } from '../drawing/glyphs.js';
import { faceOf, inThousandths, unitsPerEm, type Pack, type PdfFace } from './pdf-face.js';
import { viewOf } from './truetype.js';

/** Size of the font, in mm, at which its capitals are 1 mm high. */
export const sizeForCapitals = unitsPerEm / capHeight;

/** Its name on every page. */
const resource = 'F1';
/** Subsets are told by six capitals. */
const baseFont = 'STAVES+DejaVuSans';

/** An object of the file. pdfkit's types show less than it offers. */
interface Reference {
  readonly data: Record<string, unknown>;
  end(chunk?: Uint8Array): void;
}

/** One document's font: name it on a page, set text in it, and write it when all text is set. */
export class PdfFont {
  private readonly face: PdfFace;
  private readonly reference: Reference;
  /** characters beyond the basic ones that the document uses */
  private readonly beyond = new Set<string>();

  /** Reads the same bytes once only. Throws when they are no TrueType font. */
  constructor(
    private readonly document: PDFKit.PDFDocument,
    bytes: Uint8Array,
    private readonly pack?: Pack,
  ) {
    this.face = faceOf(bytes);
    this.reference = this.object({});
  }

  /** Its name on the current page. */
  name(): string {
    const { fonts } = this.document.page as unknown as { fonts: Record<string, unknown> };
    fonts[resource] ??= this.reference;
    return `/${resource}`;
  }

  /** The text as the operand of TJ. */
  encode(text: string): string {
    const { operand, beyond } = this.face.encode(text);
    for (const character of beyond) this.beyond.add(character);
    return operand;
  }

  /** Writes the font, with what the document uses of it. */
  end(): void {
    const { file, widths, characterMap } = this.face.part(this.beyond);
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
      FontDescriptor: this.descriptor(file),
      W: widths,
    });
    descendant.end();
    Object.assign(this.reference.data, {
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: baseFont,
      Encoding: 'Identity-H',
      DescendantFonts: [descendant],
      ToUnicode: this.stream(characterMap),
    });
    this.reference.end();
  }

  /** Heights from the font's own tables; a non-symbolic flag would promise an encoding that isn't used. */
  private descriptor(part: Uint8Array): Reference {
    const { tables } = this.face.font;
    const head = viewOf(tables.get('head')!);
    const hhea = viewOf(tables.get('hhea')!);
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
      FontFile2: this.stream(part),
    });
    descriptor.end();
    return descriptor;
  }

  /** Bytes that many documents have in common. */
  private stream(bytes: Uint8Array): Reference {
    const packed = this.pack && this.face.packedOnce(bytes, this.pack);
    const stream = this.object(packed ? { Length: 0, Filter: 'FlateDecode' } : {});
    stream.end(packed ?? bytes);
    return stream;
  }

  private object(data: Record<string, unknown>): Reference {
    return this.document.ref(data) as unknown as Reference;
  }
}
