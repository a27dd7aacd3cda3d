/**
 * What small errors of the bench do to a vessel: to its joints, girth, head fit and capacity. Every case is worked out on the
 * ring at the widest place, where the staves' joints meet, then carried to capacity and heads by solving the vessel anew.
 */
import { root } from '../geometry/quadrature.js';
import type { HeadSpec, Spec } from '../spec/spec.js';
import { widestHeight } from '../vessel/profile.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import { asItCloses, shapeCrozeRadius, shapeLitres, shapeOf } from './shape.js';

export type Slip =
  | 'bevels-steep'
  | 'bevels-flat'
  | 'staves-wide'
  | 'one-stave-wide'
  | 'groove-inset'
  | 'groove-depth';

/** All changes from the vessel as drawn; mm and litres. */
export interface Sensitivity {
  readonly slip: Slip;
  /** how large the slip is: degrees for bevels, mm for the rest */
  readonly amount: number;
  /** widest opening of a joint, square to it */
  readonly jointGap: number;
  /** the face at which it opens; null where no joint opens */
  readonly opensAt: 'inside' | 'outside' | null;
  /** outside, at the widest place */
  readonly diameter: number;
  readonly girth: number;
  /** of a head made as drawn in the groove as it then is, in diameter: positive is loose */
  readonly headClearance: number;
  readonly litres: number;
}

export const slipSizes = {
  bevelDegrees: 0.1,
  everyWidth: 0.2,
  oneWidth: 1,
  groove: 1,
} as const;

export function sensitivityOf(vessel: Vessel): Sensitivity[] {
  const { bevelDegrees, everyWidth, oneWidth, groove } = slipSizes;
  const radians = (bevelDegrees * Math.PI) / 180;
  const before = answersOf(asItCloses(vessel.spec, vessel.ring), vessel);
  const row = (slip: Slip, amount: number, ring: RingSlip, spec: Spec): Sensitivity => {
    const after = answersOf(spec, vessel);
    return {
      slip,
      amount,
      ...ring,
      girth: ring.diameter * girthPerDiameter(vessel),
      headClearance: 2 * (after.crozeRadius - before.crozeRadius),
      litres: after.litres - before.litres,
    };
  };
  const onRing = (slip: Slip, amount: number, ring: RingSlip): Sensitivity =>
    row(slip, amount, ring, wider(vessel, ring.diameter));
  const { spec } = vessel;
  return [
    onRing('bevels-steep', bevelDegrees, bevelSlip(vessel, radians)),
    onRing('bevels-flat', bevelDegrees, bevelSlip(vessel, -radians)),
    onRing(
      'staves-wide',
      everyWidth,
      widthSlip(vessel, () => everyWidth),
    ),
    onRing(
      'one-stave-wide',
      oneWidth,
      widthSlip(vessel, (i) => (i === 0 ? oneWidth : 0)),
    ),
    row('groove-inset', groove, noSlip, withCroze(spec, vessel, { inset: groove, depth: 0 })),
    row('groove-depth', groove, noSlip, withCroze(spec, vessel, { inset: 0, depth: groove })),
  ];
}

type RingSlip = Pick<Sensitivity, 'jointGap' | 'opensAt' | 'diameter'>;
const noSlip: RingSlip = { jointGap: 0, opensAt: null, diameter: 0 };

function girthPerDiameter({ spec, ring }: Vessel): number {
  return spec.staves.outside === 'flat' ? ring.sumOfTangents : Math.PI;
}

interface Answers {
  readonly litres: number;
  readonly crozeRadius: number;
}

/** The ring's half-angles stay: what a slip changes of them is a thousandth of a degree. */
function answersOf(spec: Spec, { ring }: Vessel): Answers {
  const shape = shapeOf(spec, ring);
  return { litres: shapeLitres(shape), crozeRadius: shapeCrozeRadius(shape, 'bottom') };
}

/** An error that is the same all along the staves moves the wall outwards by the same amount all the way up. */
function wider({ spec, ring }: Vessel, by: number): Spec {
  const own = asItCloses(spec, ring);
  const { outside } = own;
  return {
    ...own,
    outside:
      outside.kind === 'cask'
        ? { ...outside, bilge: outside.bilge + by, ends: outside.ends + by }
        : { ...outside, top: outside.top + by, bottom: outside.bottom + by },
  };
}

function withCroze(
  spec: Spec,
  { ring }: Vessel,
  more: { readonly inset: number; readonly depth: number },
): Spec {
  const change = (head: HeadSpec): HeadSpec => ({
    ...head,
    croze: {
      ...head.croze,
      inset: head.croze.inset + more.inset,
      depth: head.croze.depth + more.depth,
    },
  });
  const { top, bottom } = spec.heads;
  return {
    ...asItCloses(spec, ring),
    heads: { top: top && change(top), bottom: change(bottom) },
  };
}

interface Edge {
  /** half the width across the outer face, and the tangent of the bevel as made */
  readonly half: number;
  readonly slope: number;
  readonly thickness: number;
}

function edgesOf({ spec, staves }: Vessel): Edge[] {
  const z = widestHeight(spec);
  return staves.map((stave: Stave) => ({
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
function bevelSlip(vessel: Vessel, error: number): RingSlip {
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
function widthSlip(vessel: Vessel, more: (index: number) => number): RingSlip {
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
