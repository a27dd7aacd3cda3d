/**
 * What all documents set in one font have in common: every text as it is written, and parts of the font ready to be embedded.
 * All of them embed the basic letters, whether they use them or not: so nearly all embed the same part, which is put together once.
 */
import { glyphOf } from '../drawing/glyphs.js';
import { keptByText } from '../drawing/kept.js';
import { formatNumber } from './number.js';
import { characterMap, hex } from './pdf-character-map.js';
import { readTrueType, type TrueType } from './truetype.js';
import { subsetOf } from './truetype-subset.js';

/** Units of the font to its size, and of a PDF's widths. */
export const unitsPerEm = 2048;
export const inThousandths = 1000 / unitsPerEm;

/** A text as the operand of TJ, and which characters beyond the basic ones it has. */
interface Encoded {
  readonly operand: string;
  readonly beyond: readonly string[];
}

/** A part of the font, with what a PDF says of it (ISO 32000-1, 9.7.4.3 and 9.10.3). */
interface Part {
  readonly file: Uint8Array;
  /** by turns the first glyph of a run, and the widths of its glyphs */
  readonly widths: readonly (number | number[])[];
  readonly characterMap: Uint8Array;
}

/** Deflates bytes (RFC 1950). */
export type Pack = (bytes: Uint8Array) => Uint8Array;

/** From the blank to the tilde. */
const basic = Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i));
const isBasic = (character: string): boolean => character >= ' ' && character <= '~';

/** Texts are kept until there are so many: a page may print again and again. */
const mostTexts = 20_000;

const faces = new WeakMap<Uint8Array, PdfFace>();

/** The same bytes are read once only. Throws when they are no TrueType font. */
export function faceOf(bytes: Uint8Array): PdfFace {
  const face = faces.get(bytes) ?? new PdfFace(readTrueType(bytes));
  faces.set(bytes, face);
  return face;
}

export class PdfFace {
  private readonly codes = new Map<string, string>();
  /** by the characters beyond the basic ones */
  private readonly parts = new Map<string, Part>();
  private readonly packed = new WeakMap<Uint8Array, Uint8Array>();

  constructor(readonly font: TrueType) {}

  /**
   * Hexadecimal glyph numbers, whatever the text says, with kerning between them. Each character is one letter, as wide and as
   * kerned as in `textWidth`: no ligatures, so that every box holds.
   */
  readonly encode = keptByText(mostTexts, (text) => this.encodeAnew(text));

  private encodeAnew(text: string): Encoded {
    const beyond: string[] = [];
    let operand = '[<';
    let at = 0;
    let character = characterAt(text, at);
    while (character !== '') {
      at += character.length;
      const next = characterAt(text, at);
      operand += this.codes.get(character) ?? this.codeAnew(character);
      if (!isBasic(character)) beyond.push(character);
      const kern = glyphOf(character).kerning.get(next);
      if (kern) operand += `> ${formatNumber(-kern * inThousandths)} <`;
      character = next;
    }
    return { operand: `${operand}>]`, beyond };
  }

  private codeAnew(character: string): string {
    const code = hex(this.numberOf(character));
    this.codes.set(character, code);
    return code;
  }

  private numberOf(character: string): number {
    return this.font.glyphOf(character.codePointAt(0)!);
  }

  /** The part with the basic letters and those `beyond` them. */
  part(beyond: ReadonlySet<string>): Part {
    const more = [...beyond].sort();
    const key = more.join('');
    const made = this.parts.get(key) ?? this.partWith(more);
    this.parts.set(key, made);
    return made;
  }

  /** Bytes of a part, deflated once only. */
  packedOnce(bytes: Uint8Array, pack: Pack): Uint8Array {
    const packed = this.packed.get(bytes) ?? pack(bytes);
    this.packed.set(bytes, packed);
    return packed;
  }

  private partWith(beyond: readonly string[]): Part {
    /** the glyphs, each with a character that it shows */
    const shown = new Map<number, string>();
    for (const character of [...basic, ...beyond]) {
      const glyph = this.numberOf(character);
      if (!shown.has(glyph)) shown.set(glyph, character);
    }
    const pairs = [...shown].sort(([a], [b]) => a - b);
    return {
      file: subsetOf(this.font, shown.keys()),
      widths: inRuns(pairs),
      characterMap: new TextEncoder().encode(characterMap(pairs)),
    };
  }
}

function inRuns(pairs: readonly (readonly [glyph: number, character: string])[]) {
  const runs: (number | number[])[] = [];
  let run: number[] = [];
  let after = -1;
  for (const [glyph, character] of pairs) {
    if (glyph !== after) runs.push(glyph, (run = []));
    run.push(Number((glyphOf(character).advance * inThousandths).toFixed(3)));
    after = glyph + 1;
  }
  return runs;
}

/** The character that begins there; empty past the end. */
function characterAt(text: string, at: number): string {
  return at < text.length ? String.fromCodePoint(text.codePointAt(at)!) : '';
}
