/** What bevels and widths that are a little off do to a ring of staves, at its widest place. Lengths in mm, angles in radians. */
import { root } from '../geometry/quadrature.js';
import { widestHeight } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';

export interface RingSlip {
  /** widest opening of a joint, square to it */
  readonly jointGap: number;
  /** the face at which it opens; null where no joint opens */
  readonly opensAt: 'inside' | 'outside' | null;
  /** change of the outside diameter at the widest place */
  readonly diameter: number;
}

export const noSlip: RingSlip = { jointGap: 0, opensAt: null, diameter: 0 };

interface Edge {
  /** half the width across the outer face, and the tangent of the bevel as made */
  readonly half: number;
  readonly slope: number;
  readonly thickness: number;
}

function edgesOf({ spec, staves }: Vessel): Edge[] {
  const z = widestHeight(spec);
  return staves.map((stave) => ({
    half: stave.halfWidth(z, 0),
    slope: Math.tan(stave.bevel(z)),
    thickness: stave.blankThicknessAt(z),
  }));
}

/** Cosine of the wall's lean where the staves meet: depth counts that much towards the axis. */
function cosLean({ spec, profile }: Vessel): number {
  return 1 / Math.hypot(1, profile.slope(widestHeight(spec)));
}

/**
 * Every bevel off by an angle, towards thinner inner edges where it is positive. Those meet at their outer corners as before and
 * open inside. Bevels that are too flat meet at their inner corners, which lie a blank's thickness nearer to the axis: the ring
 * closes where the half-angles that those corners take are pi together.
 */
export function bevelSlip(vessel: Vessel, error: number): RingSlip {
  const edges = edgesOf(vessel).map(({ half, slope, thickness }) => {
    const made = Math.tan(Math.atan(slope) + error);
    return { half, thickness, miss: thickness * (made - slope), inner: half - thickness * made };
  });
  const alphas = vessel.ring.alphas;
  const gaps = alphas.map((alpha, i) => {
    const next = (i + 1) % alphas.length;
    const sum = edges[i]!.miss * Math.cos(alpha) + edges[next]!.miss * Math.cos(alphas[next]!);
    return Math.abs(sum);
  });
  const jointGap = Math.max(...gaps);
  if (error > 0) return { jointGap, opensAt: 'inside', diameter: 0 };
  const cos = cosLean(vessel);
  const radius = vessel.ring.closesAt / 2;
  const excess = (more: number): number =>
    edges.reduce(
      (sum, { inner, thickness }) => sum + Math.atan(inner / (radius + more - thickness * cos)),
      -Math.PI,
    );
  const reach = (2 * vessel.ring.closesAt * Math.abs(error)) / Math.tan(Math.min(...alphas));
  return { jointGap, opensAt: 'outside', diameter: 2 * root(excess, -reach, reach) };
}

/**
 * Staves wider than drawn by `more` mm, with the bevels that they were meant to have. Their outer corners close at a new
 * diameter, at which each takes another half-angle; a bevel that then misses its joint plane opens the joint at the blank's
 * depth.
 */
export function widthSlip(vessel: Vessel, more: (index: number) => number): RingSlip {
  const edges = edgesOf(vessel);
  const radius = vessel.ring.closesAt / 2;
  const added = edges.reduce((sum, _, i) => sum + more(i), 0);
  const angle = ({ half }: Edge, i: number, r: number): number =>
    Math.atan((half + more(i) / 2) / r);
  const excess = (r: number): number =>
    edges.reduce((sum, edge, i) => sum + angle(edge, i, r), -Math.PI);
  const closes = root(excess, radius, radius + added);
  const cos = cosLean(vessel);
  const misses = edges.map((edge, i) => {
    const alpha = angle(edge, i, closes);
    return edge.thickness * (edge.slope - Math.tan(alpha) * cos) * Math.cos(alpha);
  });
  const gaps = misses.map((miss, i) => miss + misses[(i + 1) % misses.length]!);
  const widest = gaps.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
  const opens = Math.abs(widest) < 1e-9 ? null : widest > 0 ? 'inside' : 'outside';
  return { jointGap: Math.abs(widest), opensAt: opens, diameter: 2 * (closes - radius) };
}
