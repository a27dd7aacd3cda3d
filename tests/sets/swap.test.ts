import { describe, expect, test } from 'vitest';
import type { MatchRequest } from '../../src/rack/request.js';
import type { StockStave } from '../../src/rack/stock.js';
import { measuredWidths, swapStave, type SwapQuestion } from '../../src/sets/swap.js';
import { caskWidths, closing } from './sets.js';

const request: MatchRequest = {
  diameter: 678,
  measured: 'blank',
  vessels: 1,
  count: { min: 25, max: 30 },
  tolerance: 0.5,
  plane: 2,
  bung: 90,
};
const ring = caskWidths.map((width, i) => ({ mark: `A${i + 1}`, width }));
const spare = (mark: string, width: number, more: Partial<StockStave> = {}): StockStave => ({
  ...{ mark, width, length: null, thickness: null, bung: null, note: '' },
  ...more,
});
const ask = (more: Partial<SwapQuestion>) =>
  swapStave({ ring, broken: 4, spares: [], request, ...more })!;

describe('the width to cut', () => {
  test('closes the ring where it closed before, and is then that of the broken stave', () => {
    const { diameter, cut, broken, place } = ask({});
    expect(diameter).toBeCloseTo(closing(caskWidths), 8);
    expect(cut.width).toBeCloseTo(caskWidths[4]!, 8);
    expect({ broken, place }).toEqual({ broken: { mark: 'A5', width: 70 }, place: 5 });
  });

  test('has a range whose ends close at either end of the tolerance', () => {
    const { diameter, cut } = ask({});
    const others = caskWidths.filter((_, i) => i !== 4);
    expect(closing([...others, cut.from])).toBeCloseTo(diameter - 0.5, 6);
    expect(closing([...others, cut.to])).toBeCloseTo(diameter + 0.5, 6);
  });
});

describe('spares', () => {
  test('come nearest first, those to plane last; narrow and far too wide ones not at all', () => {
    const widths = [68, 69, 70.5, 71, 71.9, 71.95, 72, 73, 74];
    const spares = widths.map((width) => spare(`S${width}`, width));
    const { replacements, diameter } = ask({ spares });
    expect(replacements.map(({ mark, planeOff }) => [mark, planeOff])).toEqual([
      ['S70.5', 0],
      // a millimetre more changes the angle, and so the diameter, a little less than one less does
      ['S71', 0],
      ['S69', 0],
      ['S71.9', 1.9],
      ['S71.95', 1.95],
      ['S72', 2],
      // may not be planed to 70 mm, but 71 mm closes within the tolerance
      ['S73', 2],
    ]);
    const others = caskWidths.filter((_, i) => i !== 4);
    for (const { width, planeOff, closesAt } of replacements) {
      expect(closesAt).toBeCloseTo(closing([...others, width - planeOff]), 6);
      expect(Math.abs(closesAt - diameter)).toBeLessThanOrEqual(0.5);
    }
  });

  test('that are too short or too thin are left out; unstated ones are taken', () => {
    const strict = { ...request, length: 980, thicknessFor: () => 29 };
    const spares = [
      spare('short', 70, { length: 960 }),
      spare('thin', 70, { thickness: 28 }),
      spare('good', 70, { length: 980, thickness: 29 }),
      spare('unstated', 70),
    ];
    const { replacements } = ask({ spares, request: strict });
    expect(replacements.map(({ mark }) => mark).sort()).toEqual(['good', 'unstated']);
  });

  test('for the bung stave take the bung', () => {
    const loose = { ...request, tolerance: 5 };
    const spares = [spare('narrow', 88), spare('knot', 96, { bung: false }), spare('good', 95)];
    const found = ask({ broken: 0, spares, request: loose });
    expect(found.isBungStave).toBe(true);
    expect(found.replacements.map(({ mark }) => mark)).toEqual(['good']);
    expect(ask({ broken: 0, spares, request: { ...loose, bung: null } }).isBungStave).toBe(false);
  });

  test('are eight at most', () => {
    const spares = Array.from({ length: 30 }, (_, i) => spare(`S${i}`, 70));
    expect(ask({ spares }).replacements).toHaveLength(8);
  });
});

test('what is no ring has no answer', () => {
  expect(swapStave({ ring: ring.slice(0, 2), broken: 0, spares: [], request })).toBeNull();
});

test('the widths of a spec as they would be measured after backing close at the same diameter', () => {
  const D = closing(caskWidths);
  expect(measuredWidths(caskWidths, D, 'blank')).toEqual(caskWidths);
  const chords = measuredWidths(caskWidths, D, 'backed');
  const half = chords.reduce((sum, chord) => sum + Math.asin(chord / D), 0);
  expect(half).toBeCloseTo(Math.PI, 10);
});
