/**
 * Widths read to a coarse step lie on a grid, and so do their sums; girth shares lie a little beside it, by an amount
 * that grows with the cube of the width. Choices that reach a girth exactly are then rare: each sum of steps asks for
 * an amount beside it of its own. Priced sum by sum, with a third multiplier for the steps, they are found all the same.
 */

import { sum } from './sum.js';
import type { StaveClass } from './classes.js';
import { commonStep, gridFrom, kindsOf, type Grid } from './kinds.js';
import type { Window } from './window.js';
import { price, type LossLimit, type Pricing, type UnionQuestion } from './union.js';

/** On finer grids, mm, sums lie densely enough without this. */
const COARSE = 0.2;

/** Prices of a question, one for each way that its sums may lie on a grid; empty when nothing can answer it. */
export function pricingsOf(question: UnionQuestion): readonly Pricing[] {
  return onGrid(question).flatMap((q) => pricingOf(q) ?? []);
}

/** Null when nothing can answer it. */
export function pricingOf(question: UnionQuestion): Pricing | null {
  const pricing = question.steps ? priceOnGrid(question) : price(question);
  return pricing && pricing.most >= 0 ? pricing : null;
}

/** The classes on a coarse grid; null when their widths lie on none. */
export function coarseGrid(classes: readonly StaveClass[]): Grid | null {
  const step = commonStep(classes);
  return step < COARSE ? null : gridInSmall(classes, step);
}

/** The grid of a rack: a finer one too, where sets of few kinds close within a window. */
export function gridForKinds(
  classes: readonly StaveClass[],
  window: Window,
  count: { readonly min: number; readonly max: number },
): Grid | null {
  const step = commonStep(classes);
  if (step < Math.min(COARSE, window.high - window.low)) return null;
  const grid = gridInSmall(classes, step);
  return step >= COARSE || kindsOf(grid, window, count, 0).length <= FEW_KINDS ? grid : null;
}

const FEW_KINDS = 20;

/** Counted from a width of less than a step, so that what is beside the steps is small. */
function gridInSmall(classes: readonly StaveClass[], step: number): Grid {
  const narrowest = classes[0]!.width;
  return gridFrom(classes, narrowest - Math.floor(narrowest / step) * step, step);
}

/** The question with its sum of steps known, and then only what is beside them to be met. */
export function withSteps(question: UnionQuestion, grid: Grid, steps: number): UnionQuestion {
  const { low, high } = question.window;
  const done = steps * grid.step;
  return {
    ...question,
    classes: question.classes.map((c, k) => ({ ...c, girth: grid.beside[k]! })),
    window: { low: low - done, high: high - done },
    steps: { ofClass: grid.steps, sum: steps },
  };
}

/**
 * What distances from the middle of the rack's range can sum to, for so many staves of so many steps: `base` and whole
 * steps of `step` more or less. Distances are widths less the middle, with the other sign where the middle is wider: a
 * change of twice as much each, which is a whole number of steps, and an even one when the middle lies on the grid.
 */
export function offLattice(
  grid: Grid,
  { count, steps }: UnionQuestion,
): { readonly base: number; readonly step: number } {
  const { classes, origin } = grid;
  const middle = (classes[0]!.width + classes.at(-1)!.width) / 2;
  const isOnGrid = (grid.steps[0]! + grid.steps.at(-1)!) % 2 === 0;
  return {
    base: steps!.sum * grid.step + count * (origin - middle),
    step: isOnGrid ? 2 * grid.step : grid.step,
  };
}

/** The question, asked for each sum of steps that may answer it; as it is when widths lie on no coarse grid. */
function onGrid(question: UnionQuestion): readonly UnionQuestion[] {
  const { classes, count, window } = question;
  if (question.steps) return [question];
  const grid = coarseGrid(classes);
  if (!grid) return [question];
  const ascending = classes
    .flatMap((c, k) => c.staves.map(() => grid.beside[k]!))
    .sort((a, b) => a - b);
  const least = sum(ascending.slice(0, count));
  const most = sum(ascending.slice(-count));
  const questions: UnionQuestion[] = [];
  const first = Math.ceil((window.low - most) / grid.step);
  for (let s = first; s * grid.step + least <= window.high; s++)
    questions.push(withSteps(question, grid, s));
  return questions;
}

/** Turns of the search for each price; the last search of all goes to the last bit. */
const TURNS = 24;
const LAST_TURNS = 64;
/** Prices beyond this are out of the question, per mm or per step. */
const STEEPEST = 1e6;
/** A first guess at the largest price; it grows as long as that isn't enough. */
const FIRST_BRACKET = 4;

/**
 * Prices for girth and steps together: a bisection for the girth, and within it one for the steps. Any prices give a
 * true bound; good ones give a close one. Null when no mixture of choices reaches steps and girth.
 */
function priceOnGrid(question: UnionQuestion): Pricing | null {
  const filler = new Filler(question);
  const { window } = question;
  const [least, most] = [filler.mixture(0, 1), filler.mixture(0, -1)];
  if (least > window.high || most < window.low) return null;
  // a window that the best choice reaches unasked needs no price, else the nearer of its ends is aimed at
  const unasked = filler.mixture(1, 0);
  if (unasked >= window.low && unasked <= window.high) return filler.pricing(0);
  const nearest = unasked > window.high ? window.high : window.low;
  // at the very edge of what can be reached, prices have no end
  const inside = (most - least) / 1000;
  const target = Math.min(most - inside, Math.max(least + inside, nearest));
  const tooMuch = (price: number): boolean => filler.mixture(1, price) > target;
  let [low, high] = bracket(tooMuch);
  for (let turn = 0; turn < TURNS; turn++) {
    const price = (low + high) / 2;
    if (tooMuch(price)) low = price;
    else high = price;
  }
  return filler.pricing((low + high) / 2);
}

/** A price that is too low and one that is too high. */
function bracket(isTooLow: (price: number) => boolean): [number, number] {
  let [low, high] = [-FIRST_BRACKET, FIRST_BRACKET];
  while (low > -STEEPEST && !isTooLow(low)) [low, high] = [4 * low, low];
  while (high < STEEPEST && isTooLow(high)) [low, high] = [high, 4 * high];
  return [low, high];
}

class Filler {
  private readonly order: number[];
  private readonly value: Float64Array;
  private readonly steps: readonly number[];

  constructor(private readonly question: UnionQuestion) {
    this.order = [...question.classes.keys()];
    this.value = new Float64Array(question.classes.length);
    this.steps = question.steps!.ofClass;
  }

  /**
   * The girth of the choice of most value, at the price of steps that makes the steps right. It is a mixture of two
   * choices: of the values that staves have, `share` of the distance from the middle less the price of girth.
   */
  mixture(share: number, girthPrice: number): number {
    const [low, high] = this.stepPrices(share, girthPrice);
    const many = this.fill(share, girthPrice, low);
    const few = this.fill(share, girthPrice, high);
    const apart = many.steps - few.steps;
    const ofFew = apart > 0 ? (many.steps - this.question.steps!.sum) / apart : 0;
    return many.girth + Math.min(1, Math.max(0, ofFew)) * (few.girth - many.girth);
  }

  private stepPrices(share: number, girthPrice: number, turns = TURNS): readonly [number, number] {
    const isTooLow = (price: number): boolean =>
      this.fill(share, girthPrice, price).steps > this.question.steps!.sum;
    let [low, high] = bracket(isTooLow);
    for (let turn = 0; turn < turns; turn++) {
      const middle = (low + high) / 2;
      if (isTooLow(middle)) low = middle;
      else high = middle;
    }
    return [low, high];
  }

  /** Takes the classes of most value at these prices; `marginal` is the value of the last one taken. */
  private fill(share: number, girthPrice: number, stepPrice: number) {
    const { classes, count } = this.question;
    for (const [k, c] of classes.entries())
      this.value[k] = share * c.offMiddle - girthPrice * c.girth - stepPrice * this.steps[k]!;
    this.order.sort((a, b) => this.value[b]! - this.value[a]!);
    let left = count;
    let [girth, steps, marginal] = [0, 0, this.value[this.order[0]!]!];
    for (const [k, c] of classes.entries()) {
      left -= c.standing;
      girth += c.standing * c.girth;
      steps += c.standing * this.steps[k]!;
    }
    for (const k of this.order) {
      const take = Math.min(left, free(classes[k]!));
      if (take <= 0) continue;
      left -= take;
      girth += take * classes[k]!.girth;
      steps += take * this.steps[k]!;
      marginal = this.value[k]!;
    }
    return { girth, steps, marginal };
  }

  pricing(girthPrice: number): Pricing {
    const { question } = this;
    const { window } = question;
    const { worth, most } = this.priced(1, girthPrice);
    const favoured = girthPrice > 0 ? window.high : window.low;
    const [narrow, wide] = [this.priced(0, 1), this.priced(0, -1)];
    const limits = {
      narrow: { worth: narrow.worth, most: narrow.most + window.high },
      wide: { worth: wide.worth, most: wide.most - window.low },
    };
    return { question, worth, girthPrice, most: most + girthPrice * favoured, limits };
  }

  /** Worths per class at these prices, and the most value (see `fill`) of any choice of the right count and steps. */
  private priced(share: number, girthPrice: number): LossLimit {
    const { classes, count, steps } = this.question;
    const [, stepPrice] = this.stepPrices(share, girthPrice, LAST_TURNS);
    const { marginal } = this.fill(share, girthPrice, stepPrice);
    const worth = this.value.map((value) => value - marginal);
    let most = stepPrice * steps!.sum + marginal * count;
    for (const [k, { staves, standing }] of classes.entries())
      most += worth[k]! * (worth[k]! > 0 ? staves.length : standing);
    return { worth, most };
  }
}

function free({ staves, standing }: StaveClass): number {
  return staves.length - standing;
}
