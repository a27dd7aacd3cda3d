/**
 * Bending: which place on the flat blank becomes which section of the standing stave. A section square to the outer face
 * stays plane and turns with it; the fibre `nu t` below the outer face keeps its length.
 */
import { newton, runningIntegral } from '../geometry/quadrature.js';
import type { Spec } from '../spec/spec.js';
import type { Profile } from './profile.js';
import type { Wall } from './wall.js';

export interface Bend {
  /** station on the flat blank of the section whose outer face is at `z`, mm from the one at mid-height */
  station(z: number): number;
  /** the `z` whose section lies at a station; NaN beyond the profile's reach */
  sectionAtStation(station: number): number;
  /** strain of the outer face where it is greatest, as a fraction; positive is stretch */
  readonly outerStretch: number;
}

/**
 * `s = integral of (1 - nu t kappa)` along the outer profile: the outer face is longer than the unstretched line by
 * `nu t dphi`, and `dphi = kappa dsigma`. Its strain is then `nu t kappa / (1 - nu t kappa)`.
 */
export function bendOf(spec: Spec, profile: Profile, wall: Wall): Bend {
  const offset = (z: number): number => spec.staves.neutral * wall.thickness(z);
  const share = (z: number): number => offset(z) * profile.curvature(z);
  const rate = (z: number): number => (1 - share(z)) * Math.sqrt(1 + profile.slope(z) ** 2);
  const plane = spec.height / 2;
  const station = runningIntegral(rate, Math.min(profile.reach, 1.25 * plane));
  const mean = station(plane) / plane;
  return {
    station,
    sectionAtStation: (s) => newton((z) => station(z) - s, rate, s / mean),
    outerStretch: greatestStretch(spec.height, share),
  };
}

function greatestStretch(height: number, share: (z: number) => number): number {
  const samples = 16;
  let greatest = 0;
  for (let i = 0; i <= samples; i++) {
    const part = share((i / samples) * (height / 2));
    greatest = Math.max(greatest, part / (1 - part));
  }
  return greatest;
}
