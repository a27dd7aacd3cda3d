/** Curves as path data of SVG, with exact arcs. */
import type { Curve, Point } from '../geometry/curve.js';
import type { Segment } from '../geometry/segment.js';
import { isLine, placeOn, segmentsOf } from '../geometry/segment.js';
import { coordinateStep } from '../geometry/tolerance.js';
import { along } from '../geometry/vector.js';
import { formatNumber, formatPoint } from './number.js';

/** `place` takes a point of the drawing to its place in the file, and turns y over on the way. */
type Place = (point: Point) => Point;

/** A curve as moves, lines and arcs. */
export function curveData(curve: Curve, place: Place): string {
  const { vertices } = curve;
  // most curves are this: no need to take them apart
  if (isLine(curve))
    return `M${formatPoint(place(vertices[0]!))}L${formatPoint(place(vertices[1]!))}`;
  const segments = segmentsOf(curve);
  const first = segments[0];
  if (!first) return '';
  const commands = segments.map((segment, i) => {
    const closes = curve.closed && i === segments.length - 1 && isStraight(segment);
    return closes ? '' : segmentData(segment, place);
  });
  return `M${formatPoint(place(first.from))}${commands.join('')}${curve.closed ? 'Z' : ''}`;
}

/** Straight once it is rounded: its rise is less than half the last decimal. */
function isStraight({ curvature, length }: Segment): boolean {
  return Math.abs(curvature) * length * length < 4 * coordinateStep;
}

/**
 * Viewers work arcs out in single precision: Chromium puts one of 1 km radius 0.01 mm off. Flatter arcs than this,
 * mm, go out as parabolas, which stray from a chord c of radius r by c^4 / (128 r^3): 1e-5 mm on a metre.
 */
const largestRadius = 1e5;
const longestParabola = 1000;

function segmentData(segment: Segment, place: Place): string {
  if (isStraight(segment)) return `L${formatPoint(place(segment.to))}`;
  return Math.abs(segment.curvature) * largestRadius < 1
    ? parabolas(segment, place)
    : arcs(segment, place);
}

/**
 * Arcs of at most a quarter: rounding the ends of a half circle or more would move its centre by far more than the
 * last decimal. An arc to the left in the drawing stays one on screen, where SVG counts angles clockwise: flag 0.
 */
function arcs(segment: Segment, place: Place): string {
  const count = Math.ceil(Math.abs(segment.sweep) / (Math.PI / 2) - 1e-6);
  const radius = formatNumber(1 / Math.abs(segment.curvature));
  const flag = segment.sweep > 0 ? 0 : 1;
  return parts(segment, count)
    .map(({ to }) => `A${radius} ${radius} 0 0 ${flag} ${formatPoint(place(to))}`)
    .join('');
}

/** The control point stands where the tangents meet, `r tan(sweep/2)` from either end. */
function parabolas(segment: Segment, place: Place): string {
  const count = Math.ceil(segment.length / longestParabola);
  const reach = Math.tan(segment.sweep / count / 2) / segment.curvature;
  return parts(segment, count)
    .map(
      ({ to, tangent }) =>
        `Q${formatPoint(place(along(to, tangent, -reach)))} ${formatPoint(place(to))}`,
    )
    .join('');
}

/** The ends of equal parts of a segment, with the unit tangents there; the last is its own end. */
function parts(segment: Segment, count: number): { to: Point; tangent: Point }[] {
  return Array.from({ length: count }, (_, i) => {
    if (i === count - 1) return { to: segment.to, tangent: segment.toTangent };
    const { point, tangent } = placeOn(segment, (segment.length * (i + 1)) / count);
    return { to: point, tangent };
  });
}
