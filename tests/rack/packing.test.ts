/** The best packing of patterns, against every way to choose them. */
import { describe, expect, it } from 'vitest';
import { aimsOf, compareAims, type Aims } from '../../src/rack/aims.js';
import { classesOf, stavesOf } from '../../src/rack/classes.js';
import { Effort } from '../../src/rack/effort.js';
import { bestPacking, closingPattern, type ClosingPattern } from '../../src/rack/packing.js';
import { eachPattern } from '../../src/rack/patterns.js';
import { makePool, type Pool } from '../../src/rack/pool.js';
import { asked, rack } from './racks.js';

const request = asked({
  diameter: 130,
  count: { min: 5, max: 7 },
  bung: null,
  tolerance: 0.4,
  plane: 0.5,
  vessels: 2,
});

function listed(pool: Pool) {
  const classes = classesOf(pool);
  const found: ClosingPattern[] = [];
  const window = { low: 380, high: 440 };
  const asking = { classes, count: request.count, window, bungs: 0, withStanding: false };
  eachPattern(asking, new Effort(1e7), (numbers) => {
    const pattern = closingPattern(pool, classes, numbers);
    if (pattern) found.push(pattern);
  });
  return { classes, found };
}

/** Both sets by trying every pair of patterns. */
function byPairs(
  pool: Pool,
  classes: ReturnType<typeof classesOf>,
  found: readonly ClosingPattern[],
) {
  const supply = classes.map(({ staves }) => staves.length);
  const all = pool.offMiddle.reduce((sum, off) => sum + off, 0);
  let best: Aims | null = null;
  for (const [i, a] of found.entries())
    for (const b of found.slice(i)) {
      if (supply.some((many, c) => a.numbers[c]! + b.numbers[c]! > many)) continue;
      const left = pool.staves.length - a.count - b.count;
      const off = all - a.offMiddle - b.offMiddle;
      const aims = {
        sets: 2,
        planing: a.planing + b.planing,
        deviation: Math.floor((a.deviation + b.deviation) * 100),
        spread: Math.abs(a.count - b.count),
        rest: left === 0 ? 0 : off / left,
      };
      if (!best || compareAims(aims, best) < 0) best = aims;
    }
  return best;
}

describe('the best packing', () => {
  it.each([1, 2, 3, 4, 5, 6])('is the best of all pairs of patterns, rack %d', (seed) => {
    const pool = makePool(rack({ count: 13, step: 1, from: 45, to: 85, seed }).staves, request);
    const { classes, found } = listed(pool);
    const effort = new Effort(1e7);
    const packed = bestPacking(pool, classes, { first: found, others: found }, 2, effort);
    expect(effort.exhausted).toBe(false);
    const truth = byPairs(pool, classes, found);
    expect(packed === null).toBe(truth === null);
    if (!packed) return;
    const used = packed.flatMap(({ staves }) => staves);
    expect(new Set(used).size).toBe(used.length);
    expect(compareAims(aimsOf(pool, packed), truth!)).toBe(0);
  });

  it('takes the first set from the list of those with the standing staves', () => {
    const pool = makePool(rack({ count: 14, step: 1, from: 45, to: 85, seed: 2 }).staves, request);
    const { classes, found } = listed(pool);
    const first = found.filter(({ numbers }) => numbers[0]! > 0).slice(-3);
    const packed = bestPacking(pool, classes, { first, others: found }, 1, new Effort(1e6))!;
    const staves = first.map(({ numbers }) => stavesOf(classes, numbers));
    expect(staves).toContainEqual([...packed[0]!.staves]);
  });

  it('is none when patterns compete for the same staves, and open when the effort ends', () => {
    const pool = makePool(rack({ count: 13, step: 1, from: 45, to: 85, seed: 1 }).staves, request);
    const { classes, found } = listed(pool);
    const all = classes.findIndex(({ staves }) => staves.length === 1);
    const rivals = found.filter(({ numbers }) => numbers[all] === 1);
    expect(rivals.length).toBeGreaterThan(1);
    const lists = { first: rivals, others: rivals };
    expect(bestPacking(pool, classes, lists, 2, new Effort(1e6))).toBeNull();
    const effort = new Effort(3);
    bestPacking(pool, classes, { first: found, others: found }, 2, effort);
    expect(effort.exhausted).toBe(true);
  });
});

describe('a pattern that closes', () => {
  it('carries what the aims ask of it; one that stays open is none', () => {
    const pool = makePool(rack({ count: 13, step: 1, from: 45, to: 85, seed: 1 }).staves, request);
    const { classes, found } = listed(pool);
    const { numbers, count, offMiddle, deviation } = found[0]!;
    const staves = stavesOf(classes, numbers);
    expect(count).toBe(staves.length);
    expect(offMiddle).toBeCloseTo(
      staves.reduce((sum, i) => sum + pool.offMiddle[i]!, 0),
      9,
    );
    expect(deviation).toBeLessThanOrEqual(request.tolerance + 1e-9);
    expect(closingPattern(pool, classes, new Uint16Array(classes.length))).toBeNull();
  });
});
