/** Racks read to coarse steps: what kinds of sets close, and how many sets that allows. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { upperBound } from '../../src/rack/bound.js';
import { classesOf } from '../../src/rack/classes.js';
import { closesAt } from '../../src/rack/closing.js';
import { mostOnGrid } from '../../src/rack/kind-attempt.js';
import { mostWithBungs } from '../../src/rack/kind-bungs.js';
import { commonStep, gridOf, kindsOf, planKinds, type Kind } from '../../src/rack/kinds.js';
import { matchStaves } from '../../src/rack/match.js';
import { makePool } from '../../src/rack/pool.js';
import { sum } from '../../src/rack/sum.js';
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
    const kinds = kindsOf(grid, outer, request.count, 0);
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

  it('of sets with a bung stave hold every one of those that closes, and leave them less than without', () => {
    const narrow = Array.from({ length: 8 }, (_, k) => 62 + 2 * k);
    const wide = Array.from({ length: 11 }, (_, k) => 120 + 2 * k);
    const widths = [...narrow, ...wide];
    const count = { min: 28, max: 30 };
    const pool = makePool(stockOf(widths).staves, asked({ bung: 120, plane: 0, tolerance: 0.1 }));
    const { outer } = closingWindows(pool, 0.1, 0);
    const grid = gridOf(classesOf(pool), outer)!;
    const [kinds, without] = [1, 0].map((bungs) => kindsOf(grid, outer, count, bungs)) as [
      Kind[],
      Kind[],
    ];
    const room = (some: Kind[]): number => sum(some.map(({ beside }) => beside.high - beside.low));
    expect(room(kinds)).toBeLessThan(room(without));
    let closing = 0;
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...narrow), { minLength: 26, maxLength: 28 }),
        fc.constantFrom(...wide),
        (some, bung) => {
          for (const last of widths) {
            const chosen = [...some, bung, last];
            if (Math.abs(closesAt(chosen, 'blank')! - 678) > 0.1) continue;
            closing++;
            const steps = sum(chosen.map((w) => (w - widths[0]!) / 2));
            const beside = sum(chosen.map((w) => 678 * Math.atan(w / 678))) - steps * 2;
            const kind = kinds.find((one) => one.count === chosen.length && one.steps === steps)!;
            expect(beside).toBeGreaterThan(kind.beside.low - 1e-9);
            expect(beside).toBeLessThan(kind.beside.high + 1e-9);
          }
        },
      ),
      { seed: 4, numRuns: 2000 },
    );
    expect(closing).toBeGreaterThan(20);
  });

  it('with few wide staves never bound sets below what trying everything makes, but lower than without them', () => {
    let [tighter, reached] = [0, 0];
    for (const tolerance of [0.05, 0.2])
      for (let seed = 1; seed <= 12; seed++) {
        const request = { ...keg, diameter: 100, count: { min: 4, max: 6 }, tolerance, bung: 80 };
        const narrow = widthsOf({ count: 10, step: 4, seed, from: 40, to: 56 });
        const wide = widthsOf({ count: 3, step: 4, seed, from: 84, to: 100 });
        const stock = stockOf([...narrow, ...wide]);
        const pool = makePool(stock.staves, request);
        const { outer } = closingWindows(pool, tolerance, 0);
        const grid = gridOf(classesOf(pool), outer)!;
        const kinds = kindsOf(grid, outer, request.count, 1);
        const bound = mostWithBungs(grid, kinds, 3);
        const truth = bruteForce(stock, request)?.sets ?? 0;
        expect(bound).toBeGreaterThanOrEqual(truth - 1e-9);
        expect(mostOnGrid(pool, classesOf(pool), upperBound(pool).sets)).toBeGreaterThanOrEqual(
          truth,
        );
        if (bound < planKinds(pool, grid, kinds, 3).most - 1e-6) tighter++;
        if (Math.floor(bound + 1e-6) === truth) reached++;
      }
    expect(tighter).toBeGreaterThan(3);
    expect(reached).toBeGreaterThan(3);
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

describe('a rack of narrow staves and few wide ones, read to 2 mm', () => {
  it.each([1, 2])('gives most of the sets that it can, rack %d', async (seed) => {
    const request = asked({ vessels: 'max', tolerance: 0.1, plane: 0, bung: 110 });
    const narrow = widthsOf({ count: 580, from: 62, to: 76, step: 2, seed });
    const wide = widthsOf({ count: 20, from: 120, to: 140, step: 2, seed });
    const stock = stockOf([...narrow, ...wide]);
    const result = await matchStaves(stock, request);
    expect(verifyMatch(stock, request, result)).toEqual([]);
    // each has a wide one, and nearly all need two
    expect(result.upperBound).toBeLessThan(16);
    expect(result.sets.length).toBeGreaterThan(0.6 * result.upperBound);
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
