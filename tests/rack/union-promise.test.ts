/** What staves of two sets promise, against what partings of them come to. */
import { describe, expect, it } from 'vitest';
import { closeSet } from '../../src/rack/aims.js';
import { makePool, type Pool } from '../../src/rack/pool.js';
import { seeded, type Random } from '../../src/rack/random.js';
import { sum } from '../../src/rack/sum.js';
import {
  compareCloseness,
  GirthBounds,
  isPlanedOnOne,
  planedPromise,
  unplanedPromise,
} from '../../src/rack/union-promise.js';
import { asked, rack } from './racks.js';

function poolOf(measured: 'blank' | 'backed', plane: number, seed: number): Pool {
  const request = asked({
    diameter: measured === 'blank' ? 104 : 120,
    bung: null,
    measured,
    plane,
  });
  const count = { min: 5, max: 8 };
  return makePool(rack({ count: 12, step: 0.5, from: 50, to: 70, seed }).staves, {
    ...request,
    count,
  });
}

/** Staves in an order by chance. */
function shuffled(pool: Pool, random: Random): number[] {
  const staves = [...pool.staves.keys()];
  for (let i = staves.length - 1; i > 0; i--) {
    const k = random.below(i + 1);
    [staves[i], staves[k]] = [staves[k]!, staves[i]!];
  }
  return staves;
}

describe('what staves of two sets promise', () => {
  it.each([
    { measured: 'blank', plane: 2 },
    { measured: 'blank', plane: 1.994 },
    { measured: 'backed', plane: 2 },
  ] as const)('is no less than what any parting comes to: %j', ({ measured, plane }) => {
    let [unplaned, planed, nearest] = [0, 0, Infinity];
    const random = seeded(7);
    for (let seed = 1; seed <= 60; seed++) {
      const pool = poolOf(measured, plane, seed);
      const bounds = new GirthBounds(pool);
      for (let turn = 0; turn < 150; turn++) {
        const staves = shuffled(pool, random);
        const [first, second] = [staves.slice(0, 6), staves.slice(6)];
        const sets = [closeSet(pool, first), closeSet(pool, second)];
        if (!sets[0] || !sets[1]) continue;
        const closeness = {
          planing: sets[0].planing + sets[1].planing,
          deviation: Math.floor(100 * (sets[0].deviation + sets[1].deviation)),
        };
        const girths = [first, second].map((set) => sum(set.map((i) => pool.girth[i]!)));
        const all = [...pool.staves.keys()];
        if (closeness.planing === 0) {
          unplaned++;
          const least = bounds.unplanedTogether(sum(girths));
          const nearer = unplanedPromise(pool, all, [6, 6], least.deviation, 300)!;
          expect(least.deviation).toBeLessThanOrEqual(nearer.deviation);
          expect(nearer.deviation).toBeLessThanOrEqual(closeness.deviation);
        } else {
          planed++;
          const promise = planedPromise(pool, all);
          expect(compareCloseness(promise, closeness)).toBeLessThanOrEqual(0);
          nearest = Math.min(nearest, closeness.planing / Math.max(1, promise.planing));
          const least = bounds.leastPlaning(girths[0]!, girths[1]!);
          expect(least).toBeLessThanOrEqual(closeness.planing);
          const most = bounds.largestPlaned(closeness.planing);
          for (const girth of girths) expect(girth).toBeLessThanOrEqual(most);
        }
      }
    }
    expect(unplaned).toBeGreaterThan(20);
    expect(planed).toBeGreaterThan(20);
    expect(nearest).toBeLessThan(1.1);
  });

  it('is none when sets would stray too far', () => {
    const pool = poolOf('blank', 2, 1);
    expect(unplanedPromise(pool, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9], [5, 5], 0, 10)).toBeNull();
  });

  it('tells whether one stave can take all planing', () => {
    expect(isPlanedOnOne(poolOf('blank', 2, 1))).toBe(true);
    expect(isPlanedOnOne(poolOf('blank', 40, 1))).toBe(false);
  });
});
