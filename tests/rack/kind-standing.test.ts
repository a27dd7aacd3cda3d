/** Staves that stand, on racks read to coarse steps: against trying every choice, and against the bound. */
import { describe, expect, it } from 'vitest';
import { classesOf } from '../../src/rack/classes.js';
import { closesAt } from '../../src/rack/closing.js';
import { mostOnGrid } from '../../src/rack/kind-attempt.js';
import { kindsThatHold, withStanding } from '../../src/rack/kind-standing.js';
import { gridOf, kindsOf } from '../../src/rack/kinds.js';
import { matchStaves } from '../../src/rack/match.js';
import { makePool } from '../../src/rack/pool.js';
import { verifyMatch } from '../../src/rack/verify.js';
import { closingWindows } from '../../src/rack/window.js';
import { asked, rack, stockOf, widthsOf } from './racks.js';

const keg = asked({
  diameter: 90,
  count: { min: 4, max: 5 },
  tolerance: 0.1,
  plane: 0,
  bung: null,
  vessels: 'max',
});

describe('the kinds that hold standing staves', () => {
  it('are those of every set that closes with them', () => {
    let [held, impossible] = [0, 0];
    for (let seed = 1; seed <= 12; seed++) {
      const stock = rack({ count: 11, step: 5, seed, from: 45, to: 85 });
      const standing = ['s0', 's1'];
      const pool = makePool(stock.staves, { ...keg, standing });
      const { outer } = closingWindows(pool, keg.tolerance, 0);
      const grid = gridOf(classesOf(pool), outer)!;
      const kinds = kindsThatHold(grid, kindsOf(grid, outer, keg.count, 0));
      let closing = 0;
      for (let members = 0; members < 2 ** 9; members++) {
        const chosen = stock.staves.filter((_, i) => i < 2 || (members >> (i - 2)) & 1);
        if (chosen.length < 4 || chosen.length > 5) continue;
        const closes = closesAt(
          chosen.map(({ width }) => width),
          'blank',
        )!;
        if (Math.abs(closes - keg.diameter) > keg.tolerance) continue;
        closing++;
        const steps = chosen.reduce(
          (total, { width }) => total + Math.round((width - pool.width[0]!) / grid.step),
          0,
        );
        expect(kinds).toContainEqual(expect.objectContaining({ count: chosen.length, steps }));
      }
      if (closing > 0) held++;
      if (mostOnGrid(pool, classesOf(pool), 2) > 0) continue;
      impossible++;
      expect(closing).toBe(0);
    }
    expect(held).toBeGreaterThan(1);
    expect(impossible).toBeGreaterThan(1);
  });

  it('are all of them when none stand', () => {
    const pool = makePool(rack({ count: 40, step: 2 }).staves, asked());
    const { outer } = closingWindows(pool, 0.1, 0);
    const grid = gridOf(classesOf(pool), outer)!;
    const kinds = kindsOf(grid, outer, { min: 25, max: 30 }, 0);
    expect(kinds.length).toBeGreaterThan(3);
    expect(kindsThatHold(grid, kinds)).toEqual(kinds);
  });
});

describe('what is used', () => {
  it('is changed to hold those that stand, and no more', () => {
    const request = asked({ standing: ['s0', 's1', 's3'] });
    const pool = makePool(stockOf([60, 60, 65, 70, 70, 75, 80]).staves, request);
    const grid = gridOf(classesOf(pool), { low: 0, high: 1 })!;
    expect(withStanding(grid, [2, 1, 1, 0, 1])).toEqual([2, 1, 1, 0, 1]);
    expect(withStanding(grid, [1, 1, 0, 1, 1])).toEqual([2, 0, 1, 0, 1]);
  });
});

describe('a rack read to a coarse step', () => {
  it.each([
    { step: 5, standing: 4 },
    { step: 2, standing: 4 },
    { step: 25.4 / 16, standing: 6 },
  ])('gives all the sets that it can though staves stand: %j', async ({ step, standing }) => {
    const stock = stockOf(widthsOf({ count: 600, from: 60, to: 100, step, seed: 4 }));
    const marks = Array.from({ length: standing }, (_, k) => `s${3 * k}`);
    const request = asked({ vessels: 'max', tolerance: 0.1, plane: 0, standing: marks });
    const result = await matchStaves(stock, request);
    expect(verifyMatch(stock, request, result)).toEqual([]);
    expect(result.sets.length).toBe(result.upperBound);
  });

  it('says that nothing closes with those that stand', async () => {
    const widths = widthsOf({ count: 580, from: 60, to: 100, step: 5, seed: 4 });
    const stock = stockOf([...new Array<number>(20).fill(100), ...widths]);
    const standing = Array.from({ length: 20 }, (_, k) => `s${k}`);
    const request = asked({ vessels: 3, tolerance: 0.1, plane: 0, standing });
    const { sets, proven, shortfall } = await matchStaves(stock, request);
    expect({ sets, proven, reason: shortfall!.reason }).toEqual({
      sets: [],
      proven: true,
      reason: 'standing',
    });
  });
});
