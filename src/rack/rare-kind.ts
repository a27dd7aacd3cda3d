/**
 * Two sets of which one is of a kind that the rack hardly gives: few choices of staves make it, each of which is tried
 * with the best that goes with it. Among the staves of both together such a set is hard to find.
 */

import { closeSet, COMPARED_TO, type ClosedSet } from './aims.js';
import { stavesOf, type StaveClass } from './classes.js';
import type { Effort } from './effort.js';
import { eachWayOnGrid } from './grid-walk.js';
import type { Grid, Kind } from './kinds.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import { closedWithin } from './split.js';
import { takeBest } from './take-best.js';
import { pricingOf } from './union-grid.js';
import { kindWithin } from './union-jobs.js';
import { gridQuestion, largestLoss, unionsBetween, unionsWithin } from './union-list.js';
import type { Pricing, UnionQuestion } from './union.js';
import type { Window } from './window.js';

export interface PairQuestion {
  readonly grid: Grid;
  readonly kinds: readonly [Kind, Kind];
  /** whole hundredths of a millimetre, of both together */
  readonly deviation: number;
  /** what distances from the middle must sum to more than */
  readonly above: number;
}

export interface BestPair {
  /** null when there is none */
  readonly sets: readonly ClosedSet[] | null;
  readonly offMiddle: number;
}

/** More choices than this aren't few. */
const FEW = 1000;
/** Work allowed for listing them. */
const STEPS_FOR_LISTING = 200_000;
/** What judging two sets, and pricing a question, cost, in steps. */
const JUDGING = 60;
const PRICING = 2000;
/** Work allowed for finding what goes with one. */
const STEPS_FOR_ONE = 300_000;
/** Losses are looked at in these steps. */
const FIRST_LOSS = 0.5;
const LOSS_GROWTH = 2;
/** Better by less than this is no better: rounding, mm. */
const SAME_OFF = 1e-5;

/** Null when both kinds are common, or when the effort ended first. No staves may be standing. */
export function bestWithRare(pool: Pool, question: PairQuestion, effort: Effort): BestPair | null {
  const { grid, kinds } = question;
  for (const [rare, other] of [kinds, [kinds[1], kinds[0]] as const]) {
    const few = listFew(pool, grid, rare, effort);
    if (few) return bestPair(pool, question, few, other, effort);
  }
  return null;
}

interface Way {
  readonly numbers: Uint16Array;
  readonly offMiddle: number;
}

function listFew(pool: Pool, grid: Grid, kind: Kind, effort: Effort): readonly Way[] | null {
  const few: Way[] = [];
  const question = gridQuestion(questionOf(pool, grid, kind))!;
  const areAll = eachWayOnGrid(
    question,
    effort.portion(STEPS_FOR_LISTING),
    (numbers, offMiddle) => {
      few.push({ numbers: numbers.slice(), offMiddle });
      return few.length <= FEW;
    },
  );
  return areAll && few.length <= FEW ? few : null;
}

/** A set of a kind; `girth` of its classes is what they have beside their steps. */
function questionOf(pool: Pool, { classes, steps, beside }: Grid, kind: Kind): UnionQuestion {
  return {
    classes: classes.map((c, k) => ({ ...c, girth: beside[k]! })),
    count: kind.count,
    window: kind.beside,
    bungs: bungsNeeded(pool, 1),
    steps: { ofClass: steps, sum: kind.steps },
  };
}

function bestPair(
  pool: Pool,
  { grid, deviation, above }: PairQuestion,
  few: readonly Way[],
  other: Kind,
  effort: Effort,
): BestPair | null {
  let best: BestPair = { sets: null, offMiddle: above };
  const whole = pricingOf(questionOf(pool, grid, other));
  if (!whole) return best;
  const tries = few.flatMap((way): Try[] => {
    const set = closeSet(pool, stavesOf(grid.classes, way.numbers));
    if (!set) return [];
    const left = kindWithin(pool, grid, other, (deviation + 1) * COMPARED_TO - set.deviation);
    return [{ way, isOwn: false, pricing: without(whole, way.numbers, left.beside) }];
  });
  const take = (): Try | undefined => takeBest(tries, (a, b) => promised(a) > promised(b));
  for (let next = take(); next; next = take()) {
    if (promised(next) <= best.offMiddle + SAME_OFF) break;
    if (!next.isOwn) {
      // prices of the whole rack are good enough to leave a way for later, not to look for what goes with it
      const { window: left } = next.pricing.question;
      const pricing = left.low > left.high ? null : pricingOf(next.pricing.question);
      if (pricing) tries.push({ ...next, isOwn: true, pricing });
      if (!effort.step(PRICING)) return null;
      continue;
    }
    const answer = bestBeside(pool, grid.classes, next, best, deviation, effort);
    if (!answer) return null;
    best = answer;
  }
  return best;
}

interface Try {
  readonly way: Way;
  /** of the other set, from what the way leaves on the rack */
  readonly pricing: Pricing;
  /** whether the prices are those of what is left, not of the whole rack */
  readonly isOwn: boolean;
}

/** What both sets' distances from the middle sum to at most. */
function promised({ way, pricing }: Try): number {
  return way.offMiddle + pricing.most;
}

/**
 * The same prices where staves are taken from the rack, and with a narrower window. Any prices give a true bound: it falls
 * by what the staves taken were worth.
 */
function without(whole: Pricing, taken: Uint16Array, window: Window): Pricing {
  const { question, worth, girthPrice } = whole;
  const favoured = (of: Window): number => (girthPrice > 0 ? of.high : of.low);
  let most = whole.most + girthPrice * (favoured(window) - favoured(question.window));
  for (const [c, many] of taken.entries()) most -= Math.max(0, worth[c]!) * many;
  const classes = question.classes.map((c, k) => ({ ...c, staves: c.staves.slice(taken[k]) }));
  return { ...whole, question: { ...question, classes, window }, most, limits: null };
}

/** The better of `best` and what goes best with one way; null when the effort ended first. */
function bestBeside(
  pool: Pool,
  all: readonly StaveClass[],
  { way, pricing }: Try,
  best: BestPair,
  deviation: number,
  effort: Effort,
): BestPair | null {
  const { classes } = pricing.question;
  const first = stavesOf(all, way.numbers);
  const end = Math.min(largestLoss(pricing), way.offMiddle + pricing.most - best.offMiddle);
  let above = -1;
  for (let loss = Math.min(FIRST_LOSS, end); ; loss = Math.min(end, LOSS_GROWTH * loss)) {
    const list = unionsWithin(pricing, loss, effort.portion(STEPS_FOR_ONE));
    if (!list) return null;
    for (const { numbers, offMiddle } of unionsBetween(list, pricing, { above, upTo: loss })) {
      const both = way.offMiddle + offMiddle;
      if (both <= best.offMiddle + SAME_OFF) break;
      if (!effort.step(JUDGING)) return null;
      const sets = closedWithin(pool, [first, stavesOf(classes, numbers)], deviation);
      if (sets) return list.areAll ? { sets, offMiddle: both } : null;
    }
    if (!list.areAll) return null;
    if (loss >= end) return best;
    above = loss;
  }
}
