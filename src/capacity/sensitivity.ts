/**
 * What small errors of the bench do to a vessel: to its joints, girth, head fit and capacity. Every case is worked out on the
 * ring at the widest place, where the staves' joints meet, then carried to capacity and heads by solving the vessel anew.
 */
import type { HeadSpec, Spec } from '../spec/spec.js';
import type { Vessel } from '../vessel/vessel.js';
import { bevelSlip, noSlip, widthSlip, type RingSlip } from './sensitivity-ring.js';
import { asItCloses, shapeCrozeRadius, shapeLitres, shapeOf } from './shape.js';

export type Slip =
  | 'bevels-steep'
  | 'bevels-flat'
  | 'staves-wide'
  | 'one-stave-wide'
  | 'groove-inset'
  | 'groove-depth';

/** All changes from the vessel as drawn; mm and litres. */
export interface Sensitivity extends RingSlip {
  readonly slip: Slip;
  /** how large the slip is: degrees for bevels, mm for the rest */
  readonly amount: number;
  /** outside, at the widest place */
  readonly girth: number;
  /** of a head made as drawn in the groove as it then is, in diameter: positive is loose */
  readonly headClearance: number;
  readonly litres: number;
}

const slipSizes = {
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
