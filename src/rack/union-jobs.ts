/**
 * The questions to be asked for sets whose deviations sum to so much: one for each way that their counts, and on a coarse
 * grid their steps, may be. Only such counts and steps are asked for as sets that close can have; see `kinds.ts`.
 */

import type { StaveClass } from './classes.js';
import { kindsOf, type Grid, type Kind } from './kinds.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import { coarseGrid, withSteps } from './union-grid.js';
import type { UnionQuestion } from './union.js';
import { closingWindows, sharedWindow, type SharedWindow, type Window } from './window.js';

export interface SharedQuestion {
  /** of each set, larger ones first */
  readonly counts: readonly number[];
  readonly question: UnionQuestion;
}

/** Of one or two sets, unplaned, that deviate by so much together. */
export interface Windows {
  readonly each: Window;
  readonly together: SharedWindow;
}

export function windowsFor(pool: Pool, deviation: number): Windows {
  const each = closingWindows(pool, deviation, 0).outer;
  return { each, together: sharedWindow(pool, deviation) };
}

export function questionsFor(
  pool: Pool,
  classes: readonly StaveClass[],
  sets: number,
  { each, together }: Windows,
): readonly SharedQuestion[] {
  const window = sets === 1 ? each : together.sum;
  const bungs = bungsNeeded(pool, sets);
  const grid = coarseGrid(classes);
  const kinds = grid && kindsByCount(pool, grid, each);
  return countsOf(pool, sets).flatMap((counts) => {
    const count = counts.reduce((sum, n) => sum + n, 0);
    const question = { classes, count, window, bungs };
    if (!grid) return [{ counts, question }];
    const ways = waysToSum(counts.map((n) => kinds!.get(n) ?? []));
    return [...ways].flatMap(([steps, beside]) => {
      const stepped = withSteps(question, grid, steps);
      const low = Math.max(beside.low, stepped.window.low);
      const high = Math.min(beside.high, stepped.window.high);
      return low <= high ? [{ counts, question: { ...stepped, window: { low, high } } }] : [];
    });
  });
}

/** Counts of each set that the rack has staves for. */
function countsOf(pool: Pool, sets: number): readonly (readonly number[])[] {
  const { min, max } = pool.request.count;
  const all = pool.staves.length;
  const one = Array.from({ length: max - min + 1 }, (_, k) => min + k).filter((n) => n <= all);
  if (sets === 1) return one.map((n) => [n]);
  return one.flatMap((large) =>
    one.filter((small) => small <= large && large + small <= all).map((small) => [large, small]),
  );
}

function kindsByCount(pool: Pool, grid: Grid, window: Window): ReadonlyMap<number, Kind[]> {
  const byCount = new Map<number, Kind[]>();
  for (const kind of kindsOf(grid, window, pool.request.count)) {
    const same = byCount.get(kind.count);
    if (same) same.push(kind);
    else byCount.set(kind.count, [kind]);
  }
  return byCount;
}

/** Sums of steps of one kind for each set, and between what the sums beside them then lie. */
function waysToSum(kinds: readonly (readonly Kind[])[]): ReadonlyMap<number, Window> {
  let ways = new Map<number, Window>([[0, { low: 0, high: 0 }]]);
  for (const ofSet of kinds) {
    const next = new Map<number, Window>();
    for (const [sum, so] of ways)
      for (const { steps, beside } of ofSet) {
        const known = next.get(sum + steps);
        const low = so.low + beside.low;
        const high = so.high + beside.high;
        next.set(sum + steps, {
          low: Math.min(low, known?.low ?? Infinity),
          high: Math.max(high, known?.high ?? -Infinity),
        });
      }
    ways = next;
  }
  return ways;
}
