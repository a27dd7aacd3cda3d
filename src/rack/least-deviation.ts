/** How far two sets must stray from the spec's diameter at least, together, known from their staves before they are parted. */

import { halfAngle, type Measured } from './closing.js';
import type { Pool } from './pool.js';
import { sum } from './sum.js';
import { closingWindows } from './window.js';

/**
 * A lower bound on the sum of both deviations, mm, if that is `most` or less.
 *
 * Half-angles at the spec's diameter D that sum to more than two turns must lose the excess as the sets close at larger
 * diameters. Half-angles fall by ever less as the diameter grows, so a set that strays by d loses no more than d times
 * its steepness at D. Half-angles that sum to less gain by d times the steepness at D - `most`, or less. So the sum of
 * deviations times the steepness of the steeper set makes up for what is too much or too little.
 */
export function leastDeviation(
  pool: Pool,
  staves: readonly number[],
  counts: readonly number[],
  most: number,
): number {
  const { diameter } = pool.request;
  const amiss = sum(staves.map((i) => pool.girth[i]!)) / diameter - 2 * Math.PI;
  const at = amiss > 0 ? diameter : diameter - most;
  return Math.abs(amiss) / steepest(pool, staves, counts, at, most);
}

/**
 * No set of so many of these staves is steeper, if it closes. Steepness is nearly in proportion to the half-angle, and
 * the half-angles of a set that closes sum to a turn or little more, so only what is beside the proportion tells staves
 * apart: the staves with most of that are taken.
 */
function steepest(
  pool: Pool,
  staves: readonly number[],
  counts: readonly number[],
  at: number,
  most: number,
): number {
  const { diameter, measured } = pool.request;
  const turn = closingWindows(pool, most, 0).outer.high / diameter;
  const width = (i: number): number => pool.width[i]!;
  const angle = (w: number): number => halfAngle(w, diameter, measured);
  const middle = sum(staves.map(width)) / staves.length;
  const change = (f: (w: number) => number): number => f(middle + 1) - f(middle - 1);
  const proportion = Math.max(0, change((w) => steepness(w, at, measured)) / change(angle));
  const beside = staves
    .map((i) => steepness(width(i), at, measured) - proportion * angle(width(i)))
    .sort((a, b) => b - a);
  return Math.max(...counts.map((n) => sum(beside.slice(0, n)))) + proportion * turn;
}

/**
 * What the girth share of so many staves of such a mean width falls by as the diameter grows, at most, per mm of diameter.
 * The steepness of blank widths is a curve over the width that bends downwards, so none is steeper than staves all alike;
 * that of backed ones bends upwards, so none is steeper than a mixture of the narrowest and the widest.
 */
export function steepestOf(
  { request: { diameter, measured }, width }: Pool,
  count: number,
  mean: number,
  at: number,
): number {
  if (measured === 'blank') return diameter * count * steepness(mean, at, measured);
  const [narrow, wide] = [width[0]!, width.at(-1)!];
  const share = wide > narrow ? (mean - narrow) / (wide - narrow) : 0;
  const [low, high] = [steepness(narrow, at, measured), steepness(wide, at, measured)];
  return diameter * count * (low + share * (high - low));
}

/** By how much a half-angle falls as the diameter grows, per mm. */
export function steepness(width: number, diameter: number, measured: Measured): number {
  if (measured === 'blank') return width / (diameter ** 2 + width ** 2);
  return width / (diameter * Math.sqrt(diameter ** 2 - width ** 2));
}
