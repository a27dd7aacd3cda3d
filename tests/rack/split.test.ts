/** Parting staves into two sets, against every way to part them. */
import { describe, expect, it } from 'vitest';
import { closeSet } from '../../src/rack/aims.js';
import { classesOf } from '../../src/rack/classes.js';
import { closesAt } from '../../src/rack/closing.js';
import { Effort } from '../../src/rack/effort.js';
import { makePool, type Pool } from '../../src/rack/pool.js';
import { seeded } from '../../src/rack/random.js';
import { split } from '../../src/rack/split.js';
import { sum } from '../../src/rack/sum.js';
import { coarseGrid } from '../../src/rack/union-grid.js';
import { questionsFor, windowsFor } from '../../src/rack/union-jobs.js';
import { sharedWindow } from '../../src/rack/window.js';
import { asked, rack, stockOf } from './racks.js';

const request = asked({
  diameter: 130,
  count: { min: 5, max: 7 },
  bung: 65,
  tolerance: 1,
  plane: 0,
  vessels: 2,
});

/** The least deviation, in hundredths, of all ways to part the staves into equal counts; Infinity when none closes. */
function byTrying(pool: Pool, staves: readonly number[], count: number): number {
  let least = Infinity;
  for (let members = 0; members < 2 ** staves.length; members++) {
    const first = staves.filter((_, k) => (members >> k) & 1);
    if (first.length !== count || first[0] !== staves[0]) continue;
    const second = staves.filter((_, k) => !((members >> k) & 1));
    const sets = [closeSet(pool, first), closeSet(pool, second)];
    if (sets.some((set) => set === null || set.planing > 0)) continue;
    least = Math.min(least, Math.floor((sets[0]!.deviation + sets[1]!.deviation) * 100));
  }
  return least;
}

const limitOf = (pool: Pool, deviation: number) => {
  return { deviation, apart: sharedWindow(pool, (deviation + 1) / 100).apart, kinds: null };
};

describe('parting', () => {
  let [parted, refused] = [0, 0];
  for (const step of [0.1, 1, 3])
    it.each([1, 2, 3, 4])(
      `finds sets exactly when there are some, read to ${step} mm, rack %d`,
      (seed) => {
        const rough = rack({ count: 12, step, seed, from: 50, to: 90 }).staves;
        // of a diameter that they close at together
        const together = closesAt(
          rough.map(({ width }) => width),
          'blank',
          2,
        )!;
        const pool = makePool(rough, { ...request, diameter: Math.round(together * 20) / 20 });
        const staves = [...pool.staves.keys()];
        const least = byTrying(pool, staves, 6);
        for (const deviation of [0, 1, 3, 10, 30, 100]) {
          const limit = limitOf(pool, deviation);
          const found = split(pool, staves, [6, 6], limit, seeded(1), new Effort(2e6));
          expect(found).not.toBe('unknown');
          expect(found !== null).toBe(least <= deviation);
          if (found === null || found === 'unknown') {
            refused++;
            continue;
          }
          parted++;
          expect(found.flatMap(({ staves }) => staves).sort((a, b) => a - b)).toEqual(staves);
          expect(found.map(({ staves }) => staves.length)).toEqual([6, 6]);
          const strayed = found.reduce((sum, { deviation }) => sum + deviation, 0);
          expect(Math.floor(strayed * 100)).toBeLessThanOrEqual(deviation);
        }
      },
    );

  for (const step of [1, 2, 25.4 / 16])
    it.each([1, 2, 3])(
      `of known kinds finds sets exactly when some kinds have them, read to ${step} mm, rack %d`,
      (seed) => {
        // of a diameter that they nearly close at together
        const rough = rack({ count: 12, step, seed, from: 50, to: 90 }).staves;
        const widths = rough.map(({ width }) => width);
        const diameter = Math.round(closesAt(widths, 'blank', 2)! * 20) / 20;
        const pool = makePool(rough, { ...request, diameter });
        const classes = classesOf(pool);
        const grid = coarseGrid(classes)!;
        const staves = [...pool.staves.keys()];
        const steps = sum(grid.steps.map((at, k) => at * classes[k]!.staves.length));
        const least = byTrying(pool, staves, 6);
        for (const deviation of [0, 1, 3, 10, 30, 100]) {
          const windows = windowsFor(pool, (deviation + 1) / 100);
          const pairs = questionsFor(pool, classes, grid, 2, windows)
            .filter(({ counts, question }) => counts[1] === 6 && question.steps!.sum === steps)
            .flatMap(({ kinds }) => kinds);
          const some = pairs.flatMap((pair) => {
            const limit = { ...limitOf(pool, deviation), kinds: { pair, grid } };
            const found = split(pool, staves, [6, 6], limit, seeded(1), new Effort(2e6));
            expect(found).not.toBe('unknown');
            return found === null || found === 'unknown' ? [] : [found];
          });
          expect(some.length > 0).toBe(least <= deviation);
          for (const sets of some) {
            const strayed = sum(sets.map((set) => set.deviation));
            expect(Math.floor(strayed * 100)).toBeLessThanOrEqual(deviation);
          }
        }
      },
    );

  it('has been tried both ways', () => {
    expect(parted).toBeGreaterThan(3);
    expect(refused).toBeGreaterThan(3);
  });

  it('of one set judges the set as it is', () => {
    const pool = makePool(stockOf([...new Array<number>(5).fill(70), 75]).staves, {
      ...request,
      diameter: 120,
      tolerance: 3,
    });
    const staves = [0, 1, 2, 3, 4, 5];
    const { deviation } = closeSet(pool, staves)!;
    const hundredths = Math.floor(deviation * 100);
    const ask = (limit: number) =>
      split(pool, staves, [6], limitOf(pool, limit), seeded(1), new Effort(1e6));
    expect(ask(hundredths)).toHaveLength(1);
    expect(ask(hundredths - 1)).toBeNull();
  });

  it('says that it does not know when the effort ends', () => {
    const pool = makePool(rack({ count: 12, step: 1, seed: 1, from: 50, to: 90 }).staves, request);
    const staves = [...pool.staves.keys()];
    const none = new Effort(0);
    expect(split(pool, staves, [6, 6], limitOf(pool, 0), seeded(1), none)).toBe('unknown');
  });
});
