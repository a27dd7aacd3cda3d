/** Measuring between two points of a drawing. */
import type { Drawing, Point } from '../../index.js';

export interface Measured {
  readonly from: Point;
  readonly to: Point;
  readonly distance: number;
  readonly dx: number;
  readonly dy: number;
}

export function measured(from: Point, to: Point): Measured {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return { from, to, dx, dy, distance: Math.hypot(dx, dy) };
}

/** The corner of a line nearest to a point, if one lies within `reach` mm; else the point itself. */
export function snapped({ strokes }: Drawing, point: Point, reach: number): Point {
  let [best, least] = [point, reach];
  for (const { curve } of strokes)
    for (const vertex of curve.vertices) {
      const distance = Math.hypot(vertex.x - point.x, vertex.y - point.y);
      if (distance < least) [best, least] = [{ x: vertex.x, y: vertex.y }, distance];
    }
  return best;
}
