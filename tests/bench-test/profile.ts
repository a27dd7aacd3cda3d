/** The outside profile r(z) with its derivatives, written down again from the definitions. */
import { ringOf } from './bench-spec.js';
import type { BenchSpec } from './bench-spec.js';

export interface OutsideProfile {
  /** r, dr/dz and d2r/dz2 at a height from the middle, mm */
  at(z: number): { r: number; slope: number; second: number };
  /** the formula ends here: heights beyond it have no radius */
  reach: number;
}

/** A mixed set's own closing diameter scales every radius. */
export function outsideProfile(spec: BenchSpec): OutsideProfile {
  const { scale } = ringOf(spec);
  const plain = spec.vessel === 'tub' ? straight(spec) : caskProfile(spec);
  return {
    reach: plain.reach,
    at(z) {
      const { r, slope, second } = plain.at(z);
      return { r: r * scale, slope: slope * scale, second: second * scale };
    },
  };
}

function straight(spec: BenchSpec): OutsideProfile {
  const slope = (spec.top - spec.bottom) / 2 / spec.height;
  const middle = (spec.top + spec.bottom) / 4;
  return { reach: Infinity, at: (z) => ({ r: middle + slope * z, slope, second: 0 }) };
}

function caskProfile(spec: BenchSpec): OutsideProfile {
  const big = spec.bilge / 2;
  const small = spec.ends / 2;
  const half = spec.height / 2;
  if (spec.profile === 'arc') return arcProfile(big, big - small, half);
  if (spec.profile === 'parabola') return parabolaProfile(big, big - small, half);
  return ellipseProfile(big, small, half);
}

function arcProfile(big: number, rise: number, half: number): OutsideProfile {
  const rho = (half * half + rise * rise) / (2 * rise);
  return {
    reach: rho,
    at(z) {
      const root = Math.sqrt((rho - z) * (rho + z));
      // rho - root without the loss of digits that a nearly straight stave would bring
      const drop = (z * z) / (rho + root);
      return { r: big - drop, slope: -z / root, second: (-rho * rho) / root ** 3 };
    },
  };
}

function parabolaProfile(big: number, rise: number, half: number): OutsideProfile {
  const k = rise / (half * half);
  return {
    reach: Infinity,
    at: (z) => ({ r: big - k * z * z, slope: -2 * k * z, second: -2 * k }),
  };
}

function ellipseProfile(big: number, small: number, half: number): OutsideProfile {
  // a^2 from small^2 = big^2 (1 - half^2 / a^2)
  const aSquared = (big * big * half * half) / ((big - small) * (big + small));
  return {
    reach: Math.sqrt(aSquared),
    at(z) {
      const root = Math.sqrt(1 - (z * z) / aSquared);
      const slope = (-big * z) / (aSquared * root);
      return { r: big * root, slope, second: -big / (aSquared * root ** 3) };
    },
  };
}
