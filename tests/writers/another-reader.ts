/** Fonts as another program reads them. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import opentype from 'opentype.js';
import { readTrueType } from '../../src/writers/truetype.js';

/** The font that ours is cut from. */
export const whole = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
const wholeFont = readTrueType(new Uint8Array(readFileSync(whole)));

/**
 * Read by another program: outlines in font units. It wants tables that a PDF doesn't, whose contents don't matter here.
 */
export function readByAnother(bytes: Uint8Array, map?: Uint8Array): opentype.Font {
  const own = readTables(bytes);
  const tables = new Map(['OS/2', 'name', 'post'].map((tag) => [tag, wholeFont.tables.get(tag)!]));
  for (const [tag, table] of own) tables.set(tag, table);
  if (map) tables.set('cmap', map);
  const parts = [...tables];
  const joined = new Uint8Array(
    parts.reduce((sum, [, { length }]) => sum + length, 12 + 16 * parts.length),
  );
  const view = new DataView(joined.buffer);
  view.setUint32(0, 0x00010000);
  view.setUint16(4, parts.length);
  let place = 12 + 16 * parts.length;
  parts.forEach(([tag, table], i) => {
    [...tag].forEach((letter, k) => view.setUint8(12 + 16 * i + k, letter.charCodeAt(0)));
    view.setUint32(12 + 16 * i + 8, place);
    view.setUint32(12 + 16 * i + 12, table.length);
    joined.set(table, place);
    place += table.length;
  });
  return opentype.parse(joined.buffer);
}

function readTables(bytes: Uint8Array): [string, Uint8Array][] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return Array.from({ length: view.getUint16(4) }, (_, i) => {
    const at = 12 + 16 * i;
    const start = view.getUint32(at + 8);
    const tag = String.fromCharCode(...bytes.subarray(at, at + 4));
    return [tag, bytes.subarray(start, start + view.getUint32(at + 12))];
  });
}
