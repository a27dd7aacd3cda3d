/** Parts the staves of one or two sets so that all close and share what deviation there is. */

import { closeSet, hundredths, type ClosedSet } from './aims.js';
import { classesOf, stavesOf, type StaveClass } from './classes.js';
import { deal } from './deal.js';
import type { Effort } from './effort.js';
import type { Size } from './exchange.js';
import type { Layout } from './layout.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import type { Random } from './random.js';
import { sum } from './sum.js';
import { pricingsOf } from './union-grid.js';
import { largestLoss, unionsWithin } from './union-list.js';
import type { Pricing } from './union.js';

/** How often another dealing is tried before all ways are gone through. */
const TRIES = 6;
/** What exchanges, pricing a question and judging one way cost, in steps of listing. */
const EXCHANGING = 20_000;
const PRICING = 20_000;
const JUDGING = 60;
/** Losses are looked at in these steps. */
const FIRST_LOSS = 0.5;
const LOSS_GROWTH = 2;

export interface SplitLimit {
  /** whole hundredths of a millimetre, of both together */
  readonly deviation: number;
  /** the girth of one then exceeds that of the other by no more than this, mm */
  readonly apart: number;
}

/**
 * The sets, unplaned, with deviations that sum to `limit.deviation` or less. Null when there are none
 * for certain, 'unknown' when the effort ended first.
 */
export function split(
  pool: Pool,
  staves: readonly number[],
  counts: readonly number[],
  { deviation: mostDeviation, apart }: SplitLimit,
  random: Random,
  effort: Effort,
): readonly ClosedSet[] | null | 'unknown' {
  const good = (sets: readonly (readonly number[])[]): readonly ClosedSet[] | null => {
    const closed = sets.flatMap((set) => closeSet(pool, set) ?? []);
    const deviation = closed.reduce((sum, set) => sum + set.deviation, 0);
    const unplaned = closed.every(({ planing }) => planing === 0);
    const all = closed.length === sets.length && unplaned;
    return all && hundredths(deviation) <= mostDeviation ? closed : null;
  };
  if (counts.length === 1) return good([staves]);
  const questions = questionsOf(pool, staves, counts, apart);
  if (!effort.step(PRICING)) return 'unknown';
  if (questions.length === 0) return null;
  return (
    byExchange(pool, staves, counts, good, random, effort) ??
    byListing(staves, questions, good, effort)
  );
}

type Judge = (sets: readonly (readonly number[])[]) => readonly ClosedSet[] | null;

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

interface SplitQuestion {
  readonly classes: readonly StaveClass[];
  readonly pricing: Pricing;
}

/** What the first set may be; the second is what it leaves. */
function questionsOf(
  pool: Pool,
  staves: readonly number[],
  counts: readonly number[],
  apart: number,
): readonly SplitQuestion[] {
  const sorted = [...staves].sort((a, b) => a - b);
  const classes = classesOf(pool, sorted);
  const girth = sum(sorted.map((i) => pool.girth[i]!));
  const window = { low: (girth - apart) / 2, high: (girth + apart) / 2 };
  const bungs = bungsNeeded(pool, 1);
  const ofFirst = pool.standing.length > 0 ? [...new Set(counts)] : [counts[0]!];
  return ofFirst.flatMap((count) =>
    pricingsOf({ classes, count, window, bungs }).map((pricing) => ({ classes, pricing })),
  );
}

/** Goes through all choices of the first set. */
function byListing(
  staves: readonly number[],
  questions: readonly SplitQuestion[],
  good: Judge,
  effort: Effort,
): readonly ClosedSet[] | null | 'unknown' {
  for (const { classes, pricing } of questions) {
    const end = largestLoss(pricing);
    let seen = 0;
    for (let loss = FIRST_LOSS; ; loss = Math.min(end, loss * LOSS_GROWTH)) {
      const list = unionsWithin(pricing, loss, effort);
      if (!list) return 'unknown';
      for (const { numbers } of list.unions.slice(seen)) {
        if (!effort.step(JUDGING)) return 'unknown';
        const first = new Set(stavesOf(classes, numbers));
        const found = good([[...first], staves.filter((i) => !first.has(i))]);
        if (found) return found;
      }
      if (!list.areAll) return 'unknown';
      seen = list.unions.length;
      if (loss >= end) break;
    }
  }
  return null;
}
