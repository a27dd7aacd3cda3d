/** Every way to take staves from half of the classes without losing more than so much worth. */

import type { Effort } from './effort.js';
import type { Window } from './window.js';

/** A class whose number may depart from the one worth most. */
export interface FreeClass {
  /** among all classes */
  readonly index: number;
  /** per stave */
  readonly worth: number;
  /** per stave, by the limits for a girth too large and too small */
  readonly worthNarrow: number;
  readonly worthWide: number;
  readonly girth: number;
  /** whole steps of width; 0 without a grid */
  readonly steps: number;
  readonly least: number;
  readonly most: number;
  readonly canBung: boolean;
}

export interface HalfQuestion {
  readonly classes: readonly FreeClass[];
  /** how many staves the half must take, inclusive */
  readonly count: { readonly least: number; readonly most: number };
  /** what it may lose of the three worths */
  readonly mostLoss: number;
  readonly mostNarrow: number;
  readonly mostWide: number;
}

/** Ways as columns of a table: `girth[i]`, `loss[i]` ... belong to way i. */
export interface Half {
  readonly question: HalfQuestion;
  readonly girth: readonly number[];
  readonly loss: readonly number[];
  readonly bungs: readonly number[];
  /** ways by count and steps, then by girth; see `NEARLY` */
  readonly order: Uint32Array;
  /** for each count and steps (see `keyOf`), from where (inclusive) to where (exclusive) in `order` */
  readonly ofKey: ReadonlyMap<number, Window>;
}

/** One number for a count and its steps, to look up others by. */
export function keyOf(count: number, steps: number): number {
  return steps * MORE_THAN_ANY_COUNT + count;
}

export function countIn(key: number): number {
  return key % MORE_THAN_ANY_COUNT;
}

export function stepsIn(key: number): number {
  return Math.floor(key / MORE_THAN_ANY_COUNT);
}

const MORE_THAN_ANY_COUNT = 2 ** 16;

/** Null when the effort ended first. */
export function listHalf(question: HalfQuestion, effort: Effort): Half | null {
  const keys: number[] = [];
  const girth: number[] = [];
  const loss: number[] = [];
  const bungs: number[] = [];
  const walk = new HalfWalk(question, effort, (way) => {
    keys.push(keyOf(way.count, way.steps));
    girth.push(way.girth);
    loss.push(way.loss);
    bungs.push(way.bungs);
  });
  if (!walk.everyWay()) return null;
  const ofKey = rangesByKey(keys);
  const order = new Uint32Array(keys.length);
  const next = new Map([...ofKey].map(([key, { low }]) => [key, low]));
  for (const [way, key] of keys.entries()) {
    const at = next.get(key)!;
    order[at] = way;
    next.set(key, at + 1);
  }
  for (const { low, high } of ofKey.values()) sortByGirth(order.subarray(low, high), girth);
  return effort.step(keys.length) ? { question, girth, loss, bungs, order, ofKey } : null;
}

/** Girths nearer than this, mm, may stand in any order. */
export const NEARLY = 1e-6;

/** Whole steps of `NEARLY` and a place, in one number: numbers are sorted much faster than places by what is there. */
function sortByGirth(ways: Uint32Array, girth: readonly number[]): void {
  const places = 2 ** Math.ceil(Math.log2(ways.length + 1));
  let [least, most] = [Infinity, -Infinity];
  for (const way of ways) {
    least = Math.min(least, girth[way]!);
    most = Math.max(most, girth[way]!);
  }
  if (((most - least) / NEARLY + 1) * places > Number.MAX_SAFE_INTEGER) {
    ways.sort((a, b) => girth[a]! - girth[b]!);
    return;
  }
  const packed = new Float64Array(ways.length);
  for (const [place, way] of ways.entries())
    packed[place] = Math.floor((girth[way]! - least) / NEARLY) * places + place;
  packed.sort();
  const before = ways.slice();
  for (const [k, pair] of packed.entries())
    ways[k] = before[pair - Math.floor(pair / places) * places]!;
}

/** The numbers of each class in some of the ways, by way. */
export function numbersIn(half: Half, ways: ReadonlySet<number>, effort: Effort) {
  const numbers = new Map<number, Uint16Array>();
  let way = 0;
  const walk = new HalfWalk(half.question, effort, ({ numbers: now }) => {
    if (ways.has(way)) numbers.set(way, now.slice());
    way++;
  });
  return walk.everyWay() ? numbers : null;
}

/** Goes through all ways in one and the same order. Its fields are those of the way that it has come to. */
class HalfWalk {
  readonly numbers: Uint16Array;
  count = 0;
  steps = 0;
  girth = 0;
  loss = 0;
  bungs = 0;
  private readonly leastAhead: readonly number[];
  private readonly mostAhead: readonly number[];

  constructor(
    private readonly question: HalfQuestion,
    private readonly effort: Effort,
    private readonly visit: (way: HalfWalk) => void,
  ) {
    const { classes } = question;
    this.numbers = new Uint16Array(classes.length);
    this.leastAhead = sumsFrom(classes.map((c) => c.least));
    this.mostAhead = sumsFrom(classes.map((c) => c.most));
  }

  /** False when the effort ended first. */
  everyWay(): boolean {
    const { mostLoss, mostNarrow, mostWide } = this.question;
    this.descend(0, mostLoss, mostNarrow, mostWide);
    return !this.effort.exhausted;
  }

  /** `left`, `narrow` and `wide` are what may still be lost. */
  private descend(at: number, left: number, narrow: number, wide: number): void {
    if (!this.effort.step()) return;
    const { classes, count, mostLoss } = this.question;
    if (this.count + this.leastAhead[at]! > count.most) return;
    if (this.count + this.mostAhead[at]! < count.least) return;
    const next = classes[at];
    if (!next) {
      this.loss = mostLoss - left;
      return this.visit(this);
    }
    // the most worth first, as far as the loss allows
    const downwards = next.worth > 0;
    for (let step = 0; step <= next.most - next.least; step++) {
      const stillLeft = left - step * Math.abs(next.worth);
      if (stillLeft < 0) return;
      const k = downwards ? next.most - step : next.least + step;
      const stillNarrow = narrow - lossOf(next, next.worthNarrow, k);
      const stillWide = wide - lossOf(next, next.worthWide, k);
      if (stillNarrow < 0 || stillWide < 0) continue;
      this.numbers[at] = k;
      this.add(next, k);
      this.descend(at + 1, stillLeft, stillNarrow, stillWide);
      this.add(next, -k);
    }
  }

  private add(c: FreeClass, k: number): void {
    this.count += k;
    this.steps += k * c.steps;
    this.girth += k * c.girth;
    if (c.canBung) this.bungs += k;
  }
}

/** What is lost of a worth by taking k of a class. */
export function lossOf(
  { most, least }: Pick<FreeClass, 'most' | 'least'>,
  worth: number,
  k: number,
): number {
  return worth > 0 ? worth * (most - k) : -worth * (k - least);
}

/** Sums of the values from each place on. */
function sumsFrom(values: readonly number[]): readonly number[] {
  const sums = [0];
  for (const value of [...values].reverse()) sums.unshift(sums[0]! + value);
  return sums;
}

/** Where the ways of each key go when they stand together. */
function rangesByKey(keys: readonly number[]): Map<number, Window> {
  const many = new Map<number, number>();
  for (const key of keys) many.set(key, (many.get(key) ?? 0) + 1);
  const ranges = new Map<number, Window>();
  let low = 0;
  for (const [key, count] of many) {
    ranges.set(key, { low, high: low + count });
    low += count;
  }
  return ranges;
}
