/**
 * Every way to take so many staves of so many steps, such that what is beside the steps (see `kinds.ts`) falls into a
 * window. It goes from the widest class down and turns back as soon as the narrower ones can't bring it right: how many
 * staves of how many steps they must give is then known, and between what bounds the rest of their girth lies.
 */

import type { Effort } from './effort.js';
import { lossOf, type FreeClass } from './union-half.js';
import { ROUNDING, type Window } from './window.js';

/** `girth` is what a stave has beside its steps. */
export interface GridClass extends Pick<
  FreeClass,
  'worth' | 'girth' | 'steps' | 'least' | 'most' | 'canBung'
> {
  readonly offMiddle: number;
}

export interface GridQuestion {
  /** narrowest first */
  readonly classes: readonly GridClass[];
  readonly count: number;
  readonly steps: number;
  readonly window: Window;
  /** how many of those that can be bung staves, inclusive */
  readonly bungs: { readonly least: number; readonly most: number };
  /** the sum of distances from the middle, at least */
  readonly leastOff: number;
  /** of the classes' worth, at most */
  readonly mostLoss: number;
}

/** `numbers` holds how many of each class and is reused between calls. False: enough was seen. */
export type WayVisitor = (numbers: Uint16Array, offMiddle: number) => boolean;

/** False when the effort ended before all ways were seen; true also when the visitor has seen enough. */
export function eachWayOnGrid(question: GridQuestion, effort: Effort, visit: WayVisitor): boolean {
  const { classes, bungs, leastOff } = question;
  let isEnough = false;
  const prefix = new Prefix(classes);
  const numbers = new Uint16Array(classes.length);

  const descend = (
    left: number,
    count: number,
    steps: number,
    beside: number,
    off: number,
    mayLose: number,
    bungsTaken: number,
  ): void => {
    if (!effort.step()) return;
    if (bungsTaken > bungs.most || bungsTaken + prefix.bungs[left]! < bungs.least) return;
    if (!prefix.reach(left, count, steps)) return;
    const { window } = question;
    if (beside + prefix.most < window.low - ROUNDING) return;
    if (beside + prefix.least > window.high + ROUNDING) return;
    if (off + prefix.mostOff < leastOff - SAME_OFF) return;
    if (left === 0) {
      isEnough = !visit(numbers, off);
      return;
    }
    const c = classes[left - 1]!;
    // the most worth first, as far as the loss allows
    for (let turn = 0; turn <= c.most - c.least; turn++) {
      const k = c.worth > 0 ? c.most - turn : c.least + turn;
      const stillMayLose = mayLose - lossOf(c, c.worth, k);
      if (stillMayLose < 0) break;
      if (k > count) continue;
      numbers[left - 1] = k;
      descend(
        left - 1,
        count - k,
        steps - k * c.steps,
        beside + k * c.girth,
        off + k * c.offMiddle,
        stillMayLose,
        c.canBung ? bungsTaken + k : bungsTaken,
      );
      if (isEnough || effort.exhausted) return;
    }
  };
  descend(classes.length, question.count, question.steps, 0, 0, question.mostLoss, 0);
  return !effort.exhausted;
}

/** Sums of distances from the middle are known to this, mm. */
const SAME_OFF = 1e-6;

/**
 * What staves of the narrowest so many classes can give. Girth beside the steps is a curve over the width that bends one
 * way only, and so is the distance from the middle. So of all choices of a count, those that give most or least of a curve
 * for their steps are runs of neighbours and, on the other side, some of the narrowest with some of the widest; and
 * mixtures of two such choices where the steps lie between. (Add a price for steps to a curve: it still bends one way
 * only, and the staves above a level, or below it, are such a choice.)
 */
class Prefix {
  /** of the staves asked for: beside their steps, and from the middle; set by `reach` */
  least = 0;
  most = 0;
  mostOff = 0;
  /** of the first so many classes: how many can be bung staves */
  readonly bungs: number[] = [0];
  /** running sums over staves, narrowest first */
  private readonly steps: number[] = [0];
  private readonly beside: number[] = [0];
  private readonly off: number[] = [0];
  /** how many staves the first so many classes hold */
  private readonly sizes: number[] = [0];

  constructor(classes: readonly GridClass[]) {
    for (const { most, steps, girth, offMiddle, canBung } of classes) {
      for (let i = 0; i < most; i++) {
        this.steps.push(this.steps.at(-1)! + steps);
        this.beside.push(this.beside.at(-1)! + girth);
        this.off.push(this.off.at(-1)! + offMiddle);
      }
      this.sizes.push(this.sizes.at(-1)! + most);
      this.bungs.push(this.bungs.at(-1)! + (canBung ? most : 0));
    }
  }

  /** False when no such staves are among the first so many classes. */
  reach(classes: number, count: number, steps: number): boolean {
    const all = this.sizes[classes]!;
    if (count > all) return false;
    if (steps < this.steps[count]! || steps > this.steps[all]! - this.steps[all - count]!)
      return false;
    const alike = this.amongRuns(all, count, steps);
    const apart = this.amongEnds(all, count, steps);
    this.least = Math.min(alike, apart);
    this.most = Math.max(alike, apart);
    return true;
  }

  /** Beside, of neighbours. */
  private amongRuns(all: number, count: number, steps: number): number {
    const { steps: at, beside } = this;
    let [low, high] = [0, all - count];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (at[middle + count]! - at[middle]! <= steps) low = middle;
      else high = middle;
    }
    const ofLow = at[low + count]! - at[low]!;
    const share = shareOf(ofLow, at[high + count]! - at[high]!, steps);
    const from = beside[low + count]! - beside[low]!;
    return from + share * (beside[high + count]! - beside[high]! - from);
  }

  /** Beside, of some of the narrowest and of the widest; and their distances from the middle. */
  private amongEnds(all: number, count: number, steps: number): number {
    const { steps: at, beside, off } = this;
    let [low, high] = [0, count];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (atEnds(at, all, count, middle) <= steps) low = middle;
      else high = middle;
    }
    const share = shareOf(atEnds(at, all, count, low), atEnds(at, all, count, high), steps);
    const offLow = atEnds(off, all, count, low);
    this.mostOff = offLow + share * (atEnds(off, all, count, high) - offLow);
    const besideLow = atEnds(beside, all, count, low);
    return besideLow + share * (atEnds(beside, all, count, high) - besideLow);
  }
}

/** Of the first `all` staves so many of the widest, and the narrowest for the rest of the count. */
function atEnds(sums: readonly number[], all: number, count: number, widest: number): number {
  return sums[count - widest]! + sums[all]! - sums[all - widest]!;
}

/** Where the steps lie between two choices. */
function shareOf(low: number, high: number, steps: number): number {
  return high > low ? (steps - low) / (high - low) : 0;
}
