/** How many staves all sets take together, and which. */
import { describe, expect, it } from 'vitest';
import { classesOf } from '../../src/rack/classes.js';
import { bungsNeeded, chooseStaves, totalCounts } from '../../src/rack/plan.js';
import { makePool, type Pool } from '../../src/rack/pool.js';
import type { MatchRequest } from '../../src/rack/request.js';
import { asked, rack, stockOf } from './racks.js';

const poolOf = (count: number, request: Partial<MatchRequest> = {}): Pool =>
  makePool(rack({ count, seed: 6 }).staves, asked(request));
const turn = Math.PI * 678;
const window = { low: turn - 2, high: turn + 2 };
const girthOf = (pool: Pool, staves: readonly number[]): number =>
  staves.reduce((sum, i) => sum + pool.girth[i]!, 0);

describe('the total counts', () => {
  it('are all that the rack can give, equal counts first', () => {
    const pool = poolOf(60);
    const totals = totalCounts(pool, classesOf(pool), 2, window);
    const ascending = [...pool.girth];
    const possible = [...Array(11).keys()]
      .map((k) => 50 + k)
      .filter((n) => {
        const least = ascending.slice(0, n).reduce((sum, g) => sum + g, 0);
        const most = ascending.slice(-n).reduce((sum, g) => sum + g, 0);
        return most >= 2 * window.low && least <= 2 * window.high;
      });
    expect([...totals].sort((a, b) => a - b)).toEqual(possible);
    // those that reach the girth exactly come first, and among them those that part evenly
    const even = totals.map((n) => n % 2 === 0);
    expect(even.indexOf(false)).toBeGreaterThan(even.lastIndexOf(true));
  });

  it('are none when the rack is too small, or its staves too wide', () => {
    const small = poolOf(20);
    expect(totalCounts(small, classesOf(small), 1, window)).toEqual([]);
    const wide = makePool(stockOf(new Array<number>(60).fill(120)).staves, asked());
    expect(totalCounts(wide, classesOf(wide), 1, window)).toEqual([]);
  });
});

describe('the staves for so many sets', () => {
  it.each([1, 2])('are so many, and together have the girth of %d sets', (sets) => {
    const pool = poolOf(75);
    const count = 27 * sets;
    const chosen = chooseStaves(pool, classesOf(pool), sets, count)!;
    expect(new Set(chosen).size).toBe(count);
    // nearer than the step that the rack was read to
    expect(Math.abs(girthOf(pool, chosen) - sets * turn)).toBeLessThan(0.25);
    expect(chosen.filter((i) => pool.canBung[i] === 1).length).toBeGreaterThanOrEqual(sets);
  });

  it('leave a better rest than staves taken as they come', () => {
    const pool = poolOf(75, { bung: null });
    const chosen = chooseStaves(pool, classesOf(pool), 1, 27)!;
    const mean = (staves: readonly number[]): number =>
      staves.reduce((sum, i) => sum + pool.offMiddle[i]!, 0) / staves.length;
    expect(mean(chosen)).toBeGreaterThan(mean([...pool.staves.keys()]) + 3);
  });

  it('hold the standing ones', () => {
    const standing = ['s0', 's10', 's20', 's30'];
    const pool = poolOf(75, { standing });
    const chosen = chooseStaves(pool, classesOf(pool), 1, 27)!;
    expect(chosen).toEqual(expect.arrayContaining([...pool.standing]));
  });

  it('are none when bung staves are too few', () => {
    const pool = makePool(stockOf([95, ...new Array<number>(70).fill(78)]).staves, asked());
    expect(chooseStaves(pool, classesOf(pool), 1, 27)).not.toBeNull();
    expect(chooseStaves(pool, classesOf(pool), 2, 54)).toBeNull();
  });
});

it('a bung stave is needed for each set, or for none', () => {
  expect(bungsNeeded(poolOf(3), 4)).toBe(4);
  expect(bungsNeeded(poolOf(3, { bung: null }), 4)).toBe(0);
});
