/** Arcs as chains of straight segments, where only straight ones can be handled. */
import type { Curve, Point } from '../geometry/curve.js';
import { placeOn, segmentsOf } from '../geometry/segment.js';

/** Points along the curve, in order, whose chords stray from it by at most `tolerance` mm. A closed curve ends where it began. */
export function flatten(curve: Curve, tolerance: number): Point[] {
  const segments = segmentsOf(curve);
  const points: Point[] = segments.slice(0, 1).map((segment) => segment.from);
  for (const segment of segments) {
    // a chord over an angle a strays by r (1 - cos(a / 2)), which is less than r a^2 / 8
    const step = Math.sqrt(8 * tolerance * Math.abs(segment.curvature));
    const parts = Math.max(1, Math.ceil(Math.abs(segment.sweep) / (step || 1)));
    for (let i = 1; i < parts; i++)
      points.push(placeOn(segment, (segment.length * i) / parts).point);
    points.push(segment.to);
  }
  return points;
}
