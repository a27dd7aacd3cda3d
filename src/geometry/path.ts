/** A smooth curve between two of its parameters, walked from 0 to 1. */
import type { Point } from './curve.js';
import { unit } from './vector.js';

/** A curve given by a formula, smooth (continuous tangent and curvature) over the range that is used. */
export interface SmoothCurve {
  at(u: number): Point;
  /** any length but 0, in the direction of growing `u` */
  tangent(u: number): Point;
}

/** A point of a curve and the unit tangent there. */
export interface Place {
  readonly point: Point;
  readonly tangent: Point;
}

export interface Path {
  at(fraction: number): Point;
  place(fraction: number): Place;
}

/** The path from one parameter to another, either way. Throws where the curve isn't finite. */
export function pathAlong(curve: SmoothCurve, from: number, to: number): Path {
  if (!Number.isFinite(from) || !Number.isFinite(to)) {
    throw new RangeError('path: the range is not finite');
  }
  if (from === to) throw new RangeError('path: the range is empty');
  const at = (fraction: number): Point => {
    const point = curve.at(fraction === 1 ? to : from + fraction * (to - from));
    if (!Number.isFinite(point.x + point.y)) throw new RangeError('path: a point is not finite');
    return point;
  };
  const place = (fraction: number): Place => {
    const { x, y } = curve.tangent(fraction === 1 ? to : from + fraction * (to - from));
    if (!Number.isFinite(x + y) || (x === 0 && y === 0)) throw new RangeError('path: no tangent');
    return { point: at(fraction), tangent: unit(to < from ? { x: -x, y: -y } : { x, y }) };
  };
  return { at, place };
}
