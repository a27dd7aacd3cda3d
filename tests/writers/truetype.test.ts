import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { drawable, glyphOf } from '../../src/drawing/glyphs.js';
import { subsetOf } from '../../src/writers/truetype-subset.js';
import { readTrueType } from '../../src/writers/truetype.js';
import { readByAnother, whole } from './another-reader.js';

const ours = new URL('../../fonts/DejaVuSans.ttf', import.meta.url);

describe.each([
  ['the whole font', whole],
  ['the font that ships', ours],
])('%s', (_, file) => {
  const bytes = new Uint8Array(readFileSync(file));
  const font = readTrueType(bytes);
  const other = readByAnother(bytes);

  it('has the glyphs that another reader finds', () => {
    for (const character of [...drawable(), '\u0007', '\u{1d518}', '\uffff', '中'])
      expect(font.glyphOf(character.codePointAt(0)!), character).toBe(
        other.charToGlyphIndex(character),
      );
    expect(font.glyphCount).toBe(other.glyphs.length);
  });

  it('has letters as wide as drawings set them', () => {
    for (const character of drawable())
      expect(glyphOf(character).advance).toBe(other.charToGlyph(character).advanceWidth);
  });
});

describe('a subset', () => {
  const bytes = new Uint8Array(readFileSync(ours));
  const font = readTrueType(bytes);
  const before = readByAnother(bytes);
  // letters with accents are put together from others
  const characters = [...'AgÄéç½⌀ '];
  const glyphs = characters.map((character) => font.glyphOf(character.codePointAt(0)!));
  const made = subsetOf(font, glyphs);
  const [whole32, directory] = [new DataView(made.buffer), 12];
  const after = readByAnother(made, font.tables.get('cmap'));

  it('draws its glyphs as before, under the same numbers', () => {
    glyphs.forEach((glyph, i) => {
      const outline = after.glyphs.get(glyph).getPath(0, 0, 2048).commands;
      expect(outline, characters[i]).toEqual(before.glyphs.get(glyph).getPath(0, 0, 2048).commands);
      if (characters[i] !== ' ') expect(outline.length).toBeGreaterThan(3);
    });
  });

  it('has nothing to draw for the others, and is smaller', () => {
    const b = font.glyphOf('b'.codePointAt(0)!);
    expect(after.glyphs.get(b).getPath(0, 0, 2048).commands).toEqual([]);
    expect(made.length).toBeLessThan(bytes.length / 2);
  });

  it('adds up as the format asks: each table, and the whole', () => {
    const sum = (start: number, length: number): number => {
      let total = 0;
      for (let at = start; at < start + length; at += 4)
        total = Number((BigInt(total) + BigInt(whole32.getUint32(at))) & 0xffffffffn);
      return total;
    };
    expect(sum(0, made.length)).toBe(0xb1b0afba);
    for (let at = directory; at < directory + 16 * whole32.getUint16(4); at += 16) {
      const tag = String.fromCharCode(...made.subarray(at, at + 4));
      if (tag === 'head') continue;
      const [start, length] = [whole32.getUint32(at + 8), whole32.getUint32(at + 12)];
      expect(sum(start, (length + 3) & ~3), tag).toBe(whole32.getUint32(at + 4));
    }
  });
});

describe('bytes that are no font', () => {
  it.each([
    ['nothing', new Uint8Array(0)],
    ['text', new TextEncoder().encode('not a font, but longer than twelve bytes')],
  ])('%s are refused', (_, bytes) => {
    expect(() => readTrueType(bytes)).toThrow(/not a TrueType font/);
  });
});
