import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { glyphOf } from '../../src/drawing/glyphs.js';
import { faceOf } from '../../src/writers/pdf-face.js';

const fontFile = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
const bytes = new Uint8Array(readFileSync(fontFile));
const face = faceOf(bytes);

const textOf = ({ characterMap }: { characterMap: Uint8Array }): string =>
  Buffer.from(characterMap).toString('latin1');

test('the same bytes are one face, and the same characters one part of it', () => {
  expect(faceOf(bytes)).toBe(face);
  expect(face.part(new Set(['½', 'é']))).toBe(face.part(new Set(['é', '½'])));
  expect(face.part(new Set(['½']))).not.toBe(face.part(new Set(['é'])));
});

test('tells which characters of a text are beyond the basic ones', () => {
  expect(face.encode('Daube 7 ½: côté').beyond).toEqual(['½', 'ô', 'é']);
  expect(face.encode(' ~').beyond).toEqual([]);
});

test('every part has the basic letters, and those beyond them that are asked for', () => {
  const basic = face.part(new Set());
  const more = face.part(new Set(['½']));
  expect(more.file.length).toBeGreaterThan(basic.file.length);
  for (const character of [' ', 'A', '~'])
    expect(textOf(basic)).toContain(`> <00${character.charCodeAt(0).toString(16)}>`);
  expect(textOf(basic)).not.toContain('> <00bd>');
  expect(textOf(more)).toContain('> <00bd>');
});

test('each glyph of a run has its own width, to a thousandth of a thousandth', () => {
  const { widths } = face.part(new Set(['½']));
  const found = new Map<number, number>();
  for (let i = 0; i < widths.length; i += 2) {
    const first = widths[i] as number;
    (widths[i + 1] as number[]).forEach((width, k) => found.set(first + k, width));
  }
  expect(found.size).toBe(96);
  for (const character of ['A', 'i', '½']) {
    const width = found.get(face.font.glyphOf(character.codePointAt(0)!))!;
    expect(Math.abs(width - (glyphOf(character).advance / 2048) * 1000)).toBeLessThanOrEqual(
      0.0005,
    );
  }
});
