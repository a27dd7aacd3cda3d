/**
 * What a choice of staves for all sets together is worth by the rest that it leaves.
 *
 * All sets together take n staves whose girth shares sum to a known amount. Among such choices the one that leaves the
 * widths nearest the middle on the rack takes the widths farthest from it. Priced by Lagrange multipliers (one for the
 * count, one for the girth), every class has a worth per stave: positive ones are taken, negative ones left, and any
 * departure loses its worth. `union-list.ts` lists choices by growing loss.
 */

import type { StaveClass } from './classes.js';
import { ROUNDING, type Window } from './window.js';

export interface UnionQuestion {
  readonly classes: readonly StaveClass[];
  readonly count: number;
  /** of all sets together */
  readonly window: Window;
  /** at least so many that can be bung staves */
  readonly bungs: number;
  /**
   * when widths lie on a grid, the whole steps of each class and what they must sum to; `girth` and `window` then
   * stand for what is left of them beside the steps
   */
  readonly steps?: { readonly ofClass: readonly number[]; readonly sum: number };
}

/** Prices and what they imply; null when no choice of that count reaches the window. */
export interface Pricing {
  readonly question: UnionQuestion;
  /** per stave of each class */
  readonly worth: Float64Array;
  /** per mm of girth (beside the steps) */
  readonly girthPrice: number;
  /** no choice has a larger sum of distances from the middle */
  readonly most: number;
  /** what else a choice can't lose, since its girth may be neither above the window nor below it; null: not known */
  readonly limits: { readonly narrow: LossLimit; readonly wide: LossLimit } | null;
}

/** A second worth for the staves of each class, and the most of it that a choice in the window may lose. */
export interface LossLimit {
  readonly worth: Float64Array;
  readonly most: number;
}

export function price(question: UnionQuestion): Pricing | null {
  const { window } = question;
  const target = (window.low + window.high) / 2;
  let [low, high] = [-STEEPEST, STEEPEST];
  // sums of the same shares in another order differ by rounding
  const [widest, narrowest] = [fill(question, low).girth, fill(question, high).girth];
  if (widest < window.low - ROUNDING || narrowest > window.high + ROUNDING) return null;
  for (let turn = 0; turn < 50; turn++) {
    const middle = (low + high) / 2;
    if (fill(question, middle).girth > target) low = middle;
    else high = middle;
  }
  const girthPrice = high;
  const { marginal } = fill(question, girthPrice);
  const worth = Float64Array.from(
    question.classes,
    (c) => c.offMiddle - girthPrice * c.girth - marginal,
  );
  const favoured = girthPrice > 0 ? window.high : window.low;
  let most = girthPrice * favoured + marginal * question.count;
  for (const [c, { staves, standing }] of question.classes.entries())
    most += worth[c]! * (worth[c]! > 0 ? staves.length : standing);
  return { question, worth, girthPrice, most, limits: null };
}

/** At a girth price beyond this the choice is by width alone: distances change by at most 1 per mm of width. */
const STEEPEST = 1e4;

/** Takes the classes of most worth at a girth price; `marginal` is the worth of the last one taken. */
function fill({ classes, count }: UnionQuestion, girthPrice: number) {
  const order = classes
    .map((c) => ({ c, worth: c.offMiddle - girthPrice * c.girth }))
    .sort((a, b) => b.worth - a.worth);
  let left = count;
  let girth = 0;
  for (const { standing, girth: share } of classes) {
    left -= standing;
    girth += standing * share;
  }
  let marginal = order[0]?.worth ?? 0;
  for (const { c, worth } of order) {
    if (left <= 0) break;
    const take = Math.min(left, c.staves.length - c.standing);
    if (take === 0) continue;
    left -= take;
    girth += take * c.girth;
    marginal = worth;
  }
  return { girth, marginal };
}
