/** How far a set strays from the spec's diameter at least, known from its girth and the sum of its widths: nearly exactly. */

import { halfAngle, halfAngleSlope, type Measured } from './closing.js';
import { steepness } from './least-deviation.js';
import type { Pool } from './pool.js';
import { sum } from './sum.js';
import type { Window } from './window.js';

/** Of a set: how many staves, the sum of their widths and of their girth shares, mm. */
export interface SetSums {
  readonly count: number;
  readonly width: number;
  readonly girth: number;
}

/**
 * With x = w/D at the spec's diameter D, half-angles alpha fall by s(x)/D per mm of diameter: s = x/(1+x^2) for blank widths
 * and x/sqrt(1-x^2) for backed ones. Both are 3 alpha - 2 x and a rest r(x) of the fifth order. So how steeply a set's
 * half-angles fall at D follows from their sum A and that of the widths, W: S = (3A - 2W/D + sum of r)/D.
 *
 * The sum of r is known nearly: r(x) <= p(x) = a + b x + c alpha(x), where p touches r at the middle of the widths and meets
 * it at the widest. (r - p)''/alpha'' = r''/alpha'' - c, and r''/alpha'' only falls (blank: -4x^2/(1+x^2)) or only grows
 * (backed: 3x^2/(1-x^2)), so r - p bends downwards first and upwards then, and up to the widest it isn't above 0.
 *
 * The set closes at X, A is off pi by o, and d = |X - D|.
 * - Blank, X > D: o = sum of atan(w/D) - atan(w/X) <= d times the sum of w/(DX + w^2), each of which is w/(D^2 + w^2) over
 *   1 + d D/(D^2 + w^2): so o (1 + d c/D) <= d S, where c is the square of the least cosine.
 * - Blank, X < D: likewise with 1 - d D/(D^2 + w^2): so o (1 - d c/D) <= d S, c now being the square of the greatest cosine.
 * - Backed, X > D: the fall only grows less, so o <= d S.
 * - Backed, X < D: the fall is a curve over the diameter that bends upwards, so o is no more than d times the mean of S
 *   and what it is where the diameter is least.
 */
export class StrayBound {
  /** of the fall, blank: per o/D when X > D; backed: in proportion when X < D */
  private readonly cosine2: { readonly least: number; readonly most: number };
  private readonly meanFall: number;
  /** a, b and c */
  private readonly rest: readonly [number, number, number];

  /** `staves`: those of both sets, in ascending order. */
  constructor(
    private readonly pool: Pool,
    staves: readonly number[],
  ) {
    const { diameter, tolerance, measured } = pool.request;
    const widest = pool.width[staves.at(-1)!]!;
    const cosine2 = (width: number): number => Math.cos(halfAngle(width, diameter, measured)) ** 2;
    this.cosine2 = { least: cosine2(widest), most: cosine2(pool.width[staves[0]!]!) };
    const close = diameter - tolerance;
    const [ofD, ofClose] = [diameter ** 2 - widest ** 2, close ** 2 - widest ** 2];
    this.meanFall = (1 + (diameter / close) * Math.sqrt(ofD / ofClose)) / 2;
    const middle = sum(staves.map((i) => pool.width[i]!)) / staves.length;
    this.rest = restAbove(middle / diameter, widest / diameter, measured);
  }

  /** mm */
  of({ count, width, girth }: SetSums): number {
    const { diameter, measured } = this.pool.request;
    const angle = girth / diameter;
    const [a, b, c] = this.rest;
    const falls = a * count + ((b - 2) * width) / diameter + (c + 3) * angle;
    const off = angle - Math.PI;
    if (measured === 'blank')
      return (
        (Math.abs(off) * diameter) /
        (falls - off * (off > 0 ? this.cosine2.least : this.cosine2.most))
      );
    return (Math.abs(off) * diameter) / (off > 0 ? falls : falls * this.meanFall);
  }

  /**
   * Of two sets together, when the girth of the first lies in a range. What a set strays (see `of`) bends downwards over its
   * girth above a turn and upwards below it. So the least is at an end of the range or where one of the sets makes a turn,
   * unless both are too small: there it is more than a curve that bends upwards can fall below its middle.
   */
  ofPair(
    first: Omit<SetSums, 'girth'>,
    second: Omit<SetSums, 'girth'>,
    girth: number,
    range: Window,
  ): number {
    const turn = Math.PI * this.pool.request.diameter;
    const at = (ofFirst: number): number =>
      this.of({ ...first, girth: ofFirst }) + this.of({ ...second, girth: girth - ofFirst });
    const within = (place: number): number => Math.min(range.high, Math.max(range.low, place));
    const ends = [range.low, range.high, within(turn), within(girth - turn)];
    const least = Math.min(...ends.map(at));
    const [low, high] = [within(girth - turn), within(turn)];
    if (low >= high) return least;
    return Math.min(least, 2 * at((low + high) / 2) - Math.max(at(low), at(high)));
  }
}

/** a, b and c such that a + b x + c alpha(x) is no less than r(x) up to the widest; see `StrayBound`. */
function restAbove(
  middle: number,
  widest: number,
  measured: Measured,
): readonly [number, number, number] {
  const apart = widest - middle;
  // all alike: r itself
  if (apart < ALIKE) return [restAt(widest, measured).value, 0, 0];
  const [at, end] = [restAt(middle, measured), restAt(widest, measured)];
  const [alpha, alphaEnd] = [angleAt(middle, measured), angleAt(widest, measured)];
  // beyond the tangent at the middle
  const c =
    (end.value - at.value - at.slope * apart) /
    (alphaEnd.value - alpha.value - alpha.slope * apart);
  const b = at.slope - c * alpha.slope;
  return [at.value - b * middle - c * alpha.value, b, c];
}

/** Widths over the diameter that differ by less are alike. */
const ALIKE = 1e-4;

interface Curve {
  readonly value: number;
  readonly slope: number;
}

/** The half-angle over x. */
function angleAt(x: number, measured: Measured): Curve {
  return { value: halfAngle(x, 1, measured), slope: halfAngleSlope(x, 1, measured) };
}

/** r(x) */
function restAt(x: number, measured: Measured): Curve {
  const { value, slope } = angleAt(x, measured);
  const square = x * x;
  const fallSlope = measured === 'blank' ? (1 - square) / (1 + square) ** 2 : (1 - square) ** -1.5;
  return {
    value: steepness(x, 1, measured) - 3 * value + 2 * x,
    slope: fallSlope - 3 * slope + 2,
  };
}
