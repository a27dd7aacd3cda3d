/** How much room a drawing takes up: its strokes with their arcs taken exactly, the boxes of its lettering, and leaders. */
import type { Bounds } from '../geometry/measure.js';
import { boundsOf } from '../geometry/measure.js';
import type { Curve, Point } from '../geometry/curve.js';
import { polygon } from '../geometry/curve.js';
import type { Part } from './build.js';
import { letteringBox } from './lettering.js';

/** Each format asks for the same. */
const measured = new WeakMap<Part, Bounds>();

/** The smallest upright rectangle round a drawing or a part of one. Line widths don't count. Throws when it is empty. */
export function drawingBounds(part: Part): Bounds {
  const known = measured.get(part);
  if (known) return known;
  const curves: Curve[] = [];
  for (const { curve } of part.strokes) curves.push(curve);
  for (const { leader } of part.letterings) if (leader) curves.push(leader);
  const points: Point[] = [];
  for (const lettering of part.letterings) points.push(...letteringBox(lettering));
  const bounds = boundsOf(...curves, polygon(points));
  if (!bounds) throw new RangeError('an empty drawing has no bounds');
  measured.set(part, bounds);
  return bounds;
}
