/**
 * The questions to be asked for sets whose deviations sum to so much: one for each way that their counts, and on a coarse
 * grid their steps, may be. Only such counts and steps are asked for as sets that close can have; see `kinds.ts`.
 */

import type { StaveClass } from './classes.js';
import type { GridPartings } from './grid-partings.js';
import { kindsOf, type Grid, type Kind } from './kinds.js';
import { steepestOf } from './least-deviation.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import { sum } from './sum.js';
import { withSteps } from './union-grid.js';
import type { UnionQuestion } from './union.js';
import {
  closingWindows,
  ROUNDING,
  sharedWindow,
  type SharedWindow,
  type Window,
} from './window.js';

export interface SharedQuestion {
  /** of each set, larger ones first */
  readonly counts: readonly number[];
  readonly question: UnionQuestion;
  /** on a coarse grid, of two sets: the kinds that they may be of */
  readonly kinds: readonly (readonly [Kind, Kind])[];
}

/** Of one or two sets, unplaned, that deviate by so much together. */
export interface Windows {
  /** mm */
  readonly deviation: number;
  readonly each: Window;
  readonly together: SharedWindow;
}

export function windowsFor(pool: Pool, deviation: number): Windows {
  const each = closingWindows(pool, deviation, 0).outer;
  return { deviation, each, together: sharedWindow(pool, deviation) };
}

/** `grid`: that of the classes, when it is coarse. */
export function questionsFor(
  pool: Pool,
  classes: readonly StaveClass[],
  grid: Grid | null,
  sets: number,
  { deviation, each, together }: Windows,
  tables: GridPartings | null = null,
): readonly SharedQuestion[] {
  const window = sets === 1 ? each : together.sum;
  const bungs = bungsNeeded(pool, sets);
  const kinds = grid && kindsByCount(pool, grid, each, deviation, tables);
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

/** A question for sets of two kinds alone, and between what lies the first set's girth beside its steps less the second's. */
export interface PairQuestion {
  readonly question: UnionQuestion;
  readonly apart: Window;
}

/** Null when no sets of these kinds answer it. */
export function questionFor(
  question: UnionQuestion,
  pool: Pool,
  grid: Grid,
  [a, b]: readonly [Kind, Kind],
  deviation: number,
): PairQuestion | null {
  const turnLess = ({ steps }: Kind): number => Math.PI * pool.request.diameter - steps * grid.step;
  const [turnA, turnB] = [turnLess(a), turnLess(b)];
  // whichever of the sets strays, both together stray by no more than if the steeper one did
  const [ofA, ofB] = [strays(pool, grid, a, deviation), strays(pool, grid, b, deviation)];
  const stray = { low: Math.min(ofA.low, ofB.low), high: Math.max(ofA.high, ofB.high) };
  const most = Math.max(stray.high, -stray.low);
  const { low, high } = question.window;
  const window = {
    low: Math.max(low, a.beside.low + b.beside.low, turnA + turnB + stray.low),
    high: Math.min(high, a.beside.high + b.beside.high, turnA + turnB + stray.high),
  };
  const apart = {
    low: Math.max(a.beside.low - b.beside.high, turnA - turnB - most),
    high: Math.min(a.beside.high - b.beside.low, turnA - turnB + most),
  };
  if (window.low > window.high || apart.low > apart.high) return null;
  return { question: { ...question, window }, apart };
}

/**
 * Between what a set's girth shares at the spec's diameter less a turn lie, when it closes within the deviation; see
 * `leastDeviation`.
 */
function strays(pool: Pool, grid: Grid, { count, steps }: Kind, deviation: number): Window {
  const mean = grid.origin + (steps / count) * grid.step;
  const { diameter } = pool.request;
  return {
    low: -deviation * steepestOf(pool, count, mean, diameter - deviation) - ROUNDING,
    high: deviation * steepestOf(pool, count, mean, diameter) + ROUNDING,
  };
}

/** The kind, as far as it closes within a deviation, mm; what it may have beside its steps may then be nothing. */
export function kindWithin(pool: Pool, grid: Grid, kind: Kind, deviation: number): Kind {
  const turn = Math.PI * pool.request.diameter - kind.steps * grid.step;
  const stray = strays(pool, grid, kind, deviation);
  const low = Math.max(kind.beside.low, turn + stray.low);
  const high = Math.min(kind.beside.high, turn + stray.high);
  return { ...kind, beside: { low, high } };
}

/** Kinds of sets that close within the deviation. */
function kindsByCount(
  pool: Pool,
  grid: Grid,
  window: Window,
  deviation: number,
  tables: GridPartings | null,
): ReadonlyMap<number, Kind[]> {
  const byCount = new Map<number, Kind[]>();
  for (const wide of kindsOf(grid, window, pool.request.count, bungsNeeded(pool, 1))) {
    const closes = kindWithin(pool, grid, wide, deviation);
    if (closes.beside.low > closes.beside.high) continue;
    const kind = tables ? amongLots(grid, closes, tables) : closes;
    if (!kind) continue;
    const same = byCount.get(kind.count);
    if (same) same.push(kind);
    else byCount.set(kind.count, [kind]);
  }
  return byCount;
}

/** The kind, as far as the rack has sets of it; null when it has none. */
function amongLots(grid: Grid, kind: Kind, tables: GridPartings): Kind | null {
  const done = kind.steps * grid.step;
  const window = { low: done + kind.beside.low, high: done + kind.beside.high };
  let [low, high] = [Infinity, -Infinity];
  const ofFirst = new Set<number>();
  tables.eachLot(kind, window, ({ cells, girth }) => {
    low = Math.min(low, girth.low - done);
    high = Math.max(high, girth.high - done);
    ofFirst.add(cells[0].count);
    return false;
  });
  if (low > high) return null;
  const beside = { low: Math.max(low, kind.beside.low), high: Math.min(high, kind.beside.high) };
  return { ...kind, beside, ofFirst };
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
