/** The closed curves of a stave: its outer face and the inner face of its blank. */
import type { Curve, Vertex } from '../geometry/curve.js';
import { fitArcs } from '../geometry/fit.js';
import { closedFrom } from '../geometry/join.js';
import { mirrorY, reversedRun } from '../geometry/transform.js';
import { staveEdge } from '../vessel/stave-edge.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';

/** The blank's flat outer face, at depth 0. */
export function outerFace(vessel: Vessel, stave: Stave): Curve {
  return closed(upperEdge(vessel, stave, 'outer'));
}

/** The inner face, at the full depth of the blank. */
export function innerFace(vessel: Vessel, stave: Stave): Curve {
  return closed(upperEdge(vessel, stave, 'inner'));
}

/** One long edge of a face, from the bottom end to the top end, on the side of positive `y`. */
export function upperEdge(vessel: Vessel, stave: Stave, face: 'outer' | 'inner'): Vertex[] {
  const depth = face === 'outer' ? () => 0 : stave.blankThicknessAt;
  const at = (station: number): number => vessel.bend.sectionAtStation(station);
  const { top, bottom } = stave.blankEnds;
  return fitArcs(staveEdge(vessel, stave, depth), at(bottom[face]), at(top[face]));
}

/** Closes an upper edge with its mirror image; the ends are cut square. Counter-clockwise. */
export function closed(edge: readonly Vertex[]): Curve {
  return closedFrom([mirrored(edge), reversedRun(edge)]);
}

/** The same edge on the other side of the centre line. */
export function mirrored(edge: readonly Vertex[]): readonly Vertex[] {
  return mirrorY({ closed: false, vertices: edge }).vertices;
}
