/** The numbers of hoops for programs: lengths in mm, angles in degrees, masses in kg. */
import type { End, Units } from '../spec/spec.js';
import { splayPer100, type Hoop } from '../vessel/hoop.js';
import { rivetsOf, type Rivets } from '../vessel/rivets.js';
import { hoopMass } from '../vessel/strap.js';

export interface HoopFigures {
  readonly name: string;
  readonly end: End;
  readonly offset: number;
  readonly width: number;
  readonly nearGirth: number;
  readonly farGirth: number;
  readonly slopeDegrees: number;
  readonly cutLength: number;
  readonly splay: number;
  readonly splayPer100: number;
  readonly driving: number;
  /** stock sizes of the spec's own units */
  readonly rivets: Rivets;
  /** kg */
  readonly mass: number;
}

export function hoopFigures(hoop: Hoop, units: Units): HoopFigures {
  const { name, offset, width } = hoop.spec;
  return {
    name,
    end: hoop.end,
    offset,
    width,
    nearGirth: hoop.nearGirth,
    farGirth: hoop.farGirth,
    slopeDegrees: (hoop.slope * 180) / Math.PI,
    cutLength: hoop.cutLength,
    splay: hoop.splay,
    splayPer100: splayPer100(hoop),
    driving: hoop.driving,
    rivets: rivetsOf(hoop.spec, units),
    mass: hoopMass(hoop),
  };
}
