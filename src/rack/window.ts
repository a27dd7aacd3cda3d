/** Between which sums of girth shares a set closes: quick tests for a search, safe on one side or the other. */

import { halfAngle } from './closing.js';
import { MOST_OF_A_STAVE } from './planing.js';
import type { Pool } from './pool.js';

/** Sums of girth shares at the spec's diameter, mm. */
export interface Window {
  readonly low: number;
  readonly high: number;
}

/**
 * A set closes within `tolerance` of the diameter D when its half-angles sum to pi or more at D - tolerance and
 * to pi or less at D + tolerance. A stave's half-angle there is its half-angle at D times a ratio that hardly
 * differs between widths, so the sum at D need only be compared with pi over the largest and least ratios.
 * Sums outside `outer` never close; sums inside `inner` always do.
 */
export function closingWindows(
  pool: Pool,
  tolerance: number,
  plane: number,
): { readonly inner: Window; readonly outer: Window } {
  const { diameter } = pool.request;
  const wider = ratios(pool, diameter - tolerance);
  const closer = ratios(pool, diameter + tolerance);
  const planed = planedAngle(pool, diameter + tolerance, plane);
  const girth = (angle: number): number => angle * diameter;
  return {
    inner: {
      low: girth(Math.PI / wider.least),
      high: girth((Math.PI + planed.least) / closer.most),
    },
    outer: {
      low: girth(Math.PI / wider.most) - ROUNDING,
      high: girth((Math.PI + planed.most) / closer.least) + ROUNDING,
    },
  };
}

/** What two sets' girth shares may come to when their deviations sum to so much or less. */
export interface SharedWindow {
  /** both together */
  readonly sum: Window;
  /** the most that one may exceed the other by */
  readonly apart: number;
}

/**
 * Closing windows only grow with the deviation. So in each of some even parts of the range that the first set's
 * deviation lies in, its girth is within the window for the largest deviation there, and the second set's within that
 * for what the smallest leaves.
 */
export function sharedWindow(pool: Pool, deviation: number): SharedWindow {
  const turn = Math.PI * pool.request.diameter;
  const windows = Array.from({ length: PARTS + 1 }, (_, k) => {
    return closingWindows(pool, (k * deviation) / PARTS, 0).outer;
  });
  let [low, high, apart] = [2 * turn, 2 * turn, 0];
  for (let k = 0; k < PARTS; k++) {
    const [first, second] = [windows[k + 1]!, windows[PARTS - k]!];
    low = Math.min(low, first.low + second.low);
    high = Math.max(high, first.high + second.high);
    apart = Math.max(apart, first.high - second.low, second.high - first.low);
  }
  return { sum: { low, high }, apart };
}

/** As many as leave the window hardly wider than it must be: choices in that margin could only be refused one by one. */
const PARTS = 256;

/** Rounding of a sum of some thousand girth shares stays below this, mm. */
export const ROUNDING = 1e-9;

/** Least and greatest half-angle at a diameter over half-angle at the spec's; monotone in width. */
function ratios(pool: Pool, diameter: number): { least: number; most: number } {
  const { measured } = pool.request;
  const at = (index: number): number => {
    const width = pool.width[index];
    if (width === undefined) return 1;
    return (halfAngle(width, diameter, measured) * pool.request.diameter) / pool.girth[index]!;
  };
  const [first, last] = [at(0), at(pool.width.length - 1)];
  return { least: Math.min(first, last), most: Math.max(first, last) };
}

/** The half-angle that planing off `plane` takes away, at least (from one stave) and at most. */
function planedAngle(pool: Pool, diameter: number, plane: number): { least: number; most: number } {
  const { measured } = pool.request;
  const [narrow, wide] = [pool.width[0], pool.width.at(-1)];
  if (narrow === undefined || wide === undefined || plane === 0) return { least: 0, most: 0 };
  const depth = Math.min(plane, narrow * MOST_OF_A_STAVE);
  const off = (width: number): number =>
    halfAngle(width, diameter, measured) - halfAngle(width - depth, diameter, measured);
  const steepest = measured === 'blank' ? diameter : Math.sqrt(diameter ** 2 - wide ** 2);
  return { least: Math.min(off(narrow), off(wide)), most: plane / steepest };
}
