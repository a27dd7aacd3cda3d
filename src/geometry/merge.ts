/** Draws neighbouring segments of one and the same circle, or of one straight line, as one. */
import type { Vertex } from './curve.js';
import { leftDistance, segmentOf } from './segment.js';
import { sameArc, straightBulge } from './tolerance.js';
import { distance, dot } from './vector.js';

/**
 * An open run with segments merged where that moves nothing by more than `sameArc`; no merged arc turns by
 * more than half a circle.
 */
export function mergeArcs(run: readonly Vertex[]): Vertex[] {
  const merged: Vertex[] = [];
  for (const vertex of run) {
    const [before, middle] = merged.slice(-2);
    const single = before && middle ? mergedStart(before, middle, vertex) : null;
    if (single) merged.splice(-2, 2, single);
    merged.push(vertex);
  }
  return merged;
}

/** The start of the one segment that replaces two, or null when they are not of one circle. */
function mergedStart(start: Vertex, middle: Vertex, end: Vertex): Vertex | null {
  if (distance(start, end) === 0 || distance(start, middle) === 0 || distance(middle, end) === 0) {
    return null;
  }
  const [first, second] = [segmentOf(start, middle), segmentOf(middle, end)];
  const sweep = first.sweep + second.sweep;
  const turnsBack = dot(first.toTangent, second.fromTangent) < 0;
  if (turnsBack || Math.abs(sweep) > Math.PI + 1e-9) return null;
  const bulge = Math.tan(sweep / 4);
  const single = { x: start.x, y: start.y, bulge: Math.abs(bulge) < straightBulge ? 0 : bulge };
  const whole = segmentOf(single, end);
  const off = (curvature: number, length: number) =>
    (Math.abs(curvature - whole.curvature) * length * length) / 8;
  const same =
    off(first.curvature, first.length) < sameArc &&
    off(second.curvature, second.length) < sameArc &&
    Math.abs(leftDistance(start, whole.fromTangent, whole.curvature, middle)) < sameArc;
  return same ? single : null;
}
