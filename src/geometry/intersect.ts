/** Where curves cross straight lines and rectangles: lines and arcs exactly. */
import type { Curve, Point } from './curve.js';
import type { Bounds } from './measure.js';
import type { Segment } from './segment.js';
import { isBeside, segmentsOf } from './segment.js';
import { coincident } from './tolerance.js';
import { along, distance, dot, leftNormal, minus, unit } from './vector.js';

/** Where the curve meets the endless straight line through two points, in order from the first to the second. */
export function crossLine(curve: Curve, a: Point, b: Point): Point[] {
  const direction = unit(minus(b, a));
  const found = segmentsOf(curve).flatMap((segment) => crossSegment(segment, a, direction));
  found.sort((p, q) => dot(minus(p, q), direction));
  return found.filter((point, i) => i === 0 || distance(point, found[i - 1]!) > coincident);
}

/** Where the curve meets the straight line from one point to another, ends included, in that order. */
export function crossBetween(curve: Curve, a: Point, b: Point): Point[] {
  const length = distance(a, b);
  const direction = unit(minus(b, a));
  return crossLine(curve, a, b).filter((point) => {
    const reach = dot(minus(point, a), direction);
    return reach >= -coincident && reach <= length + coincident;
  });
}

/** Where the curve meets the four edges of a rectangle. */
export function crossRectangle(curve: Curve, { minX, minY, maxX, maxY }: Bounds): Point[] {
  const corners: Point[] = [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
  const found = corners.flatMap((corner, i) => crossBetween(curve, corner, corners[(i + 1) % 4]!));
  return found.filter((point, i) =>
    found.slice(0, i).every((other) => distance(point, other) > coincident),
  );
}

/** Whether any part of the curve's line lies inside a rectangle or on its edge. */
export function meetsRectangle(curve: Curve, area: Bounds): boolean {
  const { minX, minY, maxX, maxY } = area;
  const inside = ({ x, y }: Point) => x >= minX && x <= maxX && y >= minY && y <= maxY;
  return curve.vertices.some(inside) || crossRectangle(curve, area).length > 0;
}

/**
 * On the line `a + s d` the segment's circle asks for `k s^2 - 2 (d.n) s + (k |a|^2 - 2 a.n) = 0`, seen from
 * the segment's start with the normal `n` there and `a` the nearest point of the line. It is linear for a
 * straight segment, and loses no digits on a nearly straight one.
 */
function crossSegment(segment: Segment, through: Point, direction: Point): Point[] {
  if (isBeyond(segment, through, direction)) return [];
  const { from, fromTangent, curvature } = segment;
  const normal = leftNormal(fromTangent);
  const near = along(through, direction, dot(minus(from, through), direction));
  const a = minus(near, from);
  const b = dot(direction, normal);
  const c = curvature * dot(a, a) - 2 * dot(a, normal);
  const discriminant = b * b - curvature * c;
  // a line that misses a circle by a length m gives -2 |k| m: it touches if that is next to nothing
  if (discriminant < -2 * Math.abs(curvature) * coincident) return [];
  const q = b + (b < 0 ? -1 : 1) * Math.sqrt(Math.max(0, discriminant));
  const reaches = [c / q, ...(curvature === 0 ? [] : [q / curvature])].filter(Number.isFinite);
  return reaches.map((s) => along(near, direction, s)).filter((point) => isWithin(segment, point));
}

/** A quick no: both ends lie further to the same side of the line than any point of the segment lies from the nearer end. */
function isBeyond({ from, to, length }: Segment, through: Point, direction: Point): boolean {
  const reach = length / 2 + 2 * coincident;
  const start = (from.y - through.y) * direction.x - (from.x - through.x) * direction.y;
  const end = (to.y - through.y) * direction.x - (to.x - through.x) * direction.y;
  return (start > reach && end > reach) || (start < -reach && end < -reach);
}

/** Whether a point of the segment's circle or line lies between its ends. */
function isWithin(segment: Segment, point: Point): boolean {
  const atEnd = Math.min(distance(point, segment.from), distance(point, segment.to)) <= coincident;
  return atEnd || isBeside(segment, point);
}
