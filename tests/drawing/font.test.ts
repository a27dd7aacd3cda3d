/** The font of the PDFs must have every letter that drawings can show, as wide as drawings take it to be. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { drawable, glyphOf } from '../../src/drawing/glyphs.js';
import { readByAnother } from '../writers/another-reader.js';

const bytes = new Uint8Array(readFileSync(new URL('../../fonts/DejaVuSans.ttf', import.meta.url)));
const font = readByAnother(bytes);

it('has every drawable letter at the width that lettering is measured with', () => {
  const characters = drawable();
  expect(characters.length).toBeGreaterThan(500);
  for (const character of characters) {
    expect(font.charToGlyphIndex(character), character).toBeGreaterThan(0);
    expect(font.charToGlyph(character).advanceWidth).toBe(glyphOf(character).advance);
  }
});

it('is cut down to what drawings need', () => {
  expect(bytes.length).toBeLessThan(40_000);
  expect(font.charToGlyphIndex('א')).toBe(0);
});
