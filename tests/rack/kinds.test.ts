/** Racks read to coarse steps: what kinds of sets close, and how many sets that allows. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { upperBound } from '../../src/rack/bound.js';
import { classesOf } from '../../src/rack/classes.js';
import { closesAt } from '../../src/rack/closing.js';
import { mostOnGrid } from '../../src/rack/kind-attempt.js';
import { commonStep, gridOf, kindsOf } from '../../src/rack/kinds.js';
import { matchStaves } from '../../src/rack/match.js';
import { makePool } from '../../src/rack/pool.js';
import { verifyMatch } from '../../src/rack/verify.js';
import { closingWindows } from '../../src/rack/window.js';
import { bruteForce } from './brute-force.js';
import { asked, rack, stockOf, widthsOf } from './racks.js';

const keg = asked({
  diameter: 130,
  count: { min: 5, max: 7 },
  bung: null,
  plane: 0,
  vessels: 'max',
});

const evenWidths = Array.from({ length: 27 }, (_, k) => 36 + 2 * k);

describe('kinds of sets', () => {
  it.each(['blank', 'backed'] as const)('hold every set that closes, measured %s', (measured) => {
    let closing = 0;
    const request = { ...keg, measured, tolerance: 0.25 };
    const pool = makePool(stockOf(evenWidths).staves, request);
    const { outer } = closingWindows(pool, request.tolerance, 0);
    const grid = gridOf(classesOf(pool), outer)!;
    const kinds = kindsOf(grid, outer, request.count);
    const width = fc.constantFrom(...evenWidths);
    fc.assert(
      fc.property(fc.array(width, { minLength: 4, maxLength: 6 }), (some) => {
        for (const last of evenWidths) {
          const chosen = [...some, last];
          const closes = closesAt(chosen, measured);
          if (closes === null || Math.abs(closes - 130) > 0.25) continue;
          closing++;
          const steps = chosen.reduce((total, w) => total + (w - evenWidths[0]!) / 2, 0);
          expect(kinds).toContainEqual(expect.objectContaining({ count: chosen.length, steps }));
        }
      }),
      { seed: 4, numRuns: 400 },
    );
    expect(closing).toBeGreaterThan(20);
  });

  it('never bound sets below what trying everything makes', () => {
    let tighter = 0;
    for (const step of [2, 5, 8])
      for (let seed = 1; seed <= 4; seed++) {
        const request = {
          ...keg,
          diameter: 90,
          count: { min: 4, max: 5 },
          tolerance: 0.1,
          bung: seed % 2 ? 70 : null,
        };

        const stock = rack({ count: 13, step, seed, from: 45, to: 85 });
        const pool = makePool(stock.staves, request);
        const loose = upperBound(pool).sets;
        const bound = mostOnGrid(pool, classesOf(pool), loose);
        expect(bound).toBeGreaterThanOrEqual(bruteForce(stock, request)?.sets ?? 0);
        if (bound < loose) tighter++;
      }
    expect(tighter).toBeGreaterThan(0);
  });

  it('say nothing of racks read finely', () => {
    const pool = makePool(rack({ count: 60, step: 0.5 }).staves, asked());
    expect(mostOnGrid(pool, classesOf(pool), 2)).toBe(2);
    // on their fine grid girths are still held to a part of a step, but there are too many classes
    const exact = makePool(
      rack({ count: 300, step: 0.01 }).staves,
      asked({ tolerance: 0.001, plane: 0 }),
    );
    const { outer } = closingWindows(exact, 0.001, 0);
    expect(outer.high - outer.low).toBeLessThan(0.01);
    expect(gridOf(classesOf(exact), outer)).toBeNull();
  });
});

describe('the step that widths have in common', () => {
  const stepOf = (...widths: number[]): number =>
    commonStep(classesOf(makePool(stockOf(widths).staves, asked())));

  it('is the widest, from whatever width it is counted', () => {
    expect(stepOf(61, 63, 69, 75)).toBe(2);
    expect(stepOf(61.5, 64, 70.5)).toBe(0.5);
    expect(stepOf(60, 61.5, 66)).toBe(1.5);
    const sixteenth = 25.4 / 16;
    expect(stepOf(40 * sixteenth, 41 * sixteenth, 44 * sixteenth)).toBeCloseTo(sixteenth, 12);
  });

  it('is none where all are alike, or one lies off every usual step', () => {
    expect(stepOf(70, 70, 70)).toBe(0);
    expect(stepOf(60, 70.003, 80)).toBe(0);
    expect(stepOf(60.003, 70, 80)).toBe(0);
  });
});

describe('a rack read to a coarse step', () => {
  it.each([
    { step: 5, within: 0 },
    { step: 2, within: 0 },
    { step: 1, within: 0 },
    { step: 25.4 / 16, within: 1 },
  ])('gives nearly all the sets that it can: %j', async ({ step, within }) => {
    const request = asked({ vessels: 'max', tolerance: 0.1, plane: 0 });
    const stock = stockOf(widthsOf({ count: 600, from: 60, to: 100, step, seed: 3 }));
    const result = await matchStaves(stock, request);
    expect(verifyMatch(stock, request, result)).toEqual([]);
    expect(result.sets.length).toBeGreaterThanOrEqual(result.upperBound - within);
  });
});
