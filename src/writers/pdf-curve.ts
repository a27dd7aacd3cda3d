/** Curves as PDF paths. PDF has no arcs: each becomes cubic Bézier curves, enough of them to be true. */
import type { Curve, Point } from '../geometry/curve.js';
import type { Segment } from '../geometry/segment.js';
import { isLine, placeOn, segmentsOf } from '../geometry/segment.js';
import { along } from '../geometry/vector.js';
import { formatPoint } from './number.js';

/** How far a cubic may stray from its arc, mm. */
export const cubicTolerance = 0.0005;
const widestCubic = Math.PI / 6;

/** The operators that build the path; empty for a curve of no length. Throws when a coordinate isn't finite. */
export function pathOperators(curve: Curve): string {
  for (const { x, y, bulge } of curve.vertices) {
    if (!Number.isFinite(x + y + bulge)) {
      throw new RangeError(`not a point to draw: ${x}, ${y}, bulge ${bulge}`);
    }
  }
  // most curves are this: no need to take them apart
  if (isLine(curve))
    return `${formatPoint(curve.vertices[0]!)} m ${formatPoint(curve.vertices[1]!)} l`;
  const segments = segmentsOf(curve);
  const [first] = segments;
  if (!first) return '';
  let path = `${formatPoint(first.from)} m`;
  segments.forEach((segment, i) => {
    const closes = curve.closed && i === segments.length - 1;
    if (segment.curvature !== 0) path += cubicsOf(segment).map(cubicOperator).join('');
    else if (!closes) path += ` ${formatPoint(segment.to)} l`;
  });
  return curve.closed ? `${path} h` : path;
}

type Cubic = readonly [control: Point, control: Point, end: Point];

function cubicOperator([from, to, end]: Cubic): string {
  return ` ${formatPoint(from)} ${formatPoint(to)} ${formatPoint(end)} c`;
}

/** Handles of 4/3 tan(angle/4) radii along the tangents: then the cubic passes through the middle of its arc. */
function cubicsOf(segment: Segment): Cubic[] {
  const { length, sweep, curvature } = segment;
  const count = cubicCount(1 / Math.abs(curvature), Math.abs(sweep));
  const handle = ((4 / 3) * Math.tan(sweep / count / 4)) / curvature;
  return Array.from({ length: count }, (_, i): Cubic => {
    const from = placeOn(segment, (length * i) / count);
    const to = placeOn(segment, (length * (i + 1)) / count);
    const end = i === count - 1 ? segment.to : to.point;
    return [along(from.point, from.tangent, handle), along(end, to.tangent, -handle), end];
  });
}

/**
 * Such a cubic bulges outwards by at most r (2/27) sin^6(a/4) / cos^2(a/4) over an angle a: the radius of its points,
 * squared, exceeds r^2 by a multiple of (t (1 - t) (1 - 2t))^2, whose greatest value is 1/108. For a up to 30 degrees
 * the cosine adds less than 2 %.
 */
export function cubicCount(radius: number, sweep: number): number {
  const sine = ((cubicTolerance / 1.02) * (27 / 2)) / radius;
  const widest = Math.min(widestCubic, 4 * Math.asin(Math.min(1, sine ** (1 / 6))));
  return Math.max(1, Math.ceil(sweep / widest - 1e-9));
}
