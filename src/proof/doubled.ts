/** Finds lines that are drawn twice, in whole or in part: a router would cut there twice. */
import type { Curve, Point } from '../geometry/curve.js';
import { isBeside, leftDistance, placeOn, segmentsOf, type Segment } from '../geometry/segment.js';
import { distance, dot, minus } from '../geometry/vector.js';
import { tolerance } from './tolerance.js';

interface Boxed {
  readonly segment: Segment;
  readonly layer: string;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

export interface Doubled {
  readonly layer: string;
  /** a point that is drawn twice */
  readonly point: Point;
}

/**
 * One place where a line runs on another of its layer, or null. `mayTouch` says where two parts may share an edge.
 * Segments sorted by `x` meet only those near them.
 */
export function doubledLine(
  curves: readonly { readonly layer: string; readonly curve: Curve }[],
  mayTouch: (point: Point) => boolean = () => false,
): Doubled | null {
  const boxed = curves
    .flatMap(({ layer, curve }) => segmentsOf(curve).map((segment) => box(layer, segment)))
    .sort((a, b) => a.minX - b.minX);
  for (const [i, one] of boxed.entries()) {
    for (let j = i + 1; j < boxed.length && boxed[j]!.minX <= one.maxX; j++) {
      const other = boxed[j]!;
      if (other.layer !== one.layer || other.minY > one.maxY || other.maxY < one.minY) continue;
      const point = sharedPoint(one.segment, other.segment);
      if (point && !mayTouch(point)) return { layer: one.layer, point };
    }
  }
  return null;
}

/** An arc bows at most half its chord times its bulge, `tan(sweep / 4)`, off the chord. */
function box(layer: string, segment: Segment): Boxed {
  const { from, to, sweep } = segment;
  const bow = (Math.abs(Math.tan(sweep / 4)) * distance(from, to)) / 2 + tolerance.doubled;
  return {
    segment,
    layer,
    minX: Math.min(from.x, to.x) - bow,
    maxX: Math.max(from.x, to.x) + bow,
    minY: Math.min(from.y, to.y) - bow,
    maxY: Math.max(from.y, to.y) + bow,
  };
}

/**
 * The ends of both part the first into stretches, each of which the other covers wholly or hardly at all. Three places of a
 * stretch tell which: lines that only cross share one.
 */
function sharedPoint(one: Segment, other: Segment): Point | null {
  if (![...endsNear(other, one), ...endsNear(one, other)].includes(true)) return null;
  const stops = [0, one.length, ...[other.from, other.to].map((end) => lengthTo(one, end))]
    .filter((length) => length >= 0 && length <= one.length)
    .sort((a, b) => a - b);
  for (const [i, to] of stops.entries()) {
    const from = stops[i - 1] ?? to;
    if (to - from < tolerance.doubledLength) continue;
    const places = [0.2, 0.5, 0.8].map((part) => placeOn(one, from + part * (to - from)).point);
    if (places.every((place) => isOn(other, place))) return places[1]!;
  }
  return null;
}

/** Whether the ends of one lie on the other's line or circle, drawn on: where two run together, at least one of four does. */
function endsNear({ from, fromTangent, curvature }: Segment, other: Segment): boolean[] {
  return [other.from, other.to].map(
    (end) => Math.abs(leftDistance(from, fromTangent, curvature, end)) < 5 * tolerance.doubled,
  );
}

/** How far along a segment's line or circle a point of it lies. */
function lengthTo({ from, fromTangent, curvature }: Segment, point: Point): number {
  const chord = distance(from, point);
  const sign = Math.sign(dot(minus(point, from), fromTangent)) || 1;
  if (curvature === 0) return sign * chord;
  const half = Math.asin(Math.min(1, (chord * Math.abs(curvature)) / 2));
  return (sign * 2 * half) / Math.abs(curvature);
}

function isOn(segment: Segment, point: Point): boolean {
  const { from, fromTangent, curvature } = segment;
  const off = Math.abs(leftDistance(from, fromTangent, curvature, point));
  return off < tolerance.doubled && isBeside(segment, point);
}
