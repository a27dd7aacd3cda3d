/**
 * A vessel's shape before its parts are made or checked: enough to ask what it would hold while dimensions are still being
 * looked for. Its outside diameters are those of the ring as it closes.
 */
import { bendOf } from '../vessel/bend.js';
import { insideAt } from '../vessel/inside.js';
import { greatestDiameter, profileOf, type Profile } from '../vessel/profile.js';
import { ringOf, type Ring } from '../vessel/ring.js';
import { wallOf, type Wall } from '../vessel/wall.js';
import type { End, HeadSpec, Spec } from '../spec/spec.js';
import { cubicMillimetresPerLitre, volumeBetween } from './volume.js';

export interface Shape {
  readonly spec: Spec;
  readonly ring: Ring;
  readonly profile: Profile;
  readonly wall: Wall;
}

/** The shape with the outside diameters of the spec as they are, whatever its staves add up to. */
export function shapeOf(spec: Spec, ring: Ring = ringOf(spec)): Shape {
  const profile = profileOf(spec, 1);
  return { spec, ring, profile, wall: wallOf(spec, profile) };
}

/** The same vessel with the diameters at which a mixed set really closes; a spec of equal staves as it is. */
export function asItCloses(spec: Spec, ring: Ring = ringOf(spec)): Spec {
  const scale = ring.closesAt / greatestDiameter(spec);
  return spec.staves.widths ? { ...spec, outside: scaledOutside(spec.outside, scale) } : spec;
}

function scaledOutside(outside: Spec['outside'], scale: number): Spec['outside'] {
  return outside.kind === 'cask'
    ? { ...outside, bilge: outside.bilge * scale, ends: outside.ends * scale }
    : { ...outside, top: outside.top * scale, bottom: outside.bottom * scale };
}

/** NaN where walls or heads meet, or the profile has no such cask. */
export function shapeLitres(shape: Shape): number {
  const { spec, wall } = shape;
  const { top, bottom } = spec.heads;
  const to = top ? spec.height / 2 - faceFromEnd(top) : spec.height / 2;
  const from = faceFromEnd(bottom) - spec.height / 2;
  const narrowest = Math.min(wall.insideRadius(from), wall.insideRadius(to));
  if (!(to > from && narrowest > 0 && bulges(spec))) return NaN;
  return volumeBetween(shape, from, to) / cubicMillimetresPerLitre;
}

/** From the end plane to the head's inside face. */
const faceFromEnd = ({ croze, edge }: HeadSpec): number => croze.inset + edge.fromInside;

/** A cask without any rise is no cask; the spec's own rule asks for as much (mm of diameter). */
const leastRise = 0.002;

function bulges({ outside }: Spec): boolean {
  return outside.kind === 'tub' || outside.bilge - outside.ends > leastRise;
}

/** Radius of the groove's bottom, which the compass is set to; NaN at an end without a head. */
export function shapeCrozeRadius(shape: Shape, end: End): number {
  const { spec, ring, profile, wall } = shape;
  const head = spec.heads[end];
  if (!head) return NaN;
  const sign = end === 'top' ? 1 : -1;
  const middle = sign * (spec.height / 2 - head.croze.inset);
  const inside = insideAt(end, spec, ring, profile, wall);
  return inside.roundRadius(middle) + spec.howel.depth + head.croze.depth;
}

/** Length of a stave's outer face between its end cuts, along the flat blank, trim left out. */
export function shapeStaveLength({ spec, profile, wall }: Shape): number {
  const { station } = bendOf(spec, profile, wall);
  return station(spec.height / 2) - station(-spec.height / 2);
}
