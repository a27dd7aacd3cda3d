/** How much room a drawing takes up: its strokes with their arcs taken exactly, the boxes of its lettering, and leaders. */
import type { Bounds } from '../geometry/measure.js';
import { Extent, reachesOf, together } from '../geometry/measure.js';
import type { Part } from './build.js';
import { letteringBox } from './lettering.js';

/** Each format asks for the same. */
const measured = new WeakMap<Part, Bounds>();

/** The smallest upright rectangle round a drawing or a part of one. Line widths don't count. Throws when it is empty. */
export function drawingBounds(part: Part): Bounds {
  const known = measured.get(part);
  if (known) return known;
  const extent = new Extent();
  for (const { curve } of part.strokes) extent.takeIn(reachesOf(curve));
  for (const lettering of part.letterings) {
    if (lettering.leader) extent.takeIn(reachesOf(lettering.leader));
    extent.takeIn(letteringBox(lettering));
  }
  const bounds = extent.bounds();
  if (!bounds) throw new RangeError('an empty drawing has no bounds');
  measured.set(part, bounds);
  return bounds;
}

/** Spares measuring a drawing that is put together of parts whose bounds are known. */
export function rememberBounds(whole: Part, parts: readonly Bounds[]): void {
  const bounds = together(parts);
  if (bounds) measured.set(whole, bounds);
}
