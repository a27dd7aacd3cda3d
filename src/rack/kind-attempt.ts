/** Which staves, in sets of which counts, make so many sets on a coarse grid: a plan by kinds made whole. */

import type { StaveClass } from './classes.js';
import { mostWithBungs } from './kind-bungs.js';
import { fitKinds } from './kind-rounding.js';
import { kindsThatHold, withStanding } from './kind-standing.js';
import { gridOf, kindsOf, planKinds, type Grid, type Kind } from './kinds.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import { sum } from './sum.js';
import { closingWindows, type Window } from './window.js';

export interface KindAttempt {
  readonly used: readonly number[];
  /** of each set, larger ones first; but that of the standing staves before all */
  readonly counts: readonly number[];
}

/** No more sets than this, of `wanted`, whatever the method; `wanted` itself when steps are no hindrance. */
export function mostOnGrid(pool: Pool, classes: readonly StaveClass[], wanted: number): number {
  const { tolerance, plane, count } = pool.request;
  const { outer } = closingWindows(pool, tolerance, plane);
  const grid = gridOf(classes, outer);
  if (!grid || wanted === 0) return wanted;
  const kinds = kindsOf(grid, outer, count, bungsNeeded(pool, 1));
  // every answer has a set that holds the staves that stand
  if (kindsThatHold(grid, kinds).length === 0) return 0;
  const { most } = planKinds(pool, grid, kinds, wanted);
  const withBungs = mostWithBungs(grid, kinds, wanted);
  return Math.min(wanted, Math.floor(Math.min(most, withBungs) + ROUNDING));
}

/** What the most sets may be out by from rounding. */
const ROUNDING = 1e-6;

/** How much of what a kind's sum may vary by is left unused on each side, so that single sets have some ease. */
const MARGINS = [0.4, 0.3, 0.2, 0.1, 0];

/** Null when widths lie on no coarse grid, or when no whole plan was found. `window`: in which sets close. */
export function attemptOnGrid(
  pool: Pool,
  classes: readonly StaveClass[],
  sets: number,
  window: Window,
): KindAttempt | null {
  const grid = gridOf(classes, window);
  if (!grid) return null;
  const kinds = kindsOf(grid, window, pool.request.count, 0);
  for (const margin of MARGINS) {
    const easy = kinds.map((kind) => narrowed(kind, margin));
    const near = wholeKinds(pool, grid, easy, sets);
    const whole = near && fitKinds(grid, kinds, near);
    const counts = whole && countsOf(grid, kinds, whole);
    const taken = counts && wholeClasses(pool, grid, kinds, whole);
    if (!taken) continue;
    return { used: classes.flatMap(({ staves }, k) => staves.slice(0, taken[k])), counts };
  }
  return null;
}

/** The count of a set that can hold the standing staves, then the others; null when none can. */
function countsOf(grid: Grid, kinds: readonly Kind[], whole: readonly number[]): number[] | null {
  const chosen = kinds.filter((_, i) => whole[i]! > 0);
  const first = kindsThatHold(grid, chosen)[0];
  if (!first) return null;
  const counts = kinds
    .flatMap(({ count }, i) => new Array<number>(whole[i]!).fill(count))
    .sort((a, b) => b - a);
  counts.splice(counts.indexOf(first.count), 1);
  return [first.count, ...counts];
}

function narrowed(kind: Kind, margin: number): Kind {
  const { low, high } = kind.beside;
  const by = margin * (high - low);
  return { ...kind, beside: { low: low + by, high: high - by } };
}

/** How much less a set is worth for each stave more or less than the sets take on average. */
const ODD_COUNT = 0.002;

/** How many sets of each kind, of counts as alike as may be. */
function wholeKinds(pool: Pool, grid: Grid, kinds: readonly Kind[], sets: number): number[] | null {
  const mean = pool.staves.length / sets;
  const gains = kinds.map(({ count }) => 1 - ODD_COUNT * Math.abs(count - mean));
  const { ofKind } = planKinds(pool, grid, kinds, sets, { gains });
  if (sum(ofKind) < sets - ROUNDING) return null;
  return rounded(ofKind, sets, () => Infinity);
}

/** How many staves of each class these sets take; null when their steps can't be met. */
function wholeClasses(
  pool: Pool,
  grid: Grid,
  kinds: readonly Kind[],
  whole: readonly number[],
): number[] | null {
  const { ofClass } = planKinds(pool, grid, kinds, sum(whole), { most: whole });
  const count = sum(kinds.map((kind, i) => kind.count * whole[i]!));
  const taken = rounded(ofClass, count, (k) => grid.classes[k]!.staves.length);
  const steps = sum(kinds.map((kind, i) => kind.steps * whole[i]!));
  return taken && putStepsRight(grid, withStanding(grid, taken), steps);
}

/** Whole amounts that sum to `total`: those with the largest rests are rounded up. Null when `most` of each is too few. */
function rounded(
  amounts: readonly number[],
  total: number,
  most: (index: number) => number,
): number[] | null {
  const whole = amounts.map((many) => Math.floor(many + ROUNDING));
  const byRest = [...whole.keys()].sort(
    (a, b) => amounts[b]! - whole[b]! - (amounts[a]! - whole[a]!),
  );
  for (let left = total - sum(whole); left > 0; left--) {
    const next = byRest.find((k) => whole[k]! < most(k));
    if (next === undefined) return null;
    whole[next]!++;
    byRest.push(...byRest.splice(byRest.indexOf(next), 1));
  }
  return whole;
}

/** Exchanges one used stave with one of the rest at a time, as near to the steps wanted as may be. */
function putStepsRight(grid: Grid, taken: number[], wanted: number): number[] | null {
  const { steps, classes } = grid;
  for (let turn = 0; turn <= MOST_TURNS; turn++) {
    const short = wanted - sum(taken.map((many, k) => many * steps[k]!));
    if (short === 0) return taken;
    let best = { out: -1, into: -1, miss: Math.abs(short) };
    for (const [out, many] of taken.entries())
      for (const [into, { staves }] of classes.entries()) {
        if (many <= classes[out]!.standing || taken[into]! >= staves.length) continue;
        const miss = Math.abs(short - (steps[into]! - steps[out]!));
        if (miss < best.miss) best = { out, into, miss };
      }
    if (best.out < 0) return null;
    taken[best.out]!--;
    taken[best.into]!++;
  }
  return null;
}

const MOST_TURNS = 20;
