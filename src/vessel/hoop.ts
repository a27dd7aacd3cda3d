/** Hoops: girths under both edges, slope, and the length to cut. Lengths in mm, angles in radians. */
import { root } from '../geometry/quadrature.js';
import type { End, HoopSpec, Spec } from '../spec/spec.js';
import { widestHeight, type Profile } from './profile.js';
import type { Ring } from './ring.js';

/**
 * By how much of its girth a hoop on a slope is made too small, so that driving it home tightens it
 * (common practice, no source).
 */
export const drivingShare = 0.002;

/** No hoop is meant to be driven further than this past the place where it first binds (mm; common practice, no source). */
export const drivingTravel = 10;

export interface Hoop {
  readonly spec: HoopSpec;
  readonly end: End;
  /** heights of the edge towards the end plane and of the other edge */
  readonly nearHeight: number;
  readonly farHeight: number;
  readonly nearRadius: number;
  readonly farRadius: number;
  /** girths of the vessel under the edges: of the polygon on a flat outside */
  readonly nearGirth: number;
  readonly farGirth: number;
  /** lean of the strap from the axis; positive when it widens away from the end */
  readonly slope: number;
  /** how much longer one edge is than the other */
  readonly splay: number;
  readonly driving: number;
  readonly cutLength: number;
}

/** Every hoop of the spec, `both` as two, from the top downwards. */
export function hoopsOf(spec: Spec, profile: Profile, ring: Ring): Hoop[] {
  const ends = (hoop: HoopSpec): End[] => (hoop.end === 'both' ? ['top', 'bottom'] : [hoop.end]);
  return spec.hoops
    .flatMap((hoop) => ends(hoop).map((end) => hoopOf(hoop, end, spec, profile, ring)))
    .sort((a, b) => Math.max(b.nearHeight, b.farHeight) - Math.max(a.nearHeight, a.farHeight));
}

function hoopOf(hoop: HoopSpec, end: End, spec: Spec, profile: Profile, ring: Ring): Hoop {
  const towardsEnd = end === 'top' ? 1 : -1;
  const nearHeight = towardsEnd * (spec.height / 2 - hoop.offset);
  const place = farEdge(hoop.width, nearHeight, towardsEnd, spec, profile);
  const slope = Math.asin((place.farRadius - place.nearRadius) / hoop.width);
  const girth = (radius: number): number => outsideGirth(radius, spec, ring);
  const shortGirth = girth(Math.min(place.nearRadius, place.farRadius));
  const [nearGirth, farGirth] = [girth(place.nearRadius), girth(place.farRadius)];
  const splay = Math.abs(farGirth - nearGirth);
  // on a gentle slope the girth grows too slowly for the full share
  const driving = Math.min(drivingShare * shortGirth, (splay * drivingTravel) / hoop.width);
  return {
    spec: hoop,
    end,
    nearHeight,
    ...place,
    nearGirth,
    farGirth,
    slope,
    splay,
    driving,
    cutLength: shortGirth + Math.PI * hoop.thickness * Math.cos(slope) + hoop.lap - driving,
  };
}

/** Round the outside where its radius is `radius`: of the circle, or of the staves' polygon on a flat outside. */
export function outsideGirth(radius: number, spec: Spec, ring: Ring): number {
  return 2 * radius * (spec.staves.outside === 'flat' ? ring.sumOfTangents : Math.PI);
}

/** Length of the shorter edge once the hoop is home, at the middle of the strap's thickness, without the lap. */
export function shortEdge({ nearGirth, farGirth, slope, spec }: Hoop): number {
  return Math.min(nearGirth, farGirth) + Math.PI * spec.thickness * Math.cos(slope);
}

/** By how much each 100 mm of the strap grow along the edge that is hammered. */
export function splayPer100(hoop: Hoop): number {
  return (100 * hoop.splay) / shortEdge(hoop);
}

/** Where the far edge lies: a chord of the strap's width along the profile, or straight down across the greatest girth. */
function farEdge(
  width: number,
  nearHeight: number,
  towardsEnd: number,
  spec: Spec,
  profile: Profile,
): Pick<Hoop, 'nearRadius' | 'farRadius' | 'farHeight'> {
  const nearRadius = profile.radius(nearHeight);
  const widest = widestHeight(spec);
  const straightDown = nearHeight - towardsEnd * width;
  const straddles = (nearHeight - widest) * (straightDown - widest) < 0;
  if (straddles) {
    const radius = profile.radius(widest);
    return { nearRadius: radius, farRadius: radius, farHeight: straightDown };
  }
  const chord = (height: number): number =>
    Math.hypot(height - nearHeight, profile.radius(height) - nearRadius) - width;
  // a hair past straight down, so that rounding cannot hide the root on a cylinder
  const farHeight = root(chord, nearHeight, straightDown - towardsEnd * 1e-6 * width);
  return { nearRadius, farRadius: profile.radius(farHeight), farHeight };
}
