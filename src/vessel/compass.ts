/** The six-step check: a compass opened to a circle's radius steps round it exactly six times. */
import { root } from '../geometry/quadrature.js';

/**
 * By how much six steps of a compass run past a full turn on a circle, radians; negative where they end short. One step takes
 * `2 asin(opening / 2 radius)`: a compass 1 % too wide overruns by 3.98 degrees. NaN when it is wider than the circle.
 */
export function sixStepOverrun(opening: number, radius: number): number {
  return 12 * Math.asin(opening / (2 * radius)) - 2 * Math.PI;
}

/**
 * The radius of the circle on which the last of six steps passes the first point by `miss` mm along the circle (negative: ends
 * short of it). A circle that is too small is overrun.
 */
export function radiusFromMiss(opening: number, miss: number): number {
  const excess = (radius: number): number => radius * sixStepOverrun(opening, radius) - miss;
  return root(excess, 0.6 * opening, 2 * opening);
}
