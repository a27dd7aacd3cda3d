/** Two sets of which one is rare, against every two sets that there are. */
import { describe, expect, it } from 'vitest';
import { closesAt } from '../../src/rack/closing.js';
import { classesOf, stavesOf } from '../../src/rack/classes.js';
import { Effort } from '../../src/rack/effort.js';
import { eachPattern } from '../../src/rack/patterns.js';
import { makePool } from '../../src/rack/pool.js';
import { bestWithRare } from '../../src/rack/rare-kind.js';
import { sum } from '../../src/rack/sum.js';
import { coarseGrid } from '../../src/rack/union-grid.js';
import { questionsFor, windowsFor } from '../../src/rack/union-jobs.js';
import { askedSmall, rack } from './racks.js';

const request = askedSmall();

interface OneSet {
  readonly numbers: readonly number[];
  readonly count: number;
  readonly steps: number;
  readonly off: number;
  readonly stray: number;
}

function rackOf(seed: number) {
  const pool = makePool(rack({ count: 13, step: 2, from: 45, to: 85, seed }).staves, request);
  const classes = classesOf(pool);
  const grid = coarseGrid(classes)!;
  const window = { low: -Infinity, high: Infinity };
  const sets: OneSet[] = [];
  eachPattern(
    { classes, count: request.count, window, bungs: 1, withStanding: false },
    new Effort(1e7),
    (numbers, count) => {
      const staves = stavesOf(classes, numbers);
      const closes = closesAt(
        staves.map((i) => pool.width[i]!),
        'blank',
      )!;
      sets.push({
        numbers: [...numbers],
        count,
        steps: sum(grid.steps.map((at, k) => at * numbers[k]!)),
        off: sum(staves.map((i) => pool.offMiddle[i]!)),
        stray: Math.abs(closes - request.diameter),
      });
    },
  );
  return { pool, classes, grid, sets };
}

describe('two sets of which one is rare', () => {
  it.each([30, 60, 99])('are the best of all of their kinds, within %d hundredths', (deviation) => {
    let [met, none] = [0, 0];
    for (let seed = 1; seed <= 12; seed++) {
      const { pool, classes, grid, sets } = rackOf(seed);
      const windows = windowsFor(pool, (deviation + 1) / 100);
      const pairs = questionsFor(pool, classes, grid, 2, windows).flatMap(({ kinds }) => kinds);
      for (const kinds of pairs) {
        const [first, second] = kinds.map((kind) =>
          sets.filter((set) => set.count === kind.count && set.steps === kind.steps),
        ) as [OneSet[], OneSet[]];
        let most = -Infinity;
        for (const a of first)
          for (const b of second) {
            const fits = classes.every((c, k) => a.numbers[k]! + b.numbers[k]! <= c.staves.length);
            if (fits && Math.floor((a.stray + b.stray) * 100) <= deviation)
              most = Math.max(most, a.off + b.off);
          }
        const ask = (above: number) =>
          bestWithRare(pool, { grid, kinds, deviation, above }, new Effort(1e7));
        const found = ask(-Infinity)!;
        expect(found.sets !== null).toBe(most > -Infinity);
        if (!found.sets) {
          none++;
          continue;
        }
        met++;
        expect(found.offMiddle).toBeCloseTo(most, 6);
        const staves = found.sets.flatMap((set) => set.staves);
        expect(new Set(staves).size).toBe(staves.length);
        expect(sum(staves.map((i) => pool.offMiddle[i]!))).toBeCloseTo(most, 6);
        // nothing betters the best, and the best betters what is a little less
        expect(ask(most)!.sets).toBeNull();
        expect(ask(most - 0.01)!.offMiddle).toBeCloseTo(most, 6);
      }
    }
    expect(met).toBeGreaterThan(2);
    expect(none).toBeGreaterThan(0);
  });

  it('are left to others when the effort ends', () => {
    let tried = 0;
    for (let seed = 1; seed <= 6; seed++) {
      const { pool, classes, grid } = rackOf(seed);
      const windows = windowsFor(pool, 1);
      const pairs = questionsFor(pool, classes, grid, 2, windows).flatMap(({ kinds }) => kinds);
      for (const kinds of pairs) {
        const question = { grid, kinds, deviation: 99, above: -Infinity };
        if (!bestWithRare(pool, question, new Effort(1e7))?.sets) continue;
        tried++;
        expect(bestWithRare(pool, question, new Effort(3))).toBeNull();
        expect(bestWithRare(pool, question, new Effort(300))).toBeNull();
      }
    }
    expect(tried).toBeGreaterThan(2);
  });
});
