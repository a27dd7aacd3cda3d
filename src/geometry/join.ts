/** Puts runs of vertices together to one curve. */
import type { Curve, Vertex } from './curve.js';
import { coincident } from './tolerance.js';
import { distance } from './vector.js';

/**
 * One open curve from consecutive runs. Where a run starts at the end of the one before, that point is kept
 * once; where it doesn't, a straight line joins them.
 */
export function joinCurves(runs: readonly (readonly Vertex[])[]): Curve {
  return { closed: false, vertices: joined(runs) };
}

/** As `joinCurves`, and the last run back to the first. */
export function closedFrom(runs: readonly (readonly Vertex[])[]): Curve {
  const vertices = joined(runs);
  const [first, last] = [vertices[0], vertices.at(-1)];
  if (vertices.length > 1 && first && last && distance(first, last) < coincident) vertices.pop();
  return { closed: true, vertices };
}

function joined(runs: readonly (readonly Vertex[])[]): Vertex[] {
  const vertices: Vertex[] = [];
  for (const vertex of runs.flat()) {
    const last = vertices.at(-1);
    if (last && distance(last, vertex) < coincident) vertices.pop();
    vertices.push(vertex);
  }
  return vertices;
}
