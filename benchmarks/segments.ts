/** How many segments a curve takes as arcs, and how many a polyline of the same accuracy would. */
import type { Curve } from '../src/index.js';

/** mm; the arcs of drawings stray no further from the exact curve */
const tolerance = 0.005;

export function segmentCounts(curve: Curve): { arcs: number; chords: number } {
  const { vertices, closed } = curve;
  const counts = vertices.flatMap((from, i) => {
    const last = i === vertices.length - 1;
    const to = vertices[(i + 1) % vertices.length]!;
    return last && !closed ? [] : [chordsOf(Math.hypot(to.x - from.x, to.y - from.y), from.bulge)];
  });
  return { arcs: counts.length, chords: counts.reduce((sum, count) => sum + count, 0) };
}

/** A chord lies r (1 - cos(angle / 2)) off its arc. */
function chordsOf(chord: number, bulge: number): number {
  if (bulge === 0) return 1;
  const sweep = 4 * Math.atan(Math.abs(bulge));
  const radius = chord / (2 * Math.sin(sweep / 2));
  const widest = 2 * Math.acos(Math.max(-1, 1 - tolerance / radius));
  return Math.max(1, Math.ceil(sweep / widest));
}
