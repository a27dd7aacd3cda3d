/** What the vessel holds: the inside section integrated along the axis. Volumes in mm3 unless the name says litres. */
import { integrate } from '../geometry/quadrature.js';
import type { Vessel } from '../vessel/vessel.js';

export const cubicMillimetresPerLitre = 1e6;

/** Area of the inside section to a radius `r` measured to the middle of a face: a circle, or the polygon of flat insides. */
export function sectionArea(vessel: Pick<Vessel, 'spec' | 'ring'>, r: number): number {
  const flat = vessel.spec.staves.inside === 'flat';
  return (flat ? vessel.ring.sumOfTangents : Math.PI) * r * r;
}

/** Heights between which the vessel holds: the heads' inside faces; a tub from its bottom to its rim. */
export function holdingHeights(vessel: Pick<Vessel, 'spec' | 'heads'>): {
  from: number;
  to: number;
} {
  const { top, bottom } = vessel.heads;
  return { from: bottom.insideFace, to: top ? top.insideFace : vessel.spec.height / 2 };
}

/** Volume of the plain inside between two heights; one panel does for a short way. */
export function volumeBetween(
  vessel: Pick<Vessel, 'spec' | 'ring' | 'wall'>,
  from: number,
  to: number,
  panels?: number,
): number {
  const area = (height: number): number => sectionArea(vessel, vessel.wall.insideRadius(height));
  return integrate(area, from, to, panels);
}

/** What the vessel holds between its heads, groove and howel left out. */
export function capacityLitres(vessel: Vessel): number {
  const { from, to } = holdingHeights(vessel);
  return volumeBetween(vessel, from, to) / cubicMillimetresPerLitre;
}
