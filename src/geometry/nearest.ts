/** Distance of points from curves, and whether they lie inside. */
import type { Curve, Point, Vertex } from './curve.js';
import type { Segment } from './segment.js';
import { isBeside, leftDistance, normalAt, segmentOf, segmentsOf } from './segment.js';
import { along, cross, distance, minus } from './vector.js';

/** The point of the curve nearest to another, and how far away it is. Throws for a curve without points. */
export function nearestOn(curve: Curve, point: Point): { point: Point; distance: number } {
  const [first] = curve.vertices;
  if (!first) throw new RangeError('a curve without points is nowhere near');
  let best = { point: { x: first.x, y: first.y }, distance: distance(first, point) };
  for (const segment of segmentsOf(curve)) {
    const foot = footOn(segment, point);
    const far = distance(foot, point);
    if (far < best.distance) best = { point: foot, distance: far };
  }
  return best;
}

export function distanceTo(curve: Curve, point: Point): number {
  return nearestOn(curve, point).distance;
}

function footOn(segment: Segment, point: Point): Point {
  const { from, to, fromTangent, curvature } = segment;
  if (!isBeside(segment, point)) {
    const end = distance(from, point) <= distance(to, point) ? from : to;
    return { x: end.x, y: end.y };
  }
  const left = leftDistance(from, fromTangent, curvature, point);
  return along(point, normalAt(segment, point), -left);
}

/**
 * Whether a point lies inside a closed curve (even-odd rule): inside the polygon of its vertices, changed
 * over for each arc between whose chord and bow the point lies. Which way it falls on the curve itself is
 * not defined.
 */
export function contains(curve: Curve, point: Point): boolean {
  const { vertices } = curve;
  let inside = false;
  vertices.forEach((vertex, index) => {
    const next = vertices[(index + 1) % vertices.length]!;
    if (rayCrosses(vertex, next, point)) inside = !inside;
    if (isInBow(vertex, next, point)) inside = !inside;
  });
  return inside;
}

/** Whether a ray from the point towards +x crosses the straight line between two vertices. */
function rayCrosses(from: Point, to: Point, point: Point): boolean {
  if (from.y > point.y === to.y > point.y) return false;
  return isLeftOf(from, to, point) === to.y > from.y;
}

function isInBow(vertex: Vertex, next: Point, point: Point): boolean {
  if (vertex.bulge === 0 || distance(vertex, next) === 0) return false;
  // an arc of a positive bulge lies to the right of its chord
  if (isLeftOf(vertex, next, point) === vertex.bulge > 0) return false;
  const { from, fromTangent, curvature } = segmentOf(vertex, next);
  return leftDistance(from, fromTangent, curvature, point) * vertex.bulge > 0;
}

/**
 * Whether a point lies to the left of a chord. A point on its line is seen as a trifle higher and, where that
 * doesn't decide, a trifle further along +x, the same in both tests above, so that they always agree.
 */
function isLeftOf(from: Point, to: Point, point: Point): boolean {
  const side = cross(minus(to, from), minus(point, from));
  if (side !== 0) return side > 0;
  return to.y === from.y ? to.x > from.x : to.y < from.y;
}
