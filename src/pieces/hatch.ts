/** Hatching of a face that is cut through: narrow parallel lines inside a closed curve. */
import type { Curve } from '../geometry/curve.js';
import { line } from '../geometry/curve.js';
import { crossLine } from '../geometry/intersect.js';
import { boundsOf } from '../geometry/measure.js';

/** Shorter strokes than this only look like dirt, mm. */
const shortest = 0.4;

/** Lines at an angle (radians), `spacing` mm apart, the same for all curves that are hatched alike. */
export function hatch(curve: Curve, angle: number, spacing: number): Curve[] {
  const bounds = boundsOf(curve);
  if (!bounds) return [];
  const along = { x: Math.cos(angle), y: Math.sin(angle) };
  const square = { x: -along.y, y: along.x };
  const reaches = [bounds.minX, bounds.maxX].flatMap((x) =>
    [bounds.minY, bounds.maxY].map((y) => x * square.x + y * square.y),
  );
  const first = Math.floor(Math.min(...reaches) / spacing);
  const last = Math.ceil(Math.max(...reaches) / spacing);
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i + 0.37) * spacing).flatMap(
    (reach) => {
      const a = { x: reach * square.x, y: reach * square.y };
      const points = crossLine(curve, a, { x: a.x + along.x, y: a.y + along.y });
      // an odd number of crossings: the line touches a corner, and is left out
      if (points.length % 2 === 1) return [];
      return points
        .flatMap((from, k) => (k % 2 === 0 ? [[from, points[k + 1]!] as const] : []))
        .filter(([from, to]) => Math.hypot(to.x - from.x, to.y - from.y) > shortest)
        .map(([from, to]) => line(from, to));
    },
  );
}
