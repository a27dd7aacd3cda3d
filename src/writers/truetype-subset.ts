/**
 * A TrueType font with the outlines of some glyphs only. Glyphs keep their numbers, so that a PDF can name them by those;
 * the others are empty.
 */
import { viewOf, type TrueType } from './truetype.js';

/** What a PDF asks of an embedded font, in the order of their tags (ISO 32000-1, 9.9); the last three are hints, if any. */
const kept = ['cvt ', 'fpgm', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp', 'prep'];

export function subsetOf(font: TrueType, glyphs: Iterable<number>): Uint8Array {
  const { glyf, loca } = outlinesOf(font, withParts(font, glyphs));
  const head = font.tables.get('head')!.slice();
  const longPlaces = 1;
  viewOf(head).setUint32(8, 0);
  viewOf(head).setInt16(50, longPlaces);
  const made = new Map([...font.tables, ['glyf', glyf], ['loca', loca], ['head', head]] as const);
  const tables = kept.filter((tag) => made.has(tag)).map((tag) => [tag, made.get(tag)!] as const);
  return written(tables);
}

/** These, the box for what the font lacks, and the glyphs that any of them is put together from. */
function withParts(font: TrueType, glyphs: Iterable<number>): Set<number> {
  const all = new Set<number>([0, ...glyphs]);
  // a set hands out what is added while it is gone through
  for (const glyph of all) for (const part of partsOf(font.outlineOf(glyph))) all.add(part);
  return all;
}

const flag = { wordArguments: 1, scale: 8, more: 32, twoScales: 64, matrix: 128 };

/** Numbers of the glyphs that a composite outline consists of. */
function partsOf(outline: Uint8Array): number[] {
  const view = viewOf(outline);
  const parts: number[] = [];
  if (outline.length === 0 || view.getInt16(0) >= 0) return parts;
  for (let at = 10, flags = flag.more; flags & flag.more;) {
    flags = view.getUint16(at);
    parts.push(view.getUint16(at + 2));
    at += 4 + (flags & flag.wordArguments ? 4 : 2);
    if (flags & flag.scale) at += 2;
    if (flags & flag.twoScales) at += 4;
    if (flags & flag.matrix) at += 8;
  }
  return parts;
}

function outlinesOf(
  font: TrueType,
  glyphs: ReadonlySet<number>,
): { glyf: Uint8Array; loca: Uint8Array } {
  const loca = new Uint8Array(4 * (font.glyphCount + 1));
  const places = viewOf(loca);
  const outlines: Uint8Array[] = [];
  let length = 0;
  for (let glyph = 0; glyph < font.glyphCount; glyph++) {
    if (glyphs.has(glyph)) {
      const outline = font.outlineOf(glyph);
      outlines.push(outline);
      length += padded(outline.length);
    }
    places.setUint32(4 * (glyph + 1), length);
  }
  const glyf = new Uint8Array(length);
  let at = 0;
  for (const outline of outlines) {
    glyf.set(outline, at);
    at += padded(outline.length);
  }
  return { glyf, loca };
}

/** Tables and outlines start at multiples of four bytes. */
function padded(length: number): number {
  return (length + 3) & ~3;
}

function written(tables: readonly (readonly [tag: string, bytes: Uint8Array])[]): Uint8Array {
  const directory = 12 + 16 * tables.length;
  const whole = new Uint8Array(
    tables.reduce((sum, [, { length }]) => sum + padded(length), directory),
  );
  const view = viewOf(whole);
  const log = Math.floor(Math.log2(tables.length));
  view.setUint32(0, 0x00010000);
  view.setUint16(4, tables.length);
  view.setUint16(6, 16 * 2 ** log);
  view.setUint16(8, log);
  view.setUint16(10, 16 * (tables.length - 2 ** log));
  let place = directory;
  let headPlace = 0;
  tables.forEach(([tag, bytes], i) => {
    whole.set(bytes, place);
    const entry = 12 + 16 * i;
    for (let k = 0; k < 4; k++) whole[entry + k] = tag.charCodeAt(k);
    view.setUint32(entry + 4, checksum(view, place, padded(bytes.length)));
    view.setUint32(entry + 8, place);
    view.setUint32(entry + 12, bytes.length);
    if (tag === 'head') headPlace = place;
    place += padded(bytes.length);
  });
  view.setUint32(headPlace + 8, (0xb1b0afba - checksum(view, 0, whole.length)) >>> 0);
  return whole;
}

/** The sum of the words, in 32 bits. */
function checksum(view: DataView, start: number, length: number): number {
  let sum = 0;
  for (let at = start; at < start + length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}
