/**
 * How round a stave is across, in a section square to it: what backing and hollowing templates are cut to. Such a section
 * of a surface of revolution has the surface's normal curvature across, whose radius is `r / cos(phi)` (Meusnier): flatter
 * than the circle where the wall leans.
 */
import { lean } from './profile.js';
import type { Vessel } from './vessel.js';

/** Radius across the backed outer face in the section at `z`, mm. The joints point at its centre. */
export function backingRadius({ profile }: Pick<Vessel, 'profile'>, z: number): number {
  return profile.radius(z) / Math.cos(lean(profile, z));
}

/** Radius across the hollowed inner face in the same section: the finished thickness less, mm. */
export function hollowingRadius(vessel: Pick<Vessel, 'profile' | 'wall'>, z: number): number {
  return backingRadius(vessel, z) - vessel.wall.thickness(z);
}

/**
 * Radius of the circle through the corners of the outer faces in the section at `z`, mm: the backed face itself, or
 * for a flat face of the mean width `1 / cos(bevel)` more. A gauge of this radius rests on both corners.
 */
export function jointGaugeRadius(
  vessel: Pick<Vessel, 'profile' | 'spec' | 'meanStave'>,
  z: number,
): number {
  const radius = backingRadius(vessel, z);
  const { spec, meanStave } = vessel;
  return spec.staves.outside === 'flat' ? radius / Math.cos(meanStave.bevel(z)) : radius;
}
