/** Two arcs that join two places of a curve and have its direction at both. */
import type { Point, Vertex } from './curve.js';
import type { Place } from './path.js';
import { bulgeFrom, leftDistance } from './segment.js';
import { add, along, cross, distance, dot, minus, size, times, unit } from './vector.js';

export interface Biarc {
  readonly from: Place;
  /** where the two arcs meet */
  readonly middle: Place;
  readonly to: Place;
  readonly firstCurvature: number;
  readonly secondCurvature: number;
}

/**
 * The biarc whose two control arms are equally long. On a curve whose curvature changes evenly it crosses
 * the curve in the middle and errs by the same amount, `k' h^3 / 324`, on either side (integrate the
 * difference of curvatures twice), so no other choice of the meeting point does better there.
 *
 * With `v` from start to end, `t = t0 + t1` and arms `d`, tangency asks for
 * `v.v - 2 d v.t - 2 d^2 (1 - t0.t1) = 0`. Null when the two places are one, or no such biarc exists.
 */
export function biarcBetween(from: Place, to: Place): Biarc | null {
  const v = minus(to.point, from.point);
  const square = dot(v, v);
  const b = dot(v, add(from.tangent, to.tangent));
  const a = 2 * (1 - dot(from.tangent, to.tangent));
  const root = Math.sqrt(b * b + a * square);
  const arm = b > 0 ? square / (b + root) : (root - b) / a;
  if (!(arm > 0) || !Number.isFinite(arm)) return null;
  const corner = along(from.point, from.tangent, arm);
  const lastCorner = along(to.point, to.tangent, -arm);
  const point = times(add(corner, lastCorner), 0.5);
  const [first, second] = [minus(point, from.point), minus(to.point, point)];
  return {
    from,
    middle: { point, tangent: unit(minus(lastCorner, corner)) },
    to,
    firstCurvature: (2 * cross(from.tangent, first)) / dot(first, first),
    secondCurvature: (2 * cross(second, to.tangent)) / dot(second, second),
  };
}

/** How far a point lies from the biarc; its arcs are taken to turn by at most half a circle each. */
export function distanceFromBiarc(biarc: Biarc, point: Point): number {
  const { from, middle, to } = biarc;
  if (ahead(from, point) < 0) return distance(from.point, point);
  if (ahead(to, point) > 0) return distance(to.point, point);
  return Math.abs(
    ahead(middle, point) < 0
      ? leftDistance(from.point, from.tangent, biarc.firstCurvature, point)
      : leftDistance(to.point, to.tangent, biarc.secondCurvature, point),
  );
}

function ahead({ point, tangent }: Place, other: Point): number {
  return (other.x - point.x) * tangent.x + (other.y - point.y) * tangent.y;
}

/** The vertices at which its two arcs start. */
export function biarcVertices(biarc: Biarc): [Vertex, Vertex] {
  const { from, middle, to } = biarc;
  const [first, second] = [minus(middle.point, from.point), minus(to.point, middle.point)];
  return [
    { ...from.point, bulge: bulgeFrom(from.tangent, first) },
    // the end's tangent seen backwards: the mirror image of the bulge from the start
    {
      ...middle.point,
      bulge: cross(second, to.tangent) / (size(second) + dot(second, to.tangent)),
    },
  ];
}
