/** The rods as drawn: marks at full size, and a rod that passes the bung. */
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { nominalHeights } from '../../src/drawing/heights.js';
import { textWidth } from '../../src/drawing/lettering.js';
import { overlaps } from '../../src/drawing/overlap.js';
import { boundsOf } from '../../src/geometry/measure.js';
import { litresAtDip } from '../../src/capacity/dip-table.js';
import { dipRods } from '../../src/pieces/dip-rod.js';
import { en } from '../../src/pieces/words/en.js';
import { everyVessel, vesselOf, wideTub, wineCask } from './vessels.js';

const outlines = (drawing: Drawing) =>
  drawing.strokes.filter(({ layer }) => layer === 'outline').map(({ curve }) => boundsOf(curve)!);

/** Numbers on the left edge of the front, with the height that they stand at. */
function litreNumbers(drawing: Drawing): { amount: number; y: number }[] {
  const [front] = outlines(drawing);
  return drawing.letterings
    .filter(({ text, at, align }) => align === 'left' && /^\d/.test(text) && at.x < front!.maxX)
    .map(({ text, at, height }) => ({ amount: Number(text), y: at.y + height / 2 }));
}

describe.each(everyVessel)('the words beside the rods of %s', (_name, text) => {
  it('are short lines below each other, with no number parted from its unit', () => {
    for (const rod of dipRods(vesselOf(text), en)) {
      const right = Math.max(...outlines(rod).map(({ maxX }) => maxX));
      const words = rod.letterings.filter(({ at }) => at.x > right);
      expect(words.filter(({ leader }) => leader)).toHaveLength(rod.name.endsWith('lying') ? 3 : 2);
      for (const { text: line, height } of words) {
        expect(textWidth(line, height)).toBeLessThanOrEqual(62);
        expect(line).not.toMatch(/\d,?$/);
        expect(line).not.toMatch(/^(l|US|imp\.|gal)\b/);
      }
      const all = words.map((each) => each.text.replaceAll('\u00a0', ' ')).join(' ');
      expect(all).toMatch(/full: [\d.]+ l, [\d.]+ US gal, [\d.]+ imp\. gal/);
      expect(overlaps(rod)).toEqual([]);
    }
  });
});

describe('the rods of a wine cask', () => {
  const vessel = vesselOf(wineCask);
  const [lying, standing] = dipRods(vessel, en);

  it('are two, each of two strips of one size', () => {
    expect([lying!.name, standing!.name]).toEqual(['dip-rod-lying', 'dip-rod-standing']);
    for (const rod of [lying!, standing!]) {
      const [front, back] = outlines(rod);
      expect(back!.maxX - back!.minX).toBeCloseTo(front!.maxX - front!.minX, 9);
      expect([front!.minY, back!.minY]).toEqual([0, 0]);
    }
  });

  it('say at each number what the vessel holds at that depth', () => {
    for (const [rod, posture] of [
      [lying!, 'lying'],
      [standing!, 'standing'],
    ] as const) {
      const numbers = litreNumbers(rod);
      expect(numbers.length).toBeGreaterThan(20);
      for (const { amount, y } of numbers)
        expect(Math.abs(litresAtDip(vessel, posture, y) - amount)).toBeLessThan(0.02);
    }
  });

  it('pass the bung where they must', () => {
    const [front] = outlines(lying!);
    expect(front!.maxX - front!.minX).toBeLessThan(vessel.spec.bung!.diameter);
  });

  it('have a line where the rod passes the outside of the bung stave', () => {
    const across = lying!.strokes
      .filter(({ layer }) => layer === 'station')
      .map(({ curve }) => boundsOf(curve)!)
      .filter(({ minX, maxX }) => maxX - minX > 20)
      .map(({ maxY }) => maxY);
    // inside 624 at the bilge, staves 27
    expect([...new Set(across)]).toEqual([624, 651]);
  });
});

it('are smaller in lettering for a small bung, and still of the series', () => {
  const keg = vesselOf(
    'vessel: cask\ntitle: k\nunits: mm\nheight: 350\nbilge: 260\nends: 220\nstaves: { count: 16 }\nbung: { diameter: 28 }\n',
  );
  const [lying] = dipRods(keg, en);
  const [front] = outlines(lying!);
  expect(front!.maxX - front!.minX).toBeLessThan(28);
  const right = Math.max(...outlines(lying!).map(({ maxX }) => maxX));
  const numbers = lying!.letterings.filter(({ text, at }) => /^\d/.test(text) && at.x < right);
  expect(numbers.length).toBeGreaterThan(20);
  for (const { height } of numbers) {
    expect(nominalHeights).toContain(height);
    expect(height).toBeLessThan(3.5);
  }
});

it('stand only where there is no bung, or the vessel is a tub', () => {
  const names = (text: string) => dipRods(vesselOf(text), en).map(({ name }) => name);
  expect(names(wideTub)).toEqual(['dip-rod-standing']);
  expect(names(`${wineCask}bung: none\n`)).toEqual(['dip-rod-standing']);
});
