/** Free room on a sheet, kept as rectangles as large as can be; things are put into it one after another. */
import type { Bounds } from '../geometry/measure.js';
import type { Size } from './paper.js';
import { around, grown, heightOf, holds, widthOf } from './rectangle.js';

/** Rectangles that may overlap each other: every free rectangle lies within one of them. */
export type Room = readonly Bounds[];

/** The room that is left when something takes `box` and keeps `gap` mm clear of everything else. */
export function take(room: Room, box: Bounds, gap: number): Room {
  const rest = room.flatMap((free) => around(free, grown(box, gap)));
  return rest.filter(
    (free, i) =>
      !rest.some((other, j) => i !== j && holds(other, free) && (i > j || !holds(free, other))),
  );
}

/** The place for a box of a size in the highest free rectangle that it fits, in that one's upper left corner. */
export function topLeft(room: Room, { width, height }: Size): Bounds | null {
  const [best] = fitting(room, { width, height }).sort(
    (a, b) => b.maxY - a.maxY || a.minX - b.minX,
  );
  if (!best) return null;
  const { minX, maxY } = best;
  return { minX, maxX: minX + width, minY: maxY - height, maxY };
}

/** The same in the lowest free rectangle, in its lower left corner. */
export function lowerLeft(room: Room, { width, height }: Size): Bounds | null {
  const [best] = fitting(room, { width, height }).sort(
    (a, b) => a.minY - b.minY || a.minX - b.minX,
  );
  if (!best) return null;
  const { minX, minY } = best;
  return { minX, maxX: minX + width, minY, maxY: minY + height };
}

/** `box` moved to the middle of the largest free rectangle that holds it. */
export function centred(room: Room, box: Bounds): Bounds {
  const [best] = room
    .filter((free) => holds(free, box))
    .sort((a, b) => widthOf(b) * heightOf(b) - widthOf(a) * heightOf(a));
  if (!best) return box;
  const x = (best.minX + best.maxX - widthOf(box)) / 2;
  const y = (best.minY + best.maxY - heightOf(box)) / 2;
  return { minX: x, maxX: x + widthOf(box), minY: y, maxY: y + heightOf(box) };
}

function fitting(room: Room, { width, height }: Size): Bounds[] {
  return room.filter((free) => widthOf(free) >= width && heightOf(free) >= height);
}
