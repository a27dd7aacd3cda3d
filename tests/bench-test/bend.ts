/** Bends a flat blank by numbers: where a section of the blank stands once the stave is bent. */
import type { BenchSpec } from './bench-spec.js';
import { outsideProfile } from './profile.js';
import { gauss } from './quadrature.js';

/** A section square to the outer face, after bending. */
export interface Section {
  /** height and radius of the middle of its outer face, mm */
  z: number;
  r: number;
  /** lean: positive where the vessel narrows upwards, radians */
  phi: number;
  cos: number;
  sin: number;
  /** finished thickness, mm */
  t: number;
  /** curvature of the outside profile, positive for a bulge, 1/mm */
  kappa: number;
}

export interface Bend {
  sectionAt(z: number): Section;
  stationOf(z: number): number;
  heightOf(station: number): number;
}

const known = new WeakMap<BenchSpec, Bend>();

/** The same wall bends every stave of a spec: worked out once. */
export function bendOf(spec: BenchSpec): Bend {
  const bend = known.get(spec) ?? newBend(spec);
  known.set(spec, bend);
  return bend;
}

function newBend(spec: BenchSpec): Bend {
  const profile = outsideProfile(spec);
  const { thickness, endThickness, neutral } = spec.staves;
  const thicknessAt = (z: number): number =>
    thickness + (endThickness - thickness) * ((2 * z) / spec.height) ** 2;
  const sectionAt = (z: number): Section => {
    const { r, slope, second } = profile.at(z);
    const phi = Math.atan(-slope);
    const t = thicknessAt(z);
    const kappa = -second / (1 + slope * slope) ** 1.5;
    return { z, r, phi, cos: Math.cos(phi), sin: Math.sin(phi), t, kappa };
  };
  // along the outer face dl = stretch dz; the unstretched line lies neutral * t deeper, and kappa = -second / stretch^3
  const rate = (z: number): number => {
    const { slope, second } = profile.at(z);
    const stretchSquared = 1 + slope * slope;
    return Math.sqrt(stretchSquared) + (neutral * thicknessAt(z) * second) / stretchSquared;
  };
  const stationOf = cumulative(rate, spec.height / 64);
  const heightOf = (station: number): number => {
    let z = station;
    for (let i = 0; i < 60; i++) {
      z = Math.max(-0.99 * profile.reach, Math.min(0.99 * profile.reach, z));
      const step = (stationOf(z) - station) / rate(z);
      z -= step;
      if (Math.abs(step) < 1e-11 * spec.height) return z;
    }
    return NaN;
  };
  return { sectionAt, stationOf, heightOf };
}

/** Integral of `rate` from 0, whole panels remembered. */
function cumulative(rate: (z: number) => number, panel: number): (z: number) => number {
  const sums = new Map<number, number>([[0, 0]]);
  const upTo = (index: number): number => {
    const known = sums.get(index);
    if (known !== undefined) return known;
    const nearer = index - Math.sign(index);
    const sum = upTo(nearer) + gauss(rate, nearer * panel, index * panel);
    sums.set(index, sum);
    return sum;
  };
  return (z) => {
    const index = Math.trunc(z / panel);
    return upTo(index) + gauss(rate, index * panel, z);
  };
}
