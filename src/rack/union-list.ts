/**
 * All choices of staves for all sets together that lose no more than so much worth. The classes are parted into two
 * halves; the ways of each are listed, and pairs of ways are met whose girths together fall into the window: the
 * number of ways in a half is about the root of the number of choices.
 */

import type { Effort } from './effort.js';
import { eachWayOnGrid, type GridQuestion } from './grid-walk.js';
import { sum } from './sum.js';
import {
  countIn,
  keyOf,
  listHalf,
  lossOf,
  NEARLY,
  numbersIn,
  stepsIn,
  type FreeClass,
  type Half,
} from './union-half.js';
import type { Pricing, UnionQuestion } from './union.js';

/** A choice of staves: how many of each class, and the sum of their distances from the middle. */
export interface Union {
  readonly numbers: Uint16Array;
  readonly offMiddle: number;
}

export interface UnionList {
  /** those that lose least first */
  readonly unions: readonly Union[];
  /** false when there are more of them, some perhaps better than those listed */
  readonly areAll: boolean;
}

/** Of the work allowed, on a grid, before halves are met. */
const SHARE_ON_GRID = 0.3;
/** More choices than this aren't listed. */
const MOST_UNIONS = 20_000;
/** Rounding of sums of losses stays below this. */
const ROUNDING = 1e-6;

/** The choices that lose `mostLoss` or less; null when the effort ended first. */
export function unionsWithin(pricing: Pricing, mostLoss: number, effort: Effort): UnionList | null {
  return onGrid(pricing, mostLoss, effort) ?? byHalves(pricing, mostLoss, effort);
}

/** On a grid few ways may be left, however many there are in each half. Null when that would take too long. */
function onGrid(pricing: Pricing, mostLoss: number, effort: Effort): UnionList | null {
  const question = gridQuestion(pricing.question, pricing.worth);
  if (!question) return null;
  const unions: Union[] = [];
  const limits = { mostLoss, leastOff: leastOff(pricing, mostLoss) };
  const portion = effort.portion(SHARE_ON_GRID * effort.left);
  const areAll = eachWayOnGrid({ ...question, ...limits }, portion, (numbers, offMiddle) => {
    unions.push({ numbers: numbers.slice(), offMiddle });
    return unions.length <= MOST_UNIONS;
  });
  if (!areAll) return null;
  unions.sort((a, b) => b.offMiddle - a.offMiddle);
  return { unions: unions.slice(0, MOST_UNIONS), areAll: unions.length <= MOST_UNIONS };
}

/** All that can answer it, whatever they lose; null without a grid. */
export function gridQuestion(question: UnionQuestion, worth?: Float64Array): GridQuestion | null {
  const { steps, classes, count, window, bungs } = question;
  if (!steps) return null;
  return {
    classes: classes.map(({ girth, offMiddle, standing, staves, canBung }, k) => ({
      worth: worth?.[k] ?? 0,
      girth,
      offMiddle,
      steps: steps.ofClass[k]!,
      least: standing,
      most: staves.length,
      canBung,
    })),
    count,
    steps: steps.sum,
    window,
    bungs: { least: bungs, most: Infinity },
    leastOff: -Infinity,
    mostLoss: Infinity,
  };
}

/** Choices that lose more than one limit and no more than another, best first. */
export function unionsBetween(
  { unions }: UnionList,
  pricing: Pricing,
  { above, upTo }: { readonly above: number; readonly upTo: number },
): readonly Union[] {
  const [least, most] = [leastOff(pricing, upTo), pricing.most - above + 2 * ROUNDING];
  return unions
    .filter(({ offMiddle }) => offMiddle >= least && (above < 0 || offMiddle <= most))
    .sort((a, b) => b.offMiddle - a.offMiddle);
}

/** A choice whose distances from the middle sum to less loses more than `loss`. */
function leastOff(pricing: Pricing, loss: number): number {
  // prices of more than the staves may lose something beside them
  return loss >= largestLoss(pricing) ? -Infinity : pricing.most - loss - ROUNDING;
}

function byHalves(pricing: Pricing, mostLoss: number, effort: Effort): UnionList | null {
  const all = classesOf(pricing);
  const fixed = fixedPart(pricing, all, mostLoss);
  if (fixed.mostNarrow < 0 || fixed.mostWide < 0) return { unions: [], areAll: true };
  const free = all.filter((c) => Math.abs(c.worth) <= mostLoss);
  const count = pricing.question.count - fixed.count;
  const parts = [0, 1].map((side) => free.filter((_, k) => k % 2 === side));
  const [first, second] = parts.map((classes, side) => {
    const other = parts[1 - side]!;
    const least = count - sum(other.map((c) => c.most));
    const most = count - sum(other.map((c) => c.least));
    const { mostNarrow, mostWide } = fixed;
    return listHalf({ classes, count: { least, most }, mostLoss, mostNarrow, mostWide }, effort);
  });
  if (!first || !second) return null;
  const pairs = meet(pricing, { first, second, fixed, count, mostLoss }, effort);
  return effort.exhausted ? null : listed(pricing, { first, second, fixed }, pairs, effort);
}

/** No choice can lose more. */
export function largestLoss(pricing: Pricing): number {
  const { window } = pricing.question;
  const ofClasses = classesOf(pricing).map((c) => Math.abs(c.worth) * (c.most - c.least));
  return sum(ofClasses) + Math.abs(pricing.girthPrice) * (window.high - window.low) + ROUNDING;
}

/** Dear and cheap ones in turn, so that both halves get as many of each. */
function classesOf({ worth, limits, question }: Pricing): readonly FreeClass[] {
  return question.classes
    .map((c, index) => ({
      index,
      worth: worth[index]!,
      worthNarrow: limits?.narrow.worth[index] ?? 0,
      worthWide: limits?.wide.worth[index] ?? 0,
      girth: c.girth,
      steps: question.steps?.ofClass[index] ?? 0,
      least: c.standing,
      most: c.staves.length,
      canBung: c.canBung,
    }))
    .sort((a, b) => Math.abs(b.worth) - Math.abs(a.worth) || a.index - b.index);
}

interface FixedPart {
  readonly numbers: Uint16Array;
  readonly count: number;
  readonly steps: number;
  readonly girth: number;
  readonly bungs: number;
  /** what the others may still lose by the limits */
  readonly mostNarrow: number;
  readonly mostWide: number;
}

/** Classes too dear to depart from: all or none of their staves are taken. */
function fixedPart({ limits }: Pricing, all: readonly FreeClass[], mostLoss: number): FixedPart {
  const numbers = new Uint16Array(all.length);
  let [count, steps, girth, bungs] = [0, 0, 0, 0];
  let mostNarrow = (limits?.narrow.most ?? 0) + ROUNDING;
  let mostWide = (limits?.wide.most ?? 0) + ROUNDING;
  for (const c of all) {
    if (Math.abs(c.worth) <= mostLoss) continue;
    const k = c.worth > 0 ? c.most : c.least;
    numbers[c.index] = k;
    count += k;
    steps += k * c.steps;
    girth += k * c.girth;
    bungs += c.canBung ? k : 0;
    mostNarrow -= lossOf(c, c.worthNarrow, k);
    mostWide -= lossOf(c, c.worthWide, k);
  }
  return { numbers, count, steps, girth, bungs, mostNarrow, mostWide };
}

interface Halves {
  readonly first: Half;
  readonly second: Half;
  readonly fixed: FixedPart;
}

interface Pair {
  readonly a: number;
  readonly b: number;
  readonly loss: number;
}

/** Pairs of ways that fall into the window; one more than `MOST_UNIONS` at most. */
function meet(
  { question, girthPrice }: Pricing,
  halves: Halves & { readonly count: number; readonly mostLoss: number },
  effort: Effort,
): Pair[] {
  const { first, second, fixed, count, mostLoss } = halves;
  const [low, high] = [question.window.low - fixed.girth, question.window.high - fixed.girth];
  const favoured = girthPrice > 0 ? high : low;
  const steps = (question.steps?.sum ?? 0) - fixed.steps;
  const bungs = question.bungs - fixed.bungs;
  const pairs: Pair[] = [];
  for (const [key, range] of first.ofKey) {
    const others = second.ofKey.get(keyOf(count - countIn(key), steps - stepsIn(key)));
    if (!others) continue;
    // as the girth of one half grows, that of the other must shrink
    let top = others.high;
    for (let i = range.low; i < range.high; i++) {
      const a = first.order[i]!;
      const room = high - first.girth[a]! + 2 * NEARLY;
      while (top > others.low && second.girth[second.order[top - 1]!]! > room) top--;
      for (let j = top - 1; j >= others.low; j--) {
        if (!effort.step() || pairs.length > MOST_UNIONS) return pairs;
        const b = second.order[j]!;
        const girth = first.girth[a]! + second.girth[b]!;
        if (girth < low - 2 * NEARLY) break;
        if (girth < low || girth > high) continue;
        const lost = Math.abs(girthPrice * (favoured - girth));
        const loss = first.loss[a]! + second.loss[b]! + lost;
        if (loss <= mostLoss && first.bungs[a]! + second.bungs[b]! >= bungs)
          pairs.push({ a, b, loss });
      }
    }
  }
  return pairs;
}

function listed(
  { question }: Pricing,
  { first, second, fixed }: Halves,
  pairs: readonly Pair[],
  effort: Effort,
): UnionList | null {
  const best = [...pairs].sort((x, y) => x.loss - y.loss).slice(0, MOST_UNIONS);
  const areAll = best.length === pairs.length;
  if (best.length === 0) return { unions: [], areAll };
  const ofFirst = numbersIn(first, new Set(best.map(({ a }) => a)), effort);
  const ofSecond = numbersIn(second, new Set(best.map(({ b }) => b)), effort);
  if (!ofFirst || !ofSecond) return null;
  const unions = best.map(({ a, b }) => {
    const numbers = fixed.numbers.slice();
    for (const [k, c] of first.question.classes.entries()) numbers[c.index] = ofFirst.get(a)![k]!;
    for (const [k, c] of second.question.classes.entries()) numbers[c.index] = ofSecond.get(b)![k]!;
    const offMiddle = sum(question.classes.map((c, k) => c.offMiddle * numbers[k]!));
    return { numbers, offMiddle };
  });
  return { unions, areAll };
}
