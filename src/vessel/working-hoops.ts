/**
 * The hoops that a vessel is built in and that come off again: the raising hoop that the staves are set up in, and the
 * truss hoops that draw them together. Lengths in mm.
 */
import { outsideGirth } from './hoop.js';
import type { Vessel } from './vessel.js';

export type WorkingPlace = 'end' | 'quarter' | 'bilge' | 'top' | 'middle' | 'bottom';

export interface WorkingHoop {
  readonly place: WorkingPlace;
  /** height in the vessel; of a cask in its upper half, the lower is the same */
  readonly height: number;
  /** along the axis from the upper end plane */
  readonly offset: number;
  /** inside girth with the joints closed: the outside of the vessel there, of its polygon on a flat outside */
  readonly girth: number;
  /** the same over staves that are not backed yet, whose outer faces are flat */
  readonly flatGirth: number;
  /** of the round hoop with that girth */
  readonly insideDiameter: number;
}

/** Shares of the height from the upper end plane (common practice, no source). */
const caskPlaces = { end: 0.05, quarter: 0.2, bilge: 0.4 } as const;
const tubPlaces = { top: 0.1, middle: 0.5, bottom: 0.9 } as const;

export function workingHoopsOf(vessel: Pick<Vessel, 'spec' | 'profile' | 'ring'>): WorkingHoop[] {
  const places = vessel.spec.vessel === 'cask' ? caskPlaces : tubPlaces;
  return Object.entries(places).map(([place, share]) =>
    workingHoop(place as WorkingPlace, share * vessel.spec.height, vessel),
  );
}

function workingHoop(
  place: WorkingPlace,
  offset: number,
  { spec, profile, ring }: Pick<Vessel, 'spec' | 'profile' | 'ring'>,
): WorkingHoop {
  const height = spec.height / 2 - offset;
  const radius = profile.radius(height);
  const girth = outsideGirth(radius, spec, ring);
  const flatGirth = 2 * radius * ring.sumOfTangents;
  return { place, height, offset, girth, flatGirth, insideDiameter: girth / Math.PI };
}
