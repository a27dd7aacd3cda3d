/**
 * What a choice of staves for two sets is worth by the rest that it leaves, when it must give a set of each of two kinds.
 *
 * The prices of `union.ts` know nothing of the parting: where one set must be of widths all alike and the other of widths
 * far apart, most choices that they promise can't be parted. Here each set has prices of its own for staves, steps, what
 * is beside them and a bung stave, out of a linear programme. A stave is worth what it is worth to the set that it is
 * worth more to.
 */

import type { Grid, Kind } from './kinds.js';
import { mostGain } from './simplex.js';
import type { Pricing, UnionQuestion } from './union.js';
import type { Window } from './window.js';

/** What making a set is worth: more than all staves together. */
const SET = 1e5;

/**
 * Prices of the question for a set of each kind; null when no choice gives them. Whatever the prices are, the bound is
 * true: every constraint of the sets is multiplied by a price that isn't negative, and added up.
 * `apart`: between what the first set's girth beside its steps less the second's lies.
 */
export function priceJointly(
  question: UnionQuestion,
  grid: Grid,
  kinds: readonly [Kind, Kind],
  apart: Window,
): Pricing | null {
  const rows = new Rows(question, grid, kinds, apart);
  const { prices } = mostGain(rows.programme());
  return rows.pricing(prices);
}

class Rows {
  private readonly many: number;
  private readonly steps: readonly number[];
  private readonly middle: number;
  private readonly bung: readonly number[];
  private readonly bungs: number;

  constructor(
    private readonly question: UnionQuestion,
    private readonly grid: Grid,
    private readonly kinds: readonly [Kind, Kind],
    private readonly apart: Window,
  ) {
    this.many = question.classes.length;
    // steps from the middle: numbers of like size
    this.middle = Math.round((grid.steps[0]! + grid.steps.at(-1)!) / 2);
    this.steps = grid.steps.map((at) => at - this.middle);
    this.bung = question.classes.map(({ canBung }) => (canBung ? 1 : 0));
    this.bungs = question.bungs > 0 ? 1 : 0;
  }

  programme() {
    const { classes } = this.question;
    const off = classes.map(({ offMiddle }) => offMiddle);
    const supply = classes.map((_, c) => {
      return [0, 1].flatMap(() => off.map((_, k) => (k === c ? 1 : 0))).concat(0, 0);
    });
    return {
      gain: [...off, ...off, SET, SET],
      takes: [...this.ofSet(0), ...this.ofSet(1), ...this.ofBoth(), ...supply],
      limits: [
        ...Array.from({ length: 2 * OF_SET + OF_BOTH }, (_, i) =>
          i % OF_SET === OF_SET - 1 ? 1 : 0,
        ),
        ...classes.map(({ staves }) => staves.length),
      ],
    };
  }

  /** A set's needs, in proportion to how much of it is made; the last row: no more than one of it. */
  private ofSet(set: 0 | 1): number[][] {
    const { count, steps, beside } = this.kinds[set];
    const row = (ofClass: readonly number[], made: number): number[] => {
      const none = ofClass.map(() => 0);
      const classes = set === 0 ? [...ofClass, ...none] : [...none, ...ofClass];
      return [...classes, set === 0 ? made : 0, set === 1 ? made : 0];
    };
    const counts = row(
      this.steps.map(() => 1),
      -count,
    );
    const widths = row(this.steps, -(steps - this.middle * count));
    const besides = this.grid.beside;
    return [
      counts,
      negative(counts),
      widths,
      negative(widths),
      row(besides, -beside.high),
      row(negative(besides), beside.low),
      row(negative(this.bung), this.bungs),
      row(
        this.steps.map(() => 0),
        1,
      ),
    ];
  }

  /** The sum of what is beside their steps, and the difference. */
  private ofBoth(): number[][] {
    const { beside } = this.grid;
    const sums = [...beside, ...beside];
    const differences = [...beside, ...negative(beside)];
    const [sum, apart] = [this.question.window, this.apart];
    return [
      [...sums, -sum.high / 2, -sum.high / 2],
      [...negative(sums), sum.low / 2, sum.low / 2],
      [...differences, -apart.high / 2, -apart.high / 2],
      [...negative(differences), apart.low / 2, apart.low / 2],
    ];
  }

  pricing(prices: readonly number[]): Pricing | null {
    const { question, kinds } = this;
    const [most, least, over, under] = prices.slice(2 * OF_SET) as [number, number, number, number];
    let bound = most * question.window.high - least * question.window.low;
    bound += over * this.apart.high - under * this.apart.low;
    const worth = new Float64Array(this.many).fill(-Infinity);
    for (const [set, { count, steps, beside }] of kinds.entries()) {
      const [more, fewer, wider, narrower, high, low, bung] = prices.slice(set * OF_SET);
      const [stave, step] = [more! - fewer!, wider! - narrower!];
      bound += stave * count + step * (steps - this.middle * count);
      bound += high! * beside.high - low! * beside.low - bung! * this.bungs;
      for (const [c, { offMiddle }] of question.classes.entries()) {
        const ofBeside = high! - low! + most - least + (set === 0 ? over - under : under - over);
        const costs = stave + step * this.steps[c]! + ofBeside * this.grid.beside[c]!;
        worth[c] = Math.max(worth[c]!, offMiddle - costs + bung! * this.bung[c]!);
      }
    }
    for (const [c, { staves, standing }] of question.classes.entries())
      bound += worth[c]! * (worth[c]! > 0 ? staves.length : standing);
    return bound < 0 ? null : { question, worth, girthPrice: 0, most: bound, limits: null };
  }
}

/** Rows of one set, and of both together. */
const OF_SET = 8;
const OF_BOTH = 4;

function negative(values: readonly number[]): number[] {
  return values.map((value) => -value);
}
