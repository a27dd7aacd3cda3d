/**
 * One segment of a curve: a straight line or an arc. An arc is described by where it starts, its direction
 * there and its curvature, so that arcs of kilometres and straight lines need no case of their own.
 */
import type { Curve, Point, Vertex } from './curve.js';
import { coincident, straightBulge } from './tolerance.js';
import { along, cross, distance, dot, leftNormal, minus, turned, unit } from './vector.js';

export interface Segment {
  readonly from: Point;
  readonly to: Point;
  /** unit tangents at the two ends */
  readonly fromTangent: Point;
  readonly toTangent: Point;
  /** 1/radius, positive when it turns counter-clockwise, 0 when straight */
  readonly curvature: number;
  /** radians, signed as the curvature */
  readonly sweep: number;
  readonly length: number;
}

/** A circle's arc; `startAngle` and `sweep` in radians, counter-clockwise positive. */
export interface Arc {
  readonly centre: Point;
  readonly radius: number;
  readonly startAngle: number;
  readonly sweep: number;
}

/** The segment that leaves `vertex` for `next`. They must not coincide. */
export function segmentOf(vertex: Vertex, next: Point): Segment {
  const { bulge } = vertex;
  const chord = distance(vertex, next);
  const direction = { x: (next.x - vertex.x) / chord, y: (next.y - vertex.y) / chord };
  if (Math.abs(bulge) < straightBulge) {
    return {
      from: vertex,
      to: next,
      fromTangent: direction,
      toTangent: direction,
      curvature: 0,
      sweep: 0,
      length: chord,
    };
  }
  const half = 2 * Math.atan(bulge);
  return {
    from: vertex,
    to: next,
    fromTangent: turned(direction, -half),
    toTangent: turned(direction, half),
    // chord = 2 R sin(sweep/2), and sin(2 atan b) = 2b / (1 + b^2)
    curvature: (4 * bulge) / (chord * (1 + bulge * bulge)),
    sweep: 2 * half,
    length: (chord * (1 + bulge * bulge) * half) / (2 * bulge),
  };
}

/** The segments of a curve in order; those between coincident points are left out. */
export function segmentsOf(curve: Curve): Segment[] {
  const { vertices, closed } = curve;
  const segments: Segment[] = [];
  const count = closed ? vertices.length : vertices.length - 1;
  for (let i = 0; i < count; i++) {
    const vertex = vertices[i]!;
    const next = vertices[i + 1] ?? vertices[0]!;
    if (distance(vertex, next) >= coincident) segments.push(segmentOf(vertex, next));
  }
  return segments;
}

/** Whether a curve is one straight segment and nothing else. */
export function isLine({ closed, vertices }: Curve): boolean {
  if (closed || vertices.length !== 2 || vertices[0]!.bulge !== 0) return false;
  return distance(vertices[0]!, vertices[1]!) >= coincident;
}

/** The circle that the segment leaving `vertex` follows, or null when it is straight. */
export function segmentArc(vertex: Vertex, next: Point): Arc | null {
  const segment = segmentOf(vertex, next);
  if (segment.curvature === 0) return null;
  const { curvature, sweep, fromTangent } = segment;
  const centre = along(vertex, leftNormal(fromTangent), 1 / curvature);
  const startAngle = Math.atan2(vertex.y - centre.y, vertex.x - centre.x);
  return { centre, radius: 1 / Math.abs(curvature), startAngle, sweep };
}

/**
 * Distance of a point from the whole circle (or line) that leaves `from` in the unit direction `tangent`:
 * positive on the left. With `q = k |d|^2 - 2 d.n` the distance from the centre is `R sqrt(1 + k q)`, and
 * `R - R sqrt(1 + k q) = -q / (1 + sqrt(1 + k q))` holds for `k = 0` as well.
 */
export function leftDistance(from: Point, tangent: Point, curvature: number, point: Point): number {
  const dx = point.x - from.x;
  const dy = point.y - from.y;
  const q = curvature * (dx * dx + dy * dy) - 2 * (dy * tangent.x - dx * tangent.y);
  return -q / (1 + Math.sqrt(Math.max(0, 1 + curvature * q)));
}

/** The unit vector that points from `point` to the left of the segment's circle, along its radius. */
export function normalAt(segment: Segment, point: Point): Point {
  const { from, fromTangent, curvature } = segment;
  const normal = along(leftNormal(fromTangent), minus(point, from), -curvature);
  return normal.x === 0 && normal.y === 0 ? leftNormal(fromTangent) : unit(normal);
}

/** Whether the foot of a perpendicular from `point` falls on the segment (its ends included). */
export function isBeside(segment: Segment, point: Point): boolean {
  const { from, to, fromTangent, toTangent } = segment;
  const pastStart = (point.x - from.x) * fromTangent.x + (point.y - from.y) * fromTangent.y >= 0;
  const beforeEnd = (point.x - to.x) * toTangent.x + (point.y - to.y) * toTangent.y <= 0;
  return Math.abs(segment.sweep) > Math.PI ? pastStart || beforeEnd : pastStart && beforeEnd;
}

/** Point after a length along the segment's circle or line; any length, also negative. */
export function pointOn({ from, fromTangent, curvature }: Segment, length: number): Point {
  if (curvature === 0) return along(from, fromTangent, length);
  const half = (curvature * length) / 2;
  const chord = half === 0 ? length : (length * Math.sin(half)) / half;
  return along(from, turned(fromTangent, half), chord);
}

/** The same point, and the unit tangent there. */
export function placeOn(segment: Segment, length: number): { point: Point; tangent: Point } {
  const { fromTangent, curvature } = segment;
  const tangent = curvature === 0 ? fromTangent : turned(fromTangent, curvature * length);
  return { point: pointOn(segment, length), tangent };
}

/** Bulge of an arc that leaves in the unit direction `tangent` and spans `chord`. */
export function bulgeFrom(tangent: Point, chord: Point): number {
  return cross(tangent, chord) / (Math.hypot(chord.x, chord.y) + dot(tangent, chord));
}
