/** The parallel of a curve, exact: lines give lines, arcs give arcs about the same centre. */
import type { Curve, Point, Vertex } from './curve.js';
import type { Segment } from './segment.js';
import { leftDistance, normalAt, segmentsOf } from './segment.js';
import { coincident } from './tolerance.js';
import { along, cross, distance, dot, leftNormal, minus } from './vector.js';

/**
 * Why there is no parallel, and at which segment (counted from 0, those between coincident points left out):
 * `arc-inverts` when an arc's radius is used up, `segment-vanishes` when its neighbours' parallels meet
 * before it, `no-corner` when two neighbours' parallels don't meet.
 */
export type OffsetFailure = 'arc-inverts' | 'segment-vanishes' | 'no-corner';

export type OffsetResult =
  | { readonly ok: true; readonly curve: Curve }
  | { readonly ok: false; readonly reason: OffsetFailure; readonly segment: number };

const cornerSteps = 50;

/** sine of the angle under which two directions are parallel */
const parallelTurn = 1e-12;

/**
 * The curve `distance` mm to the left of its direction of travel, to the right when negative (a closed
 * counter-clockwise curve shrinks on its left). Corners are mitred: neighbours are prolonged, or cut off,
 * where they meet. Parts that meet elsewhere are not looked for.
 */
export function offset(curve: Curve, left: number): OffsetResult {
  const segments = segmentsOf(curve);
  const inverted = segments.findIndex((segment) => !(1 - segment.curvature * left > 1e-9));
  if (inverted >= 0) return { ok: false, reason: 'arc-inverts', segment: inverted };
  const moved = segments.map((segment) => parallel(segment, left));
  const corners = cornersOf(moved, curve.closed);
  const noCorner = corners.indexOf(null);
  if (noCorner >= 0) return { ok: false, reason: 'no-corner', segment: noCorner };
  return assembled(moved, corners as Point[], curve.closed);
}

function parallel(segment: Segment, left: number): Segment {
  const shrink = 1 - segment.curvature * left;
  return {
    ...segment,
    from: along(segment.from, leftNormal(segment.fromTangent), left),
    to: along(segment.to, leftNormal(segment.toTangent), left),
    curvature: segment.curvature / shrink,
    length: segment.length * shrink,
  };
}

/** Where each segment starts, and where the last one ends: one more than there are segments. */
function cornersOf(segments: readonly Segment[], closed: boolean): (Point | null)[] {
  const [first, last] = [segments[0], segments.at(-1)];
  if (!first || !last) return [];
  const inner = segments.slice(1).map((segment, i) => meeting(segments[i]!, segment));
  if (!closed) return [first.from, ...inner, last.to];
  const seam = meeting(last, first);
  return [seam, ...inner, seam];
}

/** Where the end of one segment meets the start of the next, both prolonged at need. */
function meeting(before: Segment, after: Segment): Point | null {
  if (distance(before.to, after.from) < coincident) return after.from;
  let point = mitre(before, after);
  // Newton's method on the distances from both circles; two lines are done at once
  for (let step = 0; point && step < cornerSteps; step++) {
    const [d1, d2] = [offCircle(before, point), offCircle(after, point)];
    if (Math.abs(d1) + Math.abs(d2) < 1e-3 * coincident) return point;
    point = steppedBack(point, d1, normalAt(before, point), d2, normalAt(after, point));
  }
  return null;
}

/** Where the tangents at the corner meet. */
function mitre(before: Segment, after: Segment): Point | null {
  const turn = cross(before.toTangent, after.fromTangent);
  if (Math.abs(turn) < parallelTurn) return null;
  const reach = cross(minus(after.from, before.to), after.fromTangent) / turn;
  return along(before.to, before.toTangent, reach);
}

/** The point `m` further on, with `m.n1 = -d1` and `m.n2 = -d2`. */
function steppedBack(point: Point, d1: number, n1: Point, d2: number, n2: Point): Point | null {
  const turn = cross(n1, n2);
  if (Math.abs(turn) < parallelTurn) return null;
  return {
    x: point.x - (d1 * n2.y - d2 * n1.y) / turn,
    y: point.y - (d2 * n1.x - d1 * n2.x) / turn,
  };
}

function offCircle({ from, fromTangent, curvature }: Segment, point: Point): number {
  return leftDistance(from, fromTangent, curvature, point);
}

function assembled(
  segments: readonly Segment[],
  corners: readonly Point[],
  closed: boolean,
): OffsetResult {
  const vertices: Vertex[] = [];
  for (const [index, segment] of segments.entries()) {
    const [start, end] = [corners[index]!, corners[index + 1]!];
    const length =
      segment.length -
      reachFrom(segment, segment.from, start) +
      reachFrom(segment, segment.to, end);
    if (length < coincident) return { ok: false, reason: 'segment-vanishes', segment: index };
    vertices.push({ ...start, bulge: Math.tan((segment.curvature * length) / 4) });
  }
  const last = corners.at(-1);
  if (!closed && last) vertices.push({ ...last, bulge: 0 });
  return { ok: true, curve: { closed, vertices } };
}

/** How far along the segment's own circle or line one of its points lies from another. */
function reachFrom(segment: Segment, origin: Point, point: Point): number {
  const { curvature, fromTangent } = segment;
  if (curvature === 0) return dot(minus(point, origin), fromTangent);
  const [before, after] = [normalAt(segment, origin), normalAt(segment, point)];
  return Math.atan2(cross(before, after), dot(before, after)) / curvature;
}
