/** Triangles between two closed lines, one within the other, on a plane. */
import type { Point } from '../../../index.js';

type Corners = [number, number, number];

/**
 * Three corners each, anticlockwise, for a frame and a hole that run anticlockwise and have no dents. Each edge of the frame
 * is joined to the corner of the hole that comes nearest to it, which nothing hides; each corner of the frame to the edges of
 * the hole between two such corners.
 */
export function between(
  frame: readonly number[],
  hole: readonly number[],
  at: (corner: number) => Point,
): Corners[] {
  const onFrame = (i: number): number => frame[i % frame.length]!;
  const onHole = (j: number): number => hole[j % hole.length]!;
  const made: Corners[] = [];
  const places = hole.map(at);
  const start = foremost(at(onFrame(0)), at(onFrame(1)), places);
  let apex = start;
  frame.forEach((from, i) => {
    const to = onFrame(i + 1);
    made.push([from, to, onHole(apex)]);
    const isLast = i === frame.length - 1;
    const next = isLast ? start : foremost(at(to), at(onFrame(i + 2)), places);
    const steps = (next - apex + hole.length) % hole.length;
    // edges in one line have one corner before them, and rounding must not send it backwards
    if (steps > hole.length / 2) return;
    for (let k = 0; k < steps; k++, apex++) made.push([to, onHole(apex + 1), onHole(apex)]);
    apex %= hole.length;
  });
  return made;
}

/** Which place is furthest to the right of the line from `p` to `q`. */
function foremost(p: Point, q: Point, places: readonly Point[]): number {
  const reach = places.map(({ x, y }) => (q.y - p.y) * x - (q.x - p.x) * y);
  return reach.indexOf(Math.max(...reach));
}
