/**
 * The outside profile: the line down the middle of a stave's outer face, `r = radius(z)`, `z = 0` at mid-height.
 * Each profile answers the same four questions; nothing else asks which profile it is.
 */
import type { CaskProfile, Spec } from '../spec/spec.js';

export interface Profile {
  /** distance from the axis, mm */
  radius(z: number): number;
  /** dr/dz */
  slope(z: number): number;
  /** curvature of the profile, 1/mm, positive for a bulge: `-r'' / (1 + r'^2)^(3/2)` */
  curvature(z: number): number;
  /** the profile is defined for `|z| <= reach` */
  readonly reach: number;
}

/** Lean of the face, radians: positive where the vessel narrows upwards. */
export function lean(profile: Profile, z: number): number {
  return -Math.atan(profile.slope(z));
}

/**
 * A circle through bilge and ends: radius `rho = ((H/2)^2 + b^2) / (2b)`, from the intersecting chords. The depth below
 * the bilge is `rho - sqrt(rho^2 - z^2)`, written so that nothing cancels when the rise is small.
 */
export function arcProfile(bilgeRadius: number, endRadius: number, height: number): Profile {
  const rise = bilgeRadius - endRadius;
  const rho = ((height / 2) ** 2 + rise ** 2) / (2 * rise);
  const rest = (z: number): number => Math.sqrt(rho * rho - z * z);
  return {
    radius: (z) => bilgeRadius - (z * z) / (rho + rest(z)),
    slope: (z) => -z / rest(z),
    curvature: () => 1 / rho,
    reach: rho * 0.999,
  };
}

/** `r = R_b - b (2z/H)^2`. */
export function parabolaProfile(bilgeRadius: number, endRadius: number, height: number): Profile {
  const factor = (bilgeRadius - endRadius) / (height / 2) ** 2;
  return {
    radius: (z) => bilgeRadius - factor * z * z,
    slope: (z) => -2 * factor * z,
    curvature: (z) => (2 * factor) / (1 + (2 * factor * z) ** 2) ** 1.5,
    reach: Math.sqrt(bilgeRadius / factor) * 0.999,
  };
}

/** `r = R_b sqrt(1 - z^2/a^2)`, `a` such that `r(H/2) = R_e`; curvature of an ellipse with half-axes `a` and `R_b`. */
export function ellipseProfile(bilgeRadius: number, endRadius: number, height: number): Profile {
  // 1 - (Re/Rb)^2 as a product, so that a small rise loses no digits
  const share = ((bilgeRadius - endRadius) * (bilgeRadius + endRadius)) / bilgeRadius ** 2;
  const a = height / 2 / Math.sqrt(share);
  const radius = (z: number): number => bilgeRadius * Math.sqrt(1 - (z / a) ** 2);
  const slope = (z: number): number => (-bilgeRadius * bilgeRadius * z) / (a * a * radius(z));
  return {
    radius,
    slope,
    curvature: (z) => {
      const second = bilgeRadius ** 4 / (a * a * radius(z) ** 3);
      return second / (1 + slope(z) ** 2) ** 1.5;
    },
    reach: a * 0.999,
  };
}

/** A straight wall from the bottom radius to the top radius. */
export function lineProfile(bottomRadius: number, topRadius: number, height: number): Profile {
  const slope = (topRadius - bottomRadius) / height;
  const middle = (topRadius + bottomRadius) / 2;
  return {
    radius: (z) => middle + slope * z,
    slope: () => slope,
    curvature: () => 0,
    reach: slope === 0 ? 1e6 : (middle / Math.abs(slope)) * 0.999,
  };
}

const caskProfiles: Record<CaskProfile, typeof arcProfile> = {
  arc: arcProfile,
  parabola: parabolaProfile,
  ellipse: ellipseProfile,
};

/** The spec's outside profile with all radii scaled by `scale` (1 but for a mixed set, see `ring.ts`). */
export function profileOf(spec: Spec, scale: number): Profile {
  const { outside, height } = spec;
  if (outside.kind === 'tub') {
    return lineProfile((outside.bottom / 2) * scale, (outside.top / 2) * scale, height);
  }
  const make = caskProfiles[outside.profile];
  return make((outside.bilge / 2) * scale, (outside.ends / 2) * scale, height);
}

/** The height at which the vessel is widest: 0 on a cask, the wider end on a tub. */
export function widestHeight(spec: Spec): number {
  const { outside, height } = spec;
  if (outside.kind === 'cask') return 0;
  return outside.top >= outside.bottom ? height / 2 : -height / 2;
}

/** The outside diameter that "at the bilge" means: the bilge of a cask, the wider end of a tub. */
export function greatestDiameter(spec: Spec): number {
  const { outside } = spec;
  return outside.kind === 'cask' ? outside.bilge : Math.max(outside.top, outside.bottom);
}
