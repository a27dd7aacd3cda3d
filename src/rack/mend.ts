/** Exchanges staves between sets, and with the rest, until every set closes, and then until it closes well. */

import type { Size } from './exchange.js';
import { REST, type Layout } from './layout.js';
import type { Random } from './random.js';
import type { Window } from './window.js';

/** What a mended set should look like. */
export interface Goal {
  /** of each set's girth sum */
  readonly window: Window;
  /** the sum to come near, inside the window */
  readonly target: number;
  /** how many staves a set may have */
  readonly count: { readonly min: number; readonly max: number };
  /** whether staves may come from the rest */
  readonly useRest: boolean;
}

/** Nearer than this to the target is as good as on it, mm of girth. */
const ON_TARGET = 0.003;

/**
 * Brings the sets onto the target in pairs, the largest against the smallest: the nearer of the two is put right,
 * the other takes over the difference, and so comes nearer too.
 */
export function balance(layout: Layout, goal: Goal): void {
  const order = [...layout.sets.keys()].sort(
    (a, b) => layout.girth[a]! - layout.girth[b]! || a - b,
  );
  const away = (set: number): number => Math.abs(layout.girth[set]! - goal.target);
  for (let [low, high] = [0, order.length - 1]; low < high;) {
    const [small, large] = [order[low]!, order[high]!];
    if (away(small) < away(large)) {
      swapTowards(layout, goal, small, large, 1);
      low++;
    } else {
      swapTowards(layout, goal, large, small, 1);
      high--;
    }
  }
}

/** An exchange that brings one set as near the target as may be. Its partner takes what comes. */
function swapTowards(layout: Layout, goal: Goal, set: number, other: number, size: Size): void {
  const wanted = layout.girth[set]! - goal.target;
  if (Math.abs(wanted) <= ON_TARGET) return;
  const found = layout.find(set, other, wanted, [size, size]);
  const better = found && Math.abs(wanted - found.lowersBy) < Math.abs(wanted);
  if (better) layout.exchange(set, other, found);
  const left = layout.girth[set]! - goal.target;
  if (size === 1 && Math.abs(left) > ON_TARGET) swapTowards(layout, goal, set, other, 2);
}

/** Sets whose sum lies outside the window. */
export function openSets(layout: Layout, { window }: Goal): number[] {
  return [...layout.girth.keys()].filter((j) => miss(layout.girth[j]!, window) > 0);
}

function miss(girth: number, { low, high }: Window): number {
  return Math.max(low - girth, girth - high, 0);
}

/**
 * Mends open sets one at a time with partners chosen at random, the rest first. When no partner can help without
 * opening itself, the fault is passed on to one: it wanders until it meets its opposite. Ends when all close, or
 * when `patience` turns on end have left no fewer sets open. Yields between turns.
 */
export function* mend(
  layout: Layout,
  goal: Goal,
  random: Random,
  patience: number,
): Generator<void, boolean> {
  let fewest = Infinity;
  for (let idle = 0; idle <= patience; idle++) {
    const open = openSets(layout, goal);
    if (open.length === 0) return true;
    if (open.length < fewest) [fewest, idle] = [open.length, 0];
    mendOne(layout, goal, open[random.below(open.length)]!, random);
    yield;
  }
  return openSets(layout, goal).length === 0;
}

function mendOne(layout: Layout, goal: Goal, set: number, random: Random): void {
  const partners = somePartners(layout, set, random);
  const helpers = goal.useRest ? [REST, ...partners] : partners;
  for (const sizes of SIZES)
    for (const other of helpers) if (mendWith(layout, goal, set, other, sizes)) return;
  if (partners[0] !== undefined) passOn(layout, goal, set, partners[0], random);
}

const PARTNERS = 6;

function somePartners(layout: Layout, set: number, random: Random): number[] {
  const others = layout.sets.length - 1;
  const first = random.below(Math.max(1, others));
  return Array.from({ length: Math.min(PARTNERS, others) }, (_, k) => {
    const other = (first + k) % others;
    return other < set ? other : other + 1;
  });
}

/** Sizes of exchanges, simplest first; uneven ones change the counts. */
const SIZES: readonly (readonly [Size, Size])[] = [
  [1, 1],
  [2, 2],
  [2, 3],
  [3, 2],
  [3, 3],
  [1, 2],
  [2, 1],
];

/** An exchange that leaves two sets less open together than they were. */
function mendWith(
  layout: Layout,
  goal: Goal,
  set: number,
  other: number,
  sizes: readonly [Size, Size],
): boolean {
  if (!countsAllow(layout, goal, set, other, sizes)) return false;
  const mine = layout.girth[set]!;
  const theirs = other === REST ? null : layout.girth[other]!;
  const found = layout.find(set, other, amountToGive(goal.window, mine, theirs), sizes);
  if (!found) return false;
  const open = (given: number): number =>
    miss(mine - given, goal.window) + (theirs === null ? 0 : miss(theirs + given, goal.window));
  if (open(found.lowersBy) > open(0) - LESS_OPEN) return false;
  layout.exchange(set, other, found);
  return true;
}

/** What counts as less open, mm of girth. */
const LESS_OPEN = 1e-3;

/** Girth to give away: what closes both sets best, or as much as the other can take and still close. */
function amountToGive({ low, high }: Window, mine: number, theirs: number | null): number {
  const least = Math.max(mine - high, theirs === null ? -Infinity : low - theirs);
  const most = Math.min(mine - low, theirs === null ? Infinity : high - theirs);
  if (least <= most || theirs === null) return (least + most) / 2;
  const margin = (high - low) / 16;
  return mine > high ? high - theirs - margin : low - theirs + margin;
}

function countsAllow(
  layout: Layout,
  { count }: Goal,
  set: number,
  other: number,
  [out, into]: readonly [Size, Size],
): boolean {
  const fits = (n: number): boolean => n >= count.min && n <= count.max;
  const grows = into - out;
  if (grows === 0) return true;
  if (!fits(layout.sets[set]!.length + grows)) return false;
  return other === REST || fits(layout.sets[other]!.length - grows);
}

/** Brings a set to the target, whatever that does to its partner. */
function passOn(layout: Layout, goal: Goal, set: number, other: number, random: Random): void {
  const wanted = layout.girth[set]! - goal.target;
  const size: Size = random.below(2) === 0 ? 1 : 2;
  const found = layout.find(set, other, wanted, [size, size]);
  if (found) layout.exchange(set, other, found);
}

/** Brings every set nearer the target by exchanges that make no other set worse by as much. */
export function refine(layout: Layout, goal: Goal, random: Random): void {
  const away = (girth: number): number => Math.abs(girth - goal.target);
  for (const set of layout.sets.keys()) {
    const partners = goal.useRest
      ? [-1, ...somePartners(layout, set, random)]
      : somePartners(layout, set, random);
    for (const other of partners) {
      const mine = layout.girth[set]!;
      if (away(mine) <= ON_TARGET) break;
      const theirs = other === REST ? goal.target : layout.girth[other]!;
      const wanted = other === REST ? mine - goal.target : (mine - theirs) / 2;
      const found = layout.find(set, other, wanted, [2, 2]);
      if (!found) continue;
      const after =
        away(mine - found.lowersBy) + (other === REST ? 0 : away(theirs + found.lowersBy));
      if (after < away(mine) + away(theirs) - ON_TARGET / 10) layout.exchange(set, other, found);
    }
  }
}
