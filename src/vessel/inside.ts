/** The plain inside of the vessel near one end, before howel and groove are cut into it. */
import type { End, Spec } from '../spec/spec.js';
import type { Profile } from './profile.js';
import type { Ring } from './ring.js';
import type { Wall } from './wall.js';

/** The inside surface that the groove is cut into, in heights and radii. */
export interface Inside {
  /** outside radius at the end plane */
  readonly endRadius: number;
  readonly endPlane: number;
  /** radius of the inside to the middle of a face */
  readonly radius: (height: number) => number;
  /** radius to which a round tool must reach at least to touch every face: the corners of a flat inside stand back */
  readonly roundRadius: (height: number) => number;
}

/** The plain inside near one end. The corners of a flat inside stand `1 / cos alpha` further out than its middles. */
export function insideAt(end: End, spec: Spec, ring: Ring, profile: Profile, wall: Wall): Inside {
  const endPlane = ((end === 'top' ? 1 : -1) * spec.height) / 2;
  const corner = spec.staves.inside === 'flat' ? 1 / Math.cos(ring.widestAlpha) : 1;
  return {
    endPlane,
    endRadius: profile.radius(endPlane),
    radius: wall.insideRadius,
    roundRadius: (height) => wall.insideRadius(height) * corner,
  };
}
