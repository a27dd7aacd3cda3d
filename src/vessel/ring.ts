/** The ring of staves: half-angles, and the diameter at which a mixed set closes. */
import { root } from '../geometry/quadrature.js';
import type { Spec } from '../spec/spec.js';
import { greatestDiameter } from './profile.js';

export interface Ring {
  /** half-angle of each stave in ring order, radians; their sum is pi */
  readonly alphas: readonly number[];
  /** outside diameter at the bilge (tub: at the wider end) at which the ring closes, mm */
  readonly closesAt: number;
  /** sum of `tan(alpha)`: a polygon of apothem `r` has the girth `2 r` times this and the area `r^2` times this */
  readonly sumOfTangents: number;
  readonly widestAlpha: number;
}

/**
 * The diameter `D` for which the sum of `atan(w_i / D)` is pi: each flat outer face touches the circle of radius `D/2` at
 * its middle. NaN when no diameter does (fewer than three widths).
 */
export function closingDiameter(widths: readonly number[]): number {
  const laid = widths.reduce((sum, width) => sum + width, 0);
  const excess = (diameter: number): number =>
    widths.reduce((sum, width) => sum + Math.atan(width / diameter), 0) - Math.PI;
  // atan(x) < x, so D < laid / pi; from below, each of three or more staves turns nearly a quarter as D vanishes
  return root(excess, laid / Math.PI, laid * 1e-4);
}

export function ringOf(spec: Spec): Ring {
  const { count, widths } = spec.staves;
  const closesAt = widths ? closingDiameter(widths) : greatestDiameter(spec);
  const alphas = widths
    ? widths.map((width) => Math.atan(width / closesAt))
    : new Array<number>(count).fill(Math.PI / count);
  return {
    alphas,
    closesAt,
    sumOfTangents: alphas.reduce((sum, alpha) => sum + Math.tan(alpha), 0),
    widestAlpha: Math.max(...alphas),
  };
}
