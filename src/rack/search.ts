/** Many sets from a large rack: choose the staves, deal them out, mend until all close; if they won't, one set fewer. */

import { aimsOf, closeSet, compareAims, type ClosedSet } from './aims.js';
import { classesOf, type StaveClass } from './classes.js';
import { deal } from './deal.js';
import { attemptOnGrid } from './kind-attempt.js';
import type { Layout } from './layout.js';
import { balance, mend, openSets, refine, type Goal } from './mend.js';
import { oneByOne } from './one-by-one.js';
import { chooseStaves, totalCounts } from './plan.js';
import type { Pool } from './pool.js';
import { seeded, type Random } from './random.js';
import { closingWindows, type Window } from './window.js';

/** Where the search stands, given out between its steps. */
export interface SearchState {
  /** the best whole answer so far */
  readonly best: readonly ClosedSet[];
  /** what is being mended; some of its sets may close already */
  readonly layout: Layout | null;
}

/**
 * Looks for `most` sets, else as many as it can. Yields between steps, so that the caller may stop it there.
 */
export function* search(pool: Pool, most: number): Generator<SearchState, readonly ClosedSet[]> {
  const random = seeded(pool.request.seed ?? 1);
  const classes = classesOf(pool);
  let best: readonly ClosedSet[] = [];
  for (let sets = most; sets > best.length && sets >= most - FEWER_TRIED; sets--) {
    for (const attempt of attempts(pool, classes, sets)) {
      yield { best, layout: null };
      const layout = deal(pool, attempt.used, attempt.counts, attempt.goal.target);
      if (!layout) continue;
      const found = yield* finish(layout, attempt, random, { best, layout });
      if (found.length === most) return found;
      if (isBetter(pool, found, best)) best = found;
    }
  }
  if (best.length < most - NEARLY_ALL) {
    const others = oneByOne(pool, classes, most);
    for (let next = others.next(); ; next = others.next()) {
      const sets = next.value;
      if (sets && isBetter(pool, sets, best)) best = [...sets];
      if (next.done) break;
      yield { best, layout: null };
    }
  }
  return best;
}

/** Fewer sets short than this, and making them one by one hardly makes more. */
const NEARLY_ALL = 1;

/** Beginning anew with fewer sets than this below the bound has never helped. */
const FEWER_TRIED = 2;

interface Attempt {
  readonly used: readonly number[];
  readonly counts: readonly number[];
  readonly goal: Goal;
  /** turns on end that are allowed to close no set more, while few are open */
  readonly patience: number;
}

/** How many total counts are tried for each number of sets. */
const COUNTS_TRIED = 8;

/** Ways to begin, most promising first: without planing, then with it. */
function* attempts(pool: Pool, classes: readonly StaveClass[], sets: number): Generator<Attempt> {
  const { tolerance, plane, count } = pool.request;
  const standing = pool.standing.length;
  for (const allowed of plane > 0 ? [0, plane] : [0]) {
    const window = closingWindows(pool, tolerance, allowed).inner;
    const onGrid = attemptOnGrid(pool, classes, sets, window);
    if (onGrid) {
      const goal = goalFor(pool, onGrid.used, sets, window, count);
      yield { ...onGrid, goal, patience: MORE_PATIENCE };
      // of other counts the steps don't come right, unless standing staves ask for them
      if (standing === 0) continue;
    }
    for (const total of totalCounts(pool, classes, sets, window).slice(0, COUNTS_TRIED)) {
      const counts = evenCounts(total, sets);
      if (standing > counts[0]!) continue;
      const used = chooseStaves(pool, classes, sets, total);
      if (!used) continue;
      const goal = goalFor(pool, used, sets, window, count);
      yield { used, counts, goal, patience: PATIENCE };
    }
  }
}

function goalFor(
  pool: Pool,
  used: readonly number[],
  sets: number,
  window: Window,
  count: { readonly min: number; readonly max: number },
): Goal {
  const share = used.reduce((sum, i) => sum + pool.girth[i]!, 0) / sets;
  return {
    window,
    target: Math.min(window.high, Math.max(window.low, share)),
    count,
    useRest: false,
  };
}

/** Counts that differ by one at most, larger ones first. */
export function evenCounts(total: number, sets: number): number[] {
  const [each, over] = [Math.floor(total / sets), total % sets];
  return Array.from({ length: sets }, (_, j) => each + (j < over ? 1 : 0));
}

/** Mends a layout until it closes; takes sets apart that won't. */
function* finish(
  layout: Layout,
  { goal, patience }: Attempt,
  random: Random,
  state: SearchState,
): Generator<SearchState, readonly ClosedSet[]> {
  const withRest = { ...goal, useRest: layout.rest.length > 1 };
  balance(layout, goal);
  yield* mending(layout, goal, random, state);
  const goesOn = patience > PATIENCE && isHopeful(layout, goal);
  if (goesOn) yield* mending(layout, goal, random, state, patience);
  yield* mending(layout, withRest, random, state);
  for (let open = openSets(layout, goal); open.length > 0; open = openSets(layout, goal)) {
    const apart = open.filter((set) => set > 0 || layout.pool.standing.length === 0).reverse();
    if (apart.length === 0) return [];
    for (const set of apart.slice(0, Math.ceil(apart.length / 3))) layout.dissolve(set);
    yield* mending(layout, { ...goal, useRest: true }, random, state);
  }
  refine(layout, withRest, random);
  return layout.sets.flatMap((staves) => closeSet(layout.pool, staves) ?? []);
}

/** Whether so few sets are open that going on may close them all. */
function isHopeful(layout: Layout, goal: Goal): boolean {
  return openSets(layout, goal).length <= layout.sets.length / 3;
}

function* mending(
  layout: Layout,
  goal: Goal,
  random: Random,
  state: SearchState,
  patience = PATIENCE,
) {
  const turns = mend(layout, goal, random, patience + Math.ceil(layout.sets.length / 2));
  while (!turns.next().done) yield state;
}

const PATIENCE = 30;
/** On a coarse grid, where a fault wanders long before it meets its opposite. */
const MORE_PATIENCE = 1000;

function isBetter(pool: Pool, a: readonly ClosedSet[], b: readonly ClosedSet[]): boolean {
  return compareAims(aimsOf(pool, a), aimsOf(pool, b)) < 0;
}
