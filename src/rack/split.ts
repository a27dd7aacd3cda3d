/** Parts the staves of one or two sets so that all close and share what deviation there is. */

import { closeAll, closenessOf, type ClosedSet } from './aims.js';
import { classesOf, stavesOf } from './classes.js';
import { deal } from './deal.js';
import type { Effort } from './effort.js';
import type { Size } from './exchange.js';
import { eachWayOnGrid } from './grid-walk.js';
import { gridFrom, type Grid, type Kind } from './kinds.js';
import type { Layout } from './layout.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import type { Random } from './random.js';
import { sum } from './sum.js';
import { pricingsOf, withSteps } from './union-grid.js';
import { gridQuestion, largestLoss, unionsBetween, unionsWithin } from './union-list.js';
import type { Pricing, UnionQuestion } from './union.js';
import { ROUNDING } from './window.js';

/** How often another dealing is tried before all ways are gone through. */
const TRIES = 6;
/** What exchanges, pricing a question and judging one way cost, in steps of listing. */
const EXCHANGING = 20_000;
const PRICING = 20_000;
const JUDGING = 60;
/** What beginning a walk on a grid costs. */
const BEGINNING = 500;
/** Work allowed on a grid, before other ways are tried. */
const STEPS_ON_GRID = 50_000;
/** Losses are looked at in these steps. */
const FIRST_LOSS = 0.5;
const LOSS_GROWTH = 2;

export interface SplitLimit {
  /** whole hundredths of a millimetre, of both together */
  readonly deviation: number;
  /** the girth of one then exceeds that of the other by no more than this, mm */
  readonly apart: number;
  /** on a coarse grid: what kinds the sets are of, in the order of their counts, and that grid */
  readonly kinds: { readonly pair: readonly [Kind, Kind]; readonly grid: Grid } | null;
}

/**
 * The sets, unplaned, with deviations that sum to `limit.deviation` or less. Null when there are none
 * for certain, 'unknown' when the effort ended first.
 */
export function split(
  pool: Pool,
  staves: readonly number[],
  counts: readonly number[],
  limit: SplitLimit,
  random: Random,
  effort: Effort,
): readonly ClosedSet[] | null | 'unknown' {
  const good: Judge = (sets) => closedWithin(pool, sets, limit.deviation);
  if (counts.length === 1) return good([staves]);
  const questions = questionsOf(pool, staves, counts, limit);
  if (limit.kinds) {
    const onGrid = walkGrid(staves, questions, good, effort);
    if (onGrid !== 'unknown') return onGrid;
  }
  const priced = questions.flatMap((question) => pricingsOf(question));
  if (!effort.step(PRICING)) return 'unknown';
  if (priced.length === 0) return null;
  return (
    byExchange(pool, staves, counts, good, random, effort) ??
    byListing(staves, priced, good, effort)
  );
}

/** The same of two sets of known kinds, as far as a walk on their grid tells before long. */
export function splitOnGrid(
  pool: Pool,
  staves: readonly number[],
  counts: readonly number[],
  limit: SplitLimit,
  effort: Effort,
): readonly ClosedSet[] | null | 'unknown' {
  const good: Judge = (sets) => closedWithin(pool, sets, limit.deviation);
  return walkGrid(staves, questionsOf(pool, staves, counts, limit), good, effort);
}

/** The sets as they close, when all do without planing and deviate by so many hundredths together. */
export function closedWithin(
  pool: Pool,
  sets: readonly (readonly number[])[],
  mostDeviation: number,
): readonly ClosedSet[] | null {
  const closed = closeAll(pool, sets);
  if (!closed) return null;
  const { planing, deviation } = closenessOf(closed);
  return planing === 0 && deviation <= mostDeviation ? closed : null;
}

type Judge = (sets: readonly (readonly number[])[]) => readonly ClosedSet[] | null;

/** Goes through the choices of the first set; 'unknown' when that would take too long. */
function walkGrid(
  staves: readonly number[],
  questions: readonly UnionQuestion[],
  good: Judge,
  effort: Effort,
): readonly ClosedSet[] | null | 'unknown' {
  for (const unpriced of questions) {
    const { classes } = unpriced;
    const question = gridQuestion(unpriced)!;
    const portion = effort.portion(STEPS_ON_GRID);
    let found: readonly ClosedSet[] | null = null;
    const bungStaves = sum(classes.map((c) => (c.canBung ? c.staves.length : 0)));
    const bungs = { ...question.bungs, most: bungStaves - question.bungs.least };
    const isDone = eachWayOnGrid({ ...question, bungs }, portion, (numbers) => {
      const first = new Set(stavesOf(classes, numbers));
      found = good([[...first], staves.filter((i) => !first.has(i))]);
      return found === null && portion.step(JUDGING);
    });
    if (found) return found;
    if (!isDone || !effort.step(BEGINNING)) return 'unknown';
  }
  return null;
}

function byExchange(
  pool: Pool,
  staves: readonly number[],
  counts: readonly number[],
  good: Judge,
  random: Random,
  effort: Effort,
): readonly ClosedSet[] | null {
  const target = staves.reduce((sum, i) => sum + pool.girth[i]!, 0) / counts.length;
  const layout = deal(pool, staves, counts, target);
  for (let turn = 0; layout && turn < TRIES && effort.step(EXCHANGING); turn++) {
    for (const size of [1, 2, 3] as const) {
      halve(layout, size);
      const found = good(layout.sets);
      if (found) return found;
    }
    shuffle(layout, random);
  }
  return null;
}

/** The exchange between both sets that makes their girths most alike. */
function halve(layout: Layout, size: Size): void {
  const apart = (layout.girth[0]! - layout.girth[1]!) / 2;
  const found = layout.find(0, 1, apart, [size, size]);
  if (found && Math.abs(apart - found.lowersBy) < Math.abs(apart)) layout.exchange(0, 1, found);
}

/** Some exchange at random, to begin anew from. */
function shuffle(layout: Layout, random: Random): void {
  const wanted = (random.unit() - 0.5) * 20;
  const found = layout.find(0, 1, wanted, [3, 3]) ?? layout.find(0, 1, wanted, [1, 1]);
  if (found) layout.exchange(0, 1, found);
}

/** What the first set may be; the second is what it leaves. */
function questionsOf(
  pool: Pool,
  staves: readonly number[],
  counts: readonly number[],
  { apart, kinds }: SplitLimit,
): readonly UnionQuestion[] {
  const sorted = [...staves].sort((a, b) => a - b);
  const classes = classesOf(pool, sorted);
  const girth = sum(sorted.map((i) => pool.girth[i]!));
  const window = { low: (girth - apart) / 2, high: (girth + apart) / 2 };
  const question = { classes, count: counts[0]!, window, bungs: bungsNeeded(pool, 1) };
  // alike sets may change places, unless one is to have the staves that stand
  const isEitherFirst = pool.standing.length > 0;
  if (!kinds) {
    const ofFirst = isEitherFirst ? [...new Set(counts)] : [counts[0]!];
    return ofFirst.map((count) => ({ ...question, count }));
  }
  const [a, b] = kinds.pair;
  const orders = isEitherFirst && a !== b ? [kinds.pair, [b, a] as const] : [kinds.pair];
  const grid = gridFrom(classes, kinds.grid.origin, kinds.grid.step);
  return orders.flatMap(([first, second]) => ofKinds(question, grid, girth, first, second) ?? []);
}

/** The question for a first set of a kind that leaves one of another; null when their windows exclude each other. */
function ofKinds(
  question: UnionQuestion,
  grid: Grid,
  girth: number,
  first: Kind,
  second: Kind,
): UnionQuestion | null {
  const stepped = withSteps({ ...question, count: first.count }, grid, first.steps);
  const beside = girth - (first.steps + second.steps) * grid.step;
  const low = Math.max(stepped.window.low, first.beside.low, beside - second.beside.high);
  const high = Math.min(stepped.window.high, first.beside.high, beside - second.beside.low);
  return low - high > ROUNDING
    ? null
    : { ...stepped, window: { low: low - ROUNDING, high: high + ROUNDING } };
}

/** Goes through all choices of the first set. */
function byListing(
  staves: readonly number[],
  pricings: readonly Pricing[],
  good: Judge,
  effort: Effort,
): readonly ClosedSet[] | null | 'unknown' {
  for (const pricing of pricings) {
    const { classes } = pricing.question;
    const end = largestLoss(pricing);
    let above = -1;
    for (let loss = FIRST_LOSS; ; loss = Math.min(end, loss * LOSS_GROWTH)) {
      const list = unionsWithin(pricing, loss, effort);
      if (!list) return 'unknown';
      for (const { numbers } of unionsBetween(list, pricing, { above, upTo: loss })) {
        if (!effort.step(JUDGING)) return 'unknown';
        const first = new Set(stavesOf(classes, numbers));
        const found = good([[...first], staves.filter((i) => !first.has(i))]);
        if (found) return found;
      }
      if (!list.areAll) return 'unknown';
      above = loss;
      if (loss >= end) break;
    }
  }
  return null;
}
