/** Length, area, extent and places of curves, with their arcs taken exactly. */
import type { Curve, Point } from './curve.js';
import type { Place } from './path.js';
import type { Segment } from './segment.js';
import { placeOn, segmentsOf } from './segment.js';
import { cross } from './vector.js';

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The smallest upright rectangle round all the curves, or null when they have no point. */
export function boundsOf(...curves: readonly Curve[]): Bounds | null {
  const extent = new Extent();
  for (const curve of curves) extent.takeIn(reachesOf(curve));
  return extent.bounds();
}

/** The smallest upright rectangle round the points, or null when there are none. */
export function boundsOfPoints(points: readonly Point[]): Bounds | null {
  const extent = new Extent();
  extent.takeIn(points);
  return extent.bounds();
}

/** A drawing's curves are measured with it, on each sheet, and with others of their kind. */
const reachesOfArcs = new WeakMap<Curve, readonly Point[]>();

/** The corners of a curve, and the points inside its arcs where they run level or upright. Most curves have no arc. */
export function reachesOf(curve: Curve): readonly Point[] {
  const { vertices } = curve;
  for (let i = 0; i < vertices.length; i++) {
    if (vertices[i]!.bulge === 0) continue;
    let reaches = reachesOfArcs.get(curve);
    if (!reaches) {
      reaches = [...vertices, ...segmentsOf(curve).flatMap(extremes)];
      reachesOfArcs.set(curve, reaches);
    }
    return reaches;
  }
  return vertices;
}

/** A rectangle that grows with what it takes in. */
export class Extent {
  private minX = Infinity;
  private minY = Infinity;
  private maxX = -Infinity;
  private maxY = -Infinity;
  private isEmpty = true;

  takeIn(points: readonly Point[]): void {
    let { minX, minY, maxX, maxY } = this;
    let sum = 0;
    for (let i = 0; i < points.length; i++) {
      const { x, y } = points[i]!;
      minX = x < minX ? x : minX;
      minY = y < minY ? y : minY;
      maxX = x > maxX ? x : maxX;
      maxY = y > maxY ? y : maxY;
      sum += x + y;
    }
    // what is no number is passed over above: it must spoil the whole, as no comparison moves NaN again
    const isSpoilt = Number.isNaN(sum);
    this.minX = isSpoilt ? NaN : minX;
    this.minY = isSpoilt ? NaN : minY;
    this.maxX = isSpoilt ? NaN : maxX;
    this.maxY = isSpoilt ? NaN : maxY;
    if (points.length > 0) this.isEmpty = false;
  }

  /** Null as long as it has taken in nothing. */
  bounds(): Bounds | null {
    const { minX, minY, maxX, maxY } = this;
    return this.isEmpty ? null : { minX, minY, maxX, maxY };
  }
}

/** The points inside an arc where it runs level or upright. */
function extremes(segment: Segment): Point[] {
  if (segment.curvature === 0) return [];
  const quarter = Math.PI / 2;
  const start = Math.atan2(segment.fromTangent.y, segment.fromTangent.x);
  const [low, high] = [start, start + segment.sweep].sort((a, b) => a - b) as [number, number];
  const points: Point[] = [];
  for (let turn = Math.ceil(low / quarter); turn * quarter <= high; turn++) {
    points.push(placeOn(segment, (turn * quarter - start) / segment.curvature).point);
  }
  return points;
}

/** The length along the curve, mm. */
export function lengthOf(curve: Curve): number {
  return segmentsOf(curve).reduce((sum, { length }) => sum + length, 0);
}

/**
 * The area inside a closed curve, mm2; positive when it runs counter-clockwise. An open curve is taken as
 * closed by a straight line.
 */
export function signedArea(curve: Curve): number {
  const segments = segmentsOf(curve);
  const [origin] = curve.vertices;
  if (!origin) return 0;
  // measured from the first vertex, so that a small shape far from the origin loses no digits
  return segments.reduce((sum, segment) => {
    const a = { x: segment.from.x - origin.x, y: segment.from.y - origin.y };
    const b = { x: segment.to.x - origin.x, y: segment.to.y - origin.y };
    return sum + cross(a, b) / 2 + areaBesideChord(segment);
  }, 0);
}

/** Area between an arc and its chord, `R^2 (sweep - sin sweep) / 2`; positive to the right of the chord. */
function areaBesideChord({ sweep, curvature }: Segment): number {
  if (curvature === 0) return 0;
  const square = sweep * sweep;
  const difference =
    Math.abs(sweep) < 0.01
      ? (sweep * square * (1 - (square / 20) * (1 - square / 42))) / 6
      : sweep - Math.sin(sweep);
  return difference / (2 * curvature * curvature);
}

/**
 * The point and unit tangent at a length along the curve; before its start and past its end, on the ends
 * prolonged. Throws when the curve has no segment.
 */
export function placeAtLength(curve: Curve, length: number): Place {
  const segments = segmentsOf(curve);
  let rest = length;
  for (const [index, segment] of segments.entries()) {
    if (rest <= segment.length || index === segments.length - 1) return placeOn(segment, rest);
    rest -= segment.length;
  }
  throw new RangeError('a curve without segments has no places');
}

/** The rectangle round them all, or null when there are none. */
export function together(all: readonly Bounds[]): Bounds | null {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < all.length; i++) {
    const each = all[i]!;
    minX = Math.min(minX, each.minX);
    minY = Math.min(minY, each.minY);
    maxX = Math.max(maxX, each.maxX);
    maxY = Math.max(maxY, each.maxY);
  }
  return all.length > 0 ? { minX, minY, maxX, maxY } : null;
}
