/** The wall in its own section: thickness, fibres at a depth, and the inside profile. */
import { newton } from '../geometry/quadrature.js';
import type { Spec } from '../spec/spec.js';
import type { Profile } from './profile.js';

/** A depth below the outer face, square to it, that may vary along the stave (mm, by the `z` of the outer face). */
export type Depth = (z: number) => number;

export interface Wall {
  /** finished thickness at the section whose outer face is at `z` */
  readonly thickness: Depth;
  /** where the fibre at a depth lies in the section at `z`: its radius and its height */
  fibre(z: number, depth: number): { radius: number; height: number };
  /** the section (by the `z` of its outer face) in which the fibre at that depth lies at this height; NaN beyond the profile's reach */
  sectionAt(height: number, depth: Depth): number;
  /** radius of the inside profile at a height: to the middle of a stave's finished inner face */
  insideRadius(height: number): number;
}

/** `t(z) = t + (t_e - t)(2z/H)^2`. */
function thicknessOf(spec: Spec): Depth {
  const { thickness, endThickness } = spec.staves;
  if (thickness === endThickness) return () => thickness;
  const factor = (endThickness - thickness) / (spec.height / 2) ** 2;
  return (z) => thickness + factor * z * z;
}

/** The wall of a spec on its outside profile. */
export function wallOf(spec: Spec, profile: Profile): Wall {
  const thickness = thicknessOf(spec);
  const fibre = (z: number, depth: number): { radius: number; height: number } => {
    const slope = profile.slope(z);
    const inwards = depth / Math.sqrt(1 + slope * slope);
    // depth cos(phi) inwards and depth sin(phi) down, with phi = -atan(slope)
    return { radius: profile.radius(z) - inwards, height: z + slope * inwards };
  };
  const sectionAt = (height: number, depth: Depth): number =>
    newton(
      (z) => fibre(z, depth(z)).height - height,
      (z) => fibreRate(profile, depth, z),
      height,
    );
  const insideRadius = (height: number): number => {
    const z = sectionAt(height, thickness);
    return fibre(z, thickness(z)).radius;
  };
  return { thickness, fibre, sectionAt, insideRadius };
}

/** Half a step of the difference quotient below: the thickness is quadratic in `z`, for which it is exact (mm). */
const half = 0.5;

/** How fast a fibre's height `z - depth sin(phi)` grows with its section: `d(sin phi)/dz` is the curvature. */
function fibreRate(profile: Profile, depth: Depth, z: number): number {
  const slope = profile.slope(z);
  const sinPhi = -slope / Math.sqrt(1 + slope * slope);
  const deeper = depth(z + half) - depth(z - half);
  return 1 - depth(z) * profile.curvature(z) - deeper * sinPhi;
}
