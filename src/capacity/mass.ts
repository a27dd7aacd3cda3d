/** What a vessel weighs: its wood by integrating the wall and the heads, its hoops, and the water that it holds. */
import { integrate } from '../geometry/quadrature.js';
import type { Head } from '../vessel/head.js';
import { insideAt } from '../vessel/inside.js';
import { wallRadius } from '../vessel/groove.js';
import { hoopMass } from '../vessel/strap.js';
import type { Vessel } from '../vessel/vessel.js';
import { recessLitres } from './recess.js';
import { capacityLitres, sectionArea } from './volume.js';

/**
 * kg per mm3 of air-dry oak: specific gravity 0.68 on dry mass and volume at 12 % moisture, times 1.12 for the water in it
 * (white oak; USDA Wood Handbook, FPL-GTR-190, table 5-3, from memory). Single trees differ by a tenth; soaked wood is heavier.
 */
const oakDensity = 0.68 * 1.12 * 1e-6;
/** kg per litre at 20 degrees C */
const waterDensity = 0.998;

export interface Masses {
  /** kg, all of them */
  readonly wood: number;
  readonly steel: number;
  readonly empty: number;
  readonly fullWithWater: number;
}

export function massesOf(vessel: Vessel): Masses {
  const wood = woodVolume(vessel) * oakDensity;
  const steel = vessel.hoops.reduce((sum, hoop) => sum + hoopMass(hoop), 0);
  const empty = wood + steel;
  const water = (capacityLitres(vessel) + recessLitres(vessel)) * waterDensity;
  return { wood, steel, empty, fullWithWater: empty + water };
}

/** Staves and heads, mm3; grooves, howel, chime bevels and bung hole taken out, dowels not counted against their bores. */
export function woodVolume(vessel: Vessel): number {
  const { top, bottom } = vessel.heads;
  return wallVolume(vessel) - bungVolume(vessel) + headVolume(bottom) + (top ? headVolume(top) : 0);
}

/** Between the outside and the finished inside, from end plane to end plane. */
function wallVolume(vessel: Vessel): number {
  const { spec, ring, profile, wall, heads } = vessel;
  const end = spec.height / 2;
  const outsideArea = (height: number): number =>
    (spec.staves.outside === 'flat' ? ring.sumOfTangents : Math.PI) * profile.radius(height) ** 2;
  const plain = (height: number): number => sectionArea(vessel, wall.insideRadius(height));
  const outside = integrate(outsideArea, -end, end);
  const low = heads.bottom.groove.howelTo;
  const high = heads.top ? heads.top.groove.howelTo : end;
  const present = [heads.bottom, heads.top].filter((head): head is Head => head !== null);
  const worked = present.reduce((sum, head) => sum + workedVolume(vessel, head), 0);
  return outside - integrate(plain, low, high) - worked;
}

/** The hollow from the howel's inner edge to the end plane: round, whatever the staves' inner faces are. */
function workedVolume({ spec, ring, profile, wall }: Vessel, { groove }: Head): number {
  const inside = insideAt(groove.end, spec, ring, profile, wall);
  const { howelTo, innerLip, outerLip, chime } = groove;
  const stops = [
    howelTo,
    innerLip,
    outerLip,
    ...(chime ? [chime.footHeight] : []),
    inside.endPlane,
  ];
  const area = (height: number): number => Math.PI * wallRadius(groove, inside, height) ** 2;
  const volumes = stops.slice(1).map((to, i) => Math.abs(integrate(area, stops[i]!, to, 1)));
  return volumes.reduce((sum, volume) => sum + volume, 0);
}

function bungVolume({ spec, wall }: Vessel): number {
  return spec.bung ? (Math.PI / 4) * spec.bung.diameter ** 2 * wall.thickness(0) : 0;
}

/** Frusta from face to face; an allowance across the boards makes each section an ellipse. */
function headVolume({ section, rim }: Head): number {
  const wider = rim.across - rim.along;
  const area = (x: number): number => Math.PI * x * (x + wider);
  return section.slice(1).reduce((sum, to, i) => {
    const from = section[i]!;
    const mean = area(from.x) + 4 * area((from.x + to.x) / 2) + area(to.x);
    return sum + ((to.y - from.y) * mean) / 6;
  }, 0);
}
