/**
 * As much of a TrueType font as a PDF needs: its tables, which glyph a character has, and the outlines of glyphs as bytes.
 * Apple TrueType Reference Manual, ISO/IEC 14496-22: the tables `cmap`, `loca`, `glyf`, `head`.
 */

export interface TrueType {
  readonly tables: ReadonlyMap<string, Uint8Array>;
  readonly glyphCount: number;
  /** number of the glyph of a code point; 0, the box, for one that the font lacks */
  glyphOf(codePoint: number): number;
  /** the outline's bytes, none for a space */
  outlineOf(glyph: number): Uint8Array;
}

/** Throws when the bytes are no TrueType font with a Unicode table of characters. */
export function readTrueType(bytes: Uint8Array): TrueType {
  const tables = tablesOf(bytes);
  const table = (tag: string): Uint8Array => {
    const found = tables.get(tag);
    if (!found) throw new Error(`not a TrueType font: it has no table ${tag}`);
    return found;
  };
  const outlines = table('glyf');
  const places = placesOf(table('loca'), viewOf(table('head')).getInt16(50) === 1);
  return {
    tables,
    glyphCount: viewOf(table('maxp')).getUint16(4),
    glyphOf: characterMap(table('cmap')),
    outlineOf: (glyph) => outlines.subarray(places(glyph), places(glyph + 1)),
  };
}

export function viewOf({ buffer, byteOffset, byteLength }: Uint8Array): DataView {
  return new DataView(buffer, byteOffset, byteLength);
}

function tablesOf(bytes: Uint8Array): Map<string, Uint8Array> {
  const view = viewOf(bytes);
  const tables = new Map<string, Uint8Array>();
  const count = bytes.length < 12 ? 0 : view.getUint16(4);
  for (let at = 12; at < 12 + 16 * count && at + 16 <= bytes.length; at += 16) {
    const tag = String.fromCharCode(...bytes.subarray(at, at + 4));
    const start = view.getUint32(at + 8);
    tables.set(tag, bytes.subarray(start, start + view.getUint32(at + 12)));
  }
  return tables;
}

/** Where a glyph's outline starts in `glyf`: short offsets count in pairs of bytes. */
function placesOf(loca: Uint8Array, long: boolean): (glyph: number) => number {
  const view = viewOf(loca);
  return long ? (glyph) => view.getUint32(4 * glyph) : (glyph) => 2 * view.getUint16(2 * glyph);
}

/** The table of format 4 for Unicode's basic plane: segments of successive code points. */
function characterMap(cmap: Uint8Array): (codePoint: number) => number {
  const view = viewOf(cmap);
  const start = subtable(view, 4);
  const twice = view.getUint16(start + 6);
  const ends = start + 14;
  const starts = ends + twice + 2;
  return (codePoint) => {
    if (codePoint >= 0xffff) return 0;
    let at = 0;
    while (view.getUint16(ends + at) < codePoint) at += 2;
    const first = view.getUint16(starts + at);
    if (codePoint < first) return 0;
    const delta = view.getUint16(starts + twice + at);
    const offsets = starts + 2 * twice + at;
    const offset = view.getUint16(offsets);
    if (offset === 0) return (codePoint + delta) & 0xffff;
    const glyph = view.getUint16(offsets + offset + 2 * (codePoint - first));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  };
}

function subtable(view: DataView, format: number): number {
  const count = view.getUint16(2);
  for (let at = 4; at < 4 + 8 * count; at += 8) {
    const [platform, start] = [view.getUint16(at), view.getUint32(at + 4)];
    if ((platform === 0 || platform === 3) && view.getUint16(start) === format) return start;
  }
  throw new Error(`a font without a Unicode table of characters in format ${format}`);
}
