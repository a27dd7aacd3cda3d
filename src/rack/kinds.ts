/**
 * Widths read to a coarse step: few kinds of sets close. A kind is how many staves a set has and how many steps their
 * widths sum to. Girth shares lie a little beside the steps, by an amount that depends on how far the widths spread, so
 * a set of a kind closes only when its widths spread enough and not too much.
 *
 * However they are chosen, sets take from the rack as many staves, steps and girth as their kinds say. How many sets of
 * which kinds that allows at most, and out of which staves, is a small linear programme.
 */

import type { StaveClass } from './classes.js';
import { sum } from './sum.js';
import type { Pool } from './pool.js';
import { mostGain } from './simplex.js';
import { measuringStep } from './step.js';
import type { Window } from './window.js';

export interface Kind {
  readonly count: number;
  readonly steps: number;
  /** what the girth shares may sum to beside the steps, mm */
  readonly beside: Window;
  /** how many staves of the first table it may have, if that is known; see `grid-partings.ts` */
  readonly ofFirst?: ReadonlySet<number>;
}

export interface KindPlan {
  /** no choice makes more sets */
  readonly most: number;
  /** how many of each kind that is; not whole */
  readonly ofKind: readonly number[];
  /** how many staves of each class that takes; not whole */
  readonly ofClass: readonly number[];
}

/** The classes of a rack by whole steps from some width. */
export interface Grid {
  /** mm */
  readonly step: number;
  /** the width from which steps are counted, mm */
  readonly origin: number;
  readonly classes: readonly StaveClass[];
  /** of each class */
  readonly steps: readonly number[];
  /** of each class: girth share less steps, mm */
  readonly beside: readonly number[];
}

/** More classes than this are no coarse grid, and too many for the linear programme. */
const MOST_CLASSES = 130;

/** Null when girths may vary by a whole step, which is then no hindrance, or when all widths are alike, or too many. */
export function gridOf(classes: readonly StaveClass[], window: Window): Grid | null {
  if (classes.length > MOST_CLASSES) return null;
  const step = commonStep(classes);
  return window.high - window.low >= step ? null : gridFrom(classes, classes[0]!.width, step);
}

/** The classes on a grid of which `origin` is a place. */
export function gridFrom(classes: readonly StaveClass[], origin: number, step: number): Grid {
  const steps = classes.map(({ width }) => Math.round((width - origin) / step));
  return {
    step,
    origin,
    classes,
    steps,
    beside: classes.map((c, k) => c.girth - steps[k]! * step),
  };
}

/** The widest step, mm, of which all widths lie whole numbers apart; 0 when they are alike, or lie on no usual step. */
export function commonStep(classes: readonly StaveClass[]): number {
  const read = measuringStep(classes.map(({ width }) => width));
  const apart = classes.map(({ width }) => (width - classes[0]!.width) / read);
  // what is beside the steps is known by the width's own curve only where none lies off them
  if (apart.some((many) => Math.abs(many - Math.round(many)) * read > ROUNDING)) return 0;
  return read * apart.map(Math.round).reduce(commonDivisor, 0);
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** All kinds whose sets may close within the window. `bungs`: how many bung staves each needs, none or one. */
export function kindsOf(
  grid: Grid,
  window: Window,
  { min, max }: { min: number; max: number },
  bungs: number,
) {
  const kinds: Kind[] = [];
  const [narrowest, widest] = [grid.steps[0]!, grid.steps.at(-1)!];
  for (let count = min; count <= max; count++)
    for (let steps = count * narrowest; steps <= count * widest; steps++) {
      const reach = bungs > 0 ? reachWithBung(grid, count, steps) : reachOf(grid, count, steps);
      if (!reach) continue;
      const low = Math.max(reach.low, window.low - steps * grid.step);
      const high = Math.min(reach.high, window.high - steps * grid.step);
      if (low <= high) kinds.push({ count, steps, beside: { low, high } });
    }
  return kinds;
}

/** Sums computed in another order stay this near, mm. */
const ROUNDING = 1e-9;

/**
 * Between which sums beside the steps so many staves of so many steps lie; null when no staves are that narrow, or that
 * wide. Beside is a curve over the width that bends
 * one way only, so one end is where all widths are alike and the other where they are the narrowest and the widest.
 */
export function reachOf({ steps, beside }: Grid, count: number, total: number): Window | null {
  if (count === 0 && total === 0) return { low: 0, high: 0 };
  const mean = total / count;
  const last = steps.length - 1;
  if (count <= 0 || mean < steps[0]! || mean > steps[last]!) return null;
  const between = (a: number, b: number): number => {
    const share = (mean - steps[a]!) / (steps[b]! - steps[a]! || 1);
    return count * (beside[a]! + share * (beside[b]! - beside[a]!));
  };
  const above = steps.findIndex((at) => at >= mean);
  const [alike, apart] = [between(Math.max(0, above - 1), above), between(0, last)];
  return { low: Math.min(alike, apart) - ROUNDING, high: Math.max(alike, apart) + ROUNDING };
}

/** The same where one of the staves must be fit for the bung: a wide one among narrow ones makes much of a difference. */
function reachWithBung(grid: Grid, count: number, total: number): Window | null {
  if (grid.classes.every(({ canBung }) => canBung)) return reachOf(grid, count, total);
  let [low, high] = [Infinity, -Infinity];
  for (const [k, { canBung }] of grid.classes.entries()) {
    const others = canBung ? reachOf(grid, count - 1, total - grid.steps[k]!) : null;
    if (!others) continue;
    low = Math.min(low, others.low + grid.beside[k]!);
    high = Math.max(high, others.high + grid.beside[k]!);
  }
  return low <= high ? { low, high } : null;
}

/** The most sets up to `wanted`, of each kind up to `most`; rather of kinds with more gain. */
export function planKinds(
  pool: Pool,
  grid: Grid,
  kinds: readonly Kind[],
  wanted: number,
  { gains = kinds.map(() => 1), most = kinds.map(() => wanted) }: Wishes = {},
): KindPlan {
  const { classes } = grid;
  const columns = new Columns(grid, kinds);
  const takes = [
    ...columns.ofAll(pool.request.bung === null ? 0 : 1),
    ...kinds.map((_, at) => columns.single(classes.length + at)),
    ...classes.map((_, at) => columns.single(at)),
  ];
  const supply = classes.map(({ staves }) => staves.length);
  const limits = [0, 0, 0, 0, 0, 0, 0, wanted, ...most, ...supply];
  const gain = [...classes.map(() => 0), ...gains];
  const { amounts, prices } = mostGain({ gain, takes, limits });
  return {
    most: provenBy(prices, { takes, limits, classes: classes.length }),
    ofClass: amounts.slice(0, classes.length),
    ofKind: amounts.slice(classes.length),
  };
}

/** Rows of a linear programme whose things are first staves of each class, then sets of each kind. */
class Columns {
  constructor(
    private readonly grid: Grid,
    private readonly kinds: readonly Kind[],
  ) {}

  single(thing: number): number[] {
    return this.row(
      () => 0,
      () => 0,
    ).with(thing, 1);
  }

  /** What all together take: sets as much as staves give, beside the steps within bounds; and how many sets there are. */
  ofAll(bungs: number): number[][] {
    const { classes, steps, beside } = this.grid;
    const counts = this.row(
      () => 1,
      ({ count }) => -count,
    );
    const widths = this.row(
      (k) => steps[k]!,
      (kind) => -kind.steps,
    );
    const most = this.row(
      (k) => beside[k]!,
      (kind) => -kind.beside.high,
    );
    const least = this.row(
      (k) => -beside[k]!,
      (kind) => kind.beside.low,
    );
    const bung = this.row(
      (k) => (classes[k]!.canBung ? -1 : 0),
      () => bungs,
    );
    const sets = this.row(
      () => 0,
      () => 1,
    );
    return [counts, negative(counts), widths, negative(widths), most, least, bung, sets];
  }

  private row(ofClass: (k: number) => number, ofKind: (kind: Kind) => number): number[] {
    return [...this.grid.classes.map((_, k) => ofClass(k)), ...this.kinds.map(ofKind)];
  }
}

function negative(values: readonly number[]): number[] {
  return values.map((value) => -value);
}

interface Wishes {
  readonly gains?: readonly number[];
  readonly most?: readonly number[];
}

export interface Limited {
  readonly takes: readonly (readonly number[])[];
  /** the last ones are those of the classes */
  readonly limits: readonly number[];
  readonly classes: number;
}

/**
 * A number of sets that no choice exceeds, whatever the prices: when every set costs at least so much at these prices,
 * and a class's price is raised until its staves cost no less than they give, then the price of all that the rack holds
 * pays for no more sets than that.
 */
export function provenBy(prices: readonly number[], { takes, limits, classes }: Limited): number {
  const others = limits.length - classes;
  const cost = (thing: number): number =>
    sum(takes.slice(0, others).map((row, i) => prices[i]! * row[thing]!));
  const ofClasses = Array.from({ length: classes }, (_, k) => {
    return Math.max(prices[others + k]!, -cost(k));
  });
  const things = takes[0]!.length;
  if (things === classes) return 0;
  let cheapest = Infinity;
  for (let thing = classes; thing < things; thing++) {
    const ofStaves = sum(ofClasses.map((price, k) => price * takes[others + k]![thing]!));
    cheapest = Math.min(cheapest, cost(thing) + ofStaves);
  }
  const held = sum(ofClasses.map((price, k) => price * limits[others + k]!));
  const all = held + sum(prices.slice(0, others).map((price, i) => price * limits[i]!));
  return cheapest > 0 ? all / cheapest : Infinity;
}
