/** Measures drawn contours: where they cross a line, and how far their points lie from where they should. */
import type { Curve, Point } from '../geometry/curve.js';
import { placeOn, segmentsOf, type Segment } from '../geometry/segment.js';

/** Places looked at on every line and arc: the error of a fitted arc has one or two waves along it. */
const places = 10;

/** Values of `y` at which a contour crosses the upright line at `x`, in no order; each corner on it counts for both sides. */
export function crossings(segments: readonly Segment[], x: number): number[] {
  const found: number[] = [];
  for (const segment of segments) {
    const { from, to } = segment;
    if ((x - from.x) * (x - to.x) <= 0 && from.x !== to.x) found.push(crossing(segment, x));
  }
  return found;
}

/** By Newton's steps along the segment, which runs from left to right or back. */
function crossing(segment: Segment, x: number): number {
  let along = ((x - segment.from.x) / (segment.to.x - segment.from.x)) * segment.length;
  for (let i = 0; i < 30; i++) {
    const { point, tangent } = placeOn(segment, along);
    const step = (x - point.x) / tangent.x;
    if (!Number.isFinite(step)) return NaN;
    along += step;
    // each step is as far off as the square of the one before
    if (Math.abs(step) < 1e-6) break;
  }
  return placeOn(segment, along).point.y;
}

/** The contour turned over its diagonal, so that level lines become upright ones. */
export function transposed({ closed, vertices }: Curve): Curve {
  return { closed, vertices: vertices.map(({ x, y, bulge }) => ({ x: y, y: x, bulge: -bulge })) };
}

export interface Sample {
  readonly point: Point;
  /** unit, in the direction of the contour */
  readonly tangent: Point;
}

/** Points all along a contour, close enough to catch the crest of every error. */
export function samplesOf(curve: Curve): Sample[] {
  return segmentsOf(curve).flatMap((segment) =>
    Array.from({ length: places + 1 }, (_, i) => placeOn(segment, (i / places) * segment.length)),
  );
}
