/** Test helper: points along curves, by the textbook centre-and-angle formulas and not by the code under test. */
import type { Curve, Point } from '../../src/geometry/curve.js';

/** Points along a curve, `perSegment` to each segment, from the centre and radius that its bulge gives. */
export function pointsAlong(curve: Curve, perSegment: number): Point[] {
  const { vertices, closed } = curve;
  const count = closed ? vertices.length : vertices.length - 1;
  return Array.from({ length: count }, (_, i) => i).flatMap((i) => {
    const a = vertices[i]!;
    const b = vertices[(i + 1) % vertices.length]!;
    return Array.from({ length: perSegment }, (_, k) => between(a, b, a.bulge, k / perSegment));
  });
}

function between(a: Point, b: Point, bulge: number, fraction: number): Point {
  if (bulge === 0) return { x: a.x + (b.x - a.x) * fraction, y: a.y + (b.y - a.y) * fraction };
  const sweep = 4 * Math.atan(bulge);
  const chord = Math.hypot(b.x - a.x, b.y - a.y);
  const radius = chord / 2 / Math.sin(sweep / 2);
  const towards = Math.atan2(b.y - a.y, b.x - a.x) - sweep / 2 + Math.PI / 2;
  const centre = { x: a.x + radius * Math.cos(towards), y: a.y + radius * Math.sin(towards) };
  const start = Math.atan2(a.y - centre.y, a.x - centre.x);
  const angle = start + sweep * fraction;
  const r = Math.abs(radius);
  return { x: centre.x + r * Math.cos(angle), y: centre.y + r * Math.sin(angle) };
}

/**
 * The largest of the distances from each point of one list to a polyline through another. Both follow the
 * same line in the same direction, so each point is looked for near the place of the one before.
 */
export function farthest(points: readonly Point[], polyline: readonly Point[]): number {
  const reach = Math.ceil(polyline.length / 10);
  let [most, place] = [0, 0];
  for (const p of points) {
    let least = Infinity;
    const [low, high] = [Math.max(0, place - 3), Math.min(polyline.length - 2, place + reach)];
    for (let i = low; i <= high; i++) {
      const off = toSegment(p, polyline[i]!, polyline[i + 1]!);
      if (off < least) [least, place] = [off, i];
    }
    most = Math.max(most, least);
  }
  return most;
}

function toSegment(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / square;
  const clamped = Math.min(1, Math.max(0, t));
  return Math.hypot(p.x - a.x - clamped * dx, p.y - a.y - clamped * dy);
}
