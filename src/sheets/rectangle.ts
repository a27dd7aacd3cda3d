/** Upright rectangles: the room that things take up on a sheet. */
import type { Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';

export const widthOf = ({ minX, maxX }: Bounds): number => maxX - minX;

export const heightOf = ({ minY, maxY }: Bounds): number => maxY - minY;

/** The rectangle with each side moved outwards by `by` mm; inwards when it is negative. */
export function grown({ minX, minY, maxX, maxY }: Bounds, by: number): Bounds {
  return { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
}

/** With two points at its corners. */
export function spanned(a: Point, b: Point): Bounds {
  return {
    minX: Math.min(a.x, b.x),
    minY: Math.min(a.y, b.y),
    maxX: Math.max(a.x, b.x),
    maxY: Math.max(a.y, b.y),
  };
}

/** Turned about the origin by a quarter, to the left when it is 1. */
export function turnedBounds({ minX, minY, maxX, maxY }: Bounds, quarter: 1 | -1): Bounds {
  return quarter === 1
    ? { minX: -maxY, minY: minX, maxX: -minY, maxY: maxX }
    : { minX: minY, minY: -maxX, maxX: maxY, maxY: -minX };
}

/** Whether they share more than an edge. */
export function meet(a: Bounds, b: Bounds): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

/** Whether they would meet if one were grown by `margin`. */
export function comeNear(a: Bounds, b: Bounds, margin: number): boolean {
  return (
    a.minX - margin < b.maxX &&
    b.minX < a.maxX + margin &&
    a.minY - margin < b.maxY &&
    b.minY < a.maxY + margin
  );
}

/** Whether `inner` lies in `outer`, touching allowed. */
export function holds(outer: Bounds, inner: Bounds): boolean {
  return (
    inner.minX >= outer.minX &&
    inner.maxX <= outer.maxX &&
    inner.minY >= outer.minY &&
    inner.maxY <= outer.maxY
  );
}

/** What is left of `area` round an obstacle: up to four rectangles, as large as can be, which overlap each other. */
export function around(area: Bounds, obstacle: Bounds): Bounds[] {
  if (!meet(area, obstacle)) return [area];
  return [
    { ...area, maxX: obstacle.minX },
    { ...area, minX: obstacle.maxX },
    { ...area, maxY: obstacle.minY },
    { ...area, minY: obstacle.maxY },
  ].filter((rest) => widthOf(rest) > 0 && heightOf(rest) > 0);
}
