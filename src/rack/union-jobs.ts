/**
 * The questions to be asked for sets whose deviations sum to so much: one for each way that their counts, and on a coarse
 * grid their steps, may be. Only such counts and steps are asked for as sets that close can have; see `kinds.ts`.
 */

import type { StaveClass } from './classes.js';
import { kindsOf, type Grid, type Kind } from './kinds.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import { sum } from './sum.js';
import { coarseGrid, withSteps } from './union-grid.js';
import type { UnionQuestion } from './union.js';
import { closingWindows, sharedWindow, type SharedWindow, type Window } from './window.js';

export interface SharedQuestion {
  /** of each set, larger ones first */
  readonly counts: readonly number[];
  readonly question: UnionQuestion;
  /** on a coarse grid, of two sets: the kinds that they may be of */
  readonly kinds: readonly (readonly [Kind, Kind])[];
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
    const count = sum(counts);
    const question = { classes, count, window, bungs };
    if (!grid) return [{ counts, question, kinds: [] }];
    const ways = waysToSum(counts.map((n) => kinds!.get(n) ?? []));
    return [...ways].flatMap(([steps, chosen]) => {
      const stepped = withSteps(question, grid, steps);
      const beside = besideOf(chosen);
      const low = Math.max(beside.low, stepped.window.low);
      const high = Math.min(beside.high, stepped.window.high);
      if (low > high) return [];
      const pairs = chosen.flatMap(([a, b]) => (a && b ? [[a, b] as const] : []));
      return [{ counts, question: { ...stepped, window: { low, high } }, kinds: pairs }];
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

/** By sum of steps: one kind for each set. */
function waysToSum(kinds: readonly (readonly Kind[])[]): ReadonlyMap<number, readonly Kind[][]> {
  let chosen: Kind[][] = [[]];
  for (const [set, ofSet] of kinds.entries()) {
    const isAlike = set > 0 && ofSet === kinds[set - 1];
    chosen = chosen.flatMap((so) =>
      // sets of one count are alike: either may come first
      ofSet
        .filter((kind) => !isAlike || kind.steps >= so.at(-1)!.steps)
        .map((kind) => [...so, kind]),
    );
  }
  const ways = new Map<number, Kind[][]>();
  for (const some of chosen) {
    const steps = sum(some.map((kind) => kind.steps));
    const same = ways.get(steps);
    if (same) same.push(some);
    else ways.set(steps, [some]);
  }
  return ways;
}

/** Between what the sums beside the steps lie, of any of the choices. */
function besideOf(chosen: readonly Kind[][]): Window {
  const sumOf = (kinds: readonly Kind[], end: 'low' | 'high'): number =>
    sum(kinds.map(({ beside }) => beside[end]));
  return {
    low: Math.min(...chosen.map((kinds) => sumOf(kinds, 'low'))),
    high: Math.max(...chosen.map((kinds) => sumOf(kinds, 'high'))),
  };
}
