import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { PathCommand } from 'opentype.js';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.js';
import { generate, readFont } from '../../scripts/make-glyphs.js';
import {
  ascent,
  capHeight,
  contoursOf,
  descent,
  drawable,
  furthest,
  glyphAt,
  glyphOf,
  reachOf,
} from '../../src/drawing/glyphs.js';

const font = readFont();
const downwards = ({ x, y }: Point) => ({ x, y: -y });

/** The triangles from the origin to each chord, and two thirds of the one from each chord to its control point. */
function areaOfPath(commands: readonly PathCommand[]): number {
  let [x, y, area] = [0, 0, 0];
  for (const command of commands) {
    if (command.type === 'Z' || command.type === 'C') throw new Error('not in this font');
    if (command.type !== 'M') area += (x * command.y - y * command.x) / 2;
    if (command.type === 'Q') {
      const [ux, uy] = [command.x1 - x, command.y1 - y];
      area += (ux * (command.y - y) - uy * (command.x - x)) / 3;
    }
    [x, y] = [command.x, command.y];
  }
  return area;
}

const generated = new URL('../../src/drawing/glyphs.generated.ts', import.meta.url);

describe('the table of letters', () => {
  it('is what the script makes of the font today', () => {
    expect(readFileSync(generated, 'utf8')).toBe(generate(font));
  });

  it('comes with the licence of the font', () => {
    const ours = new URL('../../src/drawing/FONT-LICENSE.txt', import.meta.url);
    const theirs = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/LICENSE');
    expect(readFileSync(ours, 'utf8')).toBe(readFileSync(theirs, 'utf8'));
  });

  it('is small', () => {
    expect(readFileSync(generated).byteLength).toBeLessThan(150_000);
  });

  it('has every character that drawings and the languages of Europe need', () => {
    const needed = [
      'ABCXYZabcxyz0123456789 !"#$%&\'()*+,-./:;<=>?@[\\]^_`{|}~',
      'ÄÖÜäöüßÀÉÈÊËÇÑÅØÆáéíóúàèìòùâêîôûãõñçåøæÞþÐð¿¡«»§¶©®µ',
      'ĀăĄćČďĐēęĚğĢĪįĶŁłńŇőŒœŘřŚşŠšŢťŪůŰŹżŽž',
      'ΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩαβγδεζηθικλμνξοπρςστυφχψωάέήίόύώ',
      'АБВГДЕЖЗИЙКЛМНОПРСТУФХЦЧШЩЪЫЬЭЮЯабвгдежзийклмнопрстуфхцчшщъыьэюяёіїєґў',
      '‐‑‒–—―‘’‚“”„†•…‹›€',
      '⌀→←↑↓≤≥±×½¼¾⅛⅜⅝⅞°′″√Σπ−',
    ].join('');
    const table = new Set(drawable());
    expect([...needed].filter((character) => !table.has(character))).toEqual([]);
  });

  it('agrees with opentype.js on every advance width', () => {
    for (const character of drawable()) {
      expect(glyphOf(character).advance, character).toBe(font.charToGlyph(character).advanceWidth);
    }
  });

  it('encloses the area that opentype.js draws, letter by letter', () => {
    for (const character of drawable()) {
      const theirs = areaOfPath(font.charToGlyph(character).getPath(0, 0, 2048).commands);
      const ours = contoursOf(character).reduce((sum, { start, segments }) => {
        const first: PathCommand = { type: 'M', ...downwards(start) };
        const rest = segments.map(({ control, to }): PathCommand => {
          if (!control) return { type: 'L', ...downwards(to) };
          return { type: 'Q', ...downwards(to), x1: control.x, y1: -control.y };
        });
        return sum + areaOfPath([first, ...rest, { type: 'L', ...downwards(start) }]);
      }, 0);
      expect(ours, character).toBeCloseTo(theirs, 6);
    }
  });

  it('keeps every letter between the highest and the lowest point it names, and reaches both', () => {
    const boxes = drawable().map((character) => font.charToGlyph(character).getBoundingBox());
    expect(Math.max(...boxes.map((box) => box.y2))).toBe(ascent);
    expect(Math.min(...boxes.map((box) => box.y1))).toBe(-descent);
  });

  it('knows how far letters reach to either side, and the furthest of all', () => {
    const reaches = ['', ...drawable()].map(reachOf);
    expect(Math.min(...reaches.map(({ left }) => left))).toBe(furthest.left);
    expect(Math.max(...reaches.map(({ right }) => right))).toBe(furthest.right);
    for (const character of drawable()) {
      const box = font.charToGlyph(character).getBoundingBox();
      const { left, right } = reachOf(character);
      expect(left, character).toBeLessThanOrEqual(Math.min(0, box.x1));
      expect(right, character).toBeGreaterThanOrEqual(box.x2);
    }
  });

  it('finds the letter at a place of a text, one place or two long', () => {
    const text = 'aß−\u{1F6E2}z';
    expect([0, 1, 2, 3, 5].map((place) => glyphAt(text, place))).toEqual(
      [...text].map((character) => glyphOf(character)),
    );
    expect(glyphAt(text, 3).character).toBe('\u{1F6E2}');
  });

  it('measures capitals by the flat ones', () => {
    for (const character of 'EHIX') {
      expect(font.charToGlyph(character).getBoundingBox().y2).toBe(capHeight);
    }
  });

  it('closes every contour on its start, but for a straight last side', () => {
    for (const character of drawable()) {
      for (const { start, segments } of contoursOf(character)) {
        const last = segments.at(-1)!;
        const closed = last.to.x === start.x && last.to.y === start.y;
        expect(closed || segments.length >= 2, character).toBe(true);
      }
    }
  });

  it('kerns with no space, so that the widths of words add up', () => {
    expect(glyphOf(' ').kerning.size).toBe(0);
    const kerned = drawable().filter((character) => glyphOf(character).kerning.has(' '));
    expect(kerned).toEqual([]);
  });

  it('draws a box for anything else', () => {
    const box = contoursOf('漢');
    expect(box).toHaveLength(2);
    expect(contoursOf('\u{1F6E2}')).toEqual(box);
  });
});
