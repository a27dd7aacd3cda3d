/**
 * What staves of two sets together promise, before they are parted: how much must be planed off them and how far they must
 * stray at least. Nothing here is an estimate: no parting betters it.
 */

import { COMPARED_TO, hundredths } from './aims.js';
import { halfAngle, halfAngleSlope } from './closing.js';
import { leastDeviation } from './least-deviation.js';
import { MOST_OF_A_STAVE, PLANE_STEP } from './planing.js';
import type { Pool } from './pool.js';
import { sum } from './sum.js';
import { closingWindows, ROUNDING } from './window.js';

/** Of all sets together, whole hundredths of a millimetre. Compared in this order. */
export interface Closeness {
  readonly planing: number;
  readonly deviation: number;
}

/** Negative when `a` is the better one. */
export function compareCloseness(a: Closeness, b: Closeness): number {
  return a.planing - b.planing || a.deviation - b.deviation;
}

/** Rounding of a quotient in hundredths stays below this. */
const NEARLY_WHOLE = 1e-6;

/** Two sets without planing that stray no more than `mostDeviation` hundredths; null when there are none. */
export function unplanedPromise(
  pool: Pool,
  staves: readonly number[],
  counts: readonly number[],
  from: number,
  mostDeviation: number,
): Closeness | null {
  for (let deviation = from; deviation <= mostDeviation; deviation++) {
    const most = (deviation + 1) * COMPARED_TO;
    const least = leastDeviation(pool, staves, counts, most);
    if (least <= most + ROUNDING) return { planing: 0, deviation };
  }
  return null;
}

/** Bounds for sets known by their girth shares alone. */
export class GirthBounds {
  private readonly turn: number;
  /** an unplaned set has no more, and a planed one */
  private readonly unplaned: number;
  private readonly planed: number;
  /** mm to be planed off for each mm of girth more than that, at least */
  private readonly perGirth: number;
  /** half-angles fall by this many times themselves over the diameter, at most */
  private readonly steepness: number;

  constructor(private readonly pool: Pool) {
    const { diameter, tolerance, plane, measured } = pool.request;
    this.turn = Math.PI * diameter;
    this.unplaned = closingWindows(pool, tolerance, 0).outer.high;
    this.planed = closingWindows(pool, tolerance, plane).outer.high;
    this.perGirth = plane > 0 ? plane / (this.planed - this.unplaned) : 0;
    const widest = largestHalfAngle(pool);
    this.steepness = measured === 'blank' ? 1 : Math.tan(widest) / widest;
  }

  /**
   * How far a set strays at least, mm. Its half-angles sum to A at the spec's diameter D, and as the diameter x grows they
   * fall by sin(2 alpha)/2x each (blank widths), or tan(alpha)/x (backed ones): by their sum over x at most, times
   * `steepness`. While a set that is too large grows from D to where it closes that is A/D at most; while one that is too
   * small shrinks, pi over the diameter that it closes at, which is no less than D - tolerance.
   */
  private deviation(girth: number): number {
    const { diameter, tolerance } = this.pool.request;
    const off = girth - this.turn;
    const falls = off > 0 ? girth / diameter : (diameter * Math.PI) / (diameter - tolerance);
    return Math.abs(off) / (falls * this.steepness);
  }

  /** Of two unplaned sets of so much girth: least when one is a turn, since a set strays ever less as its girth grows. */
  unplanedTogether(girth: number): Closeness {
    const deviation = this.deviation(girth - this.turn) - ROUNDING;
    return { planing: 0, deviation: hundredths(Math.max(0, deviation)) };
  }

  /** What must be planed off two sets at least, in whole hundredths of a millimetre. */
  leastPlaning(...girths: readonly [number, number]): number {
    const beyond = sum(girths.map((girth) => Math.max(0, girth - this.unplaned)));
    return wholePlaning(this.pool, beyond * this.perGirth);
  }

  /** The girth of a set off which so many hundredths are planed, at most. */
  largestPlaned(planing: number): number {
    return Math.min(this.planed, this.unplaned + ((planing + 1) * COMPARED_TO) / this.perGirth);
  }
}

/** Planing is rounded up to whole hundredths, of each set, unless the limit cuts it short between two of them. */
function wholePlaning({ request: { plane } }: Pool, least: number): number {
  const limit = plane / PLANE_STEP;
  const isWhole = Math.abs(limit - Math.round(limit)) < NEARLY_WHOLE;
  return Math.max(0, Math.ceil(least / COMPARED_TO - NEARLY_WHOLE) - (isWhole ? 0 : 1));
}

function largestHalfAngle({ request, width }: Pool): number {
  return halfAngle(width.at(-1)!, request.diameter - request.tolerance, request.measured);
}

/** Whether one stave of a set can take all planing that is allowed. */
export function isPlanedOnOne({ request, width }: Pool): boolean {
  return request.plane <= (width[0] ?? 0) * MOST_OF_A_STAVE;
}

/**
 * Two sets of which one is planed or both. At D + tolerance half-angles are too much by some excess, and planing a
 * millimetre takes away no more than the stave does that is steepest in its width. Sets close there or a little below: what
 * more is planed than must be, by rounding up, is all that they can stray less by.
 */
export function planedPromise(pool: Pool, staves: readonly number[]): Closeness {
  const { diameter, tolerance, measured, plane } = pool.request;
  const loose = diameter + tolerance;
  const widths = staves.map((i) => pool.width[i]!);
  const excess = sum(widths.map((w) => halfAngle(w, loose, measured))) - 2 * Math.PI;
  const perMm = Math.max(
    ...[Math.min(...widths) - plane, Math.max(...widths)].map((w) =>
      halfAngleSlope(w, loose, measured),
    ),
  );
  const planing = wholePlaning(pool, Math.max(0, excess) / perMm);
  const spare = (planing + 1) * COMPARED_TO * perMm - excess;
  const least = 2 * tolerance - Math.max(0, spare) / leastSteepness(pool) - ROUNDING;
  return { planing, deviation: hundredths(Math.max(0, least)) };
}

/**
 * Half-angles of a set that closes fall by this at least, per mm of diameter, wherever within the tolerance; see
 * `GirthBounds`. They sum to pi where it closes, and nearly so at the other end.
 */
function leastSteepness(pool: Pool): number {
  const { diameter, tolerance } = pool.request;
  const widest = largestHalfAngle(pool);
  const share = Math.sin(2 * widest) / (2 * widest);
  const loose = diameter + tolerance;
  return ((Math.PI / loose) * (diameter - tolerance) * share ** 2) / loose;
}
