/** The round of a head and the lines parallel to it: circles, or ellipses where the head is larger across the boards. */
import type { Curve, Vertex } from '../geometry/curve.js';
import { ellipse } from '../geometry/ellipse.js';
import { fitArcs } from '../geometry/fit.js';
import type { SmoothCurve } from '../geometry/path.js';
import { halfChord, type Rim } from '../vessel/boards.js';

/** The round a distance inside the rim, as one closed curve about the origin, counter-clockwise. */
export function roundInside(rim: Rim, by: number): Curve {
  const own = inset(rim, by);
  return ellipse({ x: 0, y: 0 }, own.along, own.across);
}

/** The part of that round on the right (`side` 1) or left of the middle, from one height to another, upwards. */
export function sideInside(rim: Rim, by: number, side: 1 | -1, from: number, to: number): Vertex[] {
  const own = inset(rim, by);
  const angle = (y: number): number => Math.asin(Math.max(-1, Math.min(1, y / own.across)));
  const curve = round(own);
  if (side > 0) return fitArcs(curve, angle(from), angle(to));
  return fitArcs(curve, Math.PI - angle(from), Math.PI - angle(to));
}

/** Heights between which a strip meets the round a distance inside the rim; null where it does not. */
export function overlap(
  rim: Rim,
  by: number,
  from: number,
  to: number,
): { from: number; to: number } | null {
  const reach = rim.across - by;
  const [low, high] = [Math.max(from, -reach), Math.min(to, reach)];
  return low < high ? { from: low, to: high } : null;
}

export function halfChordInside(rim: Rim, by: number, y: number): number {
  return halfChord(inset(rim, by), y);
}

const inset = (rim: Rim, by: number): Rim => ({ along: rim.along - by, across: rim.across - by });

function round({ along, across }: Rim): SmoothCurve {
  return {
    at: (u) => ({ x: along * Math.cos(u), y: across * Math.sin(u) }),
    tangent: (u) => ({ x: -along * Math.sin(u), y: across * Math.cos(u) }),
  };
}
