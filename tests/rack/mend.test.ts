/** Mending sets that don't close yet. */
import { describe, expect, it } from 'vitest';
import { deal } from '../../src/rack/deal.js';
import type { Layout } from '../../src/rack/layout.js';
import { balance, mend, openSets, refine, type Goal } from '../../src/rack/mend.js';
import { makePool } from '../../src/rack/pool.js';
import { seeded } from '../../src/rack/random.js';
import { asked, rack } from './racks.js';

const pool = makePool(rack({ count: 120, step: 0.1, seed: 3 }).staves, asked({ bung: null }));

function dealt(sets: number): { layout: Layout; goal: Goal } {
  const used = [...pool.staves.keys()].slice(0, 27 * sets);
  const target = used.reduce((sum, i) => sum + pool.girth[i]!, 0) / sets;
  const layout = deal(pool, used, new Array<number>(sets).fill(27), target)!;
  // thrown into disorder: sets that are far from closing
  const random = seeded(8);
  for (let turn = 0; turn < 4 * sets; turn++) {
    const [set, other] = [turn % sets, (turn + 1) % sets];
    const found = layout.find(set, other, (random.unit() - 0.5) * 60, [2, 2]);
    if (found) layout.exchange(set, other, found);
  }
  const window = { low: target - 0.05, high: target + 0.05 };
  return { layout, goal: { window, target, count: { min: 25, max: 29 }, useRest: false } };
}

const away = ({ girth }: Layout, { target }: Goal): number =>
  girth.reduce((sum, g) => sum + Math.abs(g - target), 0);

function run(turns: Generator<void, boolean>): { closes: boolean; turns: number } {
  for (let count = 0; ; count++) {
    const { done, value } = turns.next();
    if (done) return { closes: value, turns: count };
  }
}

describe('open sets', () => {
  it('are those whose girth lies outside the window, by ever so little', () => {
    const { layout, goal } = dealt(3);
    layout.girth.splice(0, 3, goal.window.low, goal.window.high + 1e-6, goal.target);
    expect(openSets(layout, goal)).toEqual([1]);
    layout.girth[0] = goal.window.low - 1e-6;
    expect(openSets(layout, goal)).toEqual([0, 1]);
  });
});

describe('balancing', () => {
  it('brings all sets near the target, and changes no count', () => {
    const { layout, goal } = dealt(4);
    const before = away(layout, goal);
    expect(before).toBeGreaterThan(20);
    balance(layout, goal);
    expect(away(layout, goal)).toBeLessThan(before / 20);
    expect(layout.sets.map((set) => set.length)).toEqual([27, 27, 27, 27]);
  });
});

describe('mending', () => {
  it('closes every set, keeps every stave and keeps to the counts', () => {
    const { layout, goal } = dealt(4);
    const all = [...layout.sets.flat()].sort((a, b) => a - b);
    expect(openSets(layout, goal).length).toBeGreaterThan(1);
    expect(run(mend(layout, goal, seeded(1), 200)).closes).toBe(true);
    expect(openSets(layout, goal)).toEqual([]);
    expect([...layout.sets.flat()].sort((a, b) => a - b)).toEqual(all);
    for (const { length } of layout.sets) expect(length >= 25 && length <= 29).toBe(true);
  });

  it('takes staves from the rest where it may', () => {
    const { layout, goal } = dealt(1);
    const far = { ...goal, window: { low: goal.target + 20, high: goal.target + 20.1 } };
    expect(run(mend(layout, far, seeded(1), 20)).closes).toBe(false);
    const { closes } = run(mend(layout, { ...far, useRest: true }, seeded(1), 20));
    expect(closes).toBe(true);
    expect(layout.rest).toHaveLength(pool.staves.length - layout.sets[0]!.length);
  });

  it('gives up after so many turns that close no set more', () => {
    const { layout, goal } = dealt(2);
    // two sets can't both be larger than their mean
    const window = { low: goal.target + 1, high: goal.target + 2 };
    const { closes, turns } = run(mend(layout, { ...goal, window }, seeded(1), 12));
    expect(closes).toBe(false);
    expect(turns).toBeGreaterThanOrEqual(13);
    expect(turns).toBeLessThan(80);
  });

  it('is over at once when all sets close', () => {
    const { layout, goal } = dealt(2);
    const wide = { ...goal, window: { low: 0, high: Infinity } };
    expect(run(mend(layout, wide, seeded(1), 5))).toEqual({ closes: true, turns: 0 });
  });
});

describe('refining', () => {
  it('never takes the sets further from the target, and opens none', () => {
    const { layout, goal } = dealt(4);
    run(mend(layout, goal, seeded(1), 200));
    const before = away(layout, goal);
    refine(layout, { ...goal, useRest: true }, seeded(2));
    expect(away(layout, goal)).toBeLessThanOrEqual(before);
    expect(away(layout, goal)).toBeLessThan(0.02);
    expect(openSets(layout, goal)).toEqual([]);
  });
});
