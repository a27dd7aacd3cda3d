/** What the groove, the howel and the bevels of the heads hold beside the capacity proper. */
import { integrate } from '../geometry/quadrature.js';
import type { Head } from '../vessel/head.js';
import { wallRadius } from '../vessel/groove.js';
import { insideAt } from '../vessel/inside.js';
import type { Vessel } from '../vessel/vessel.js';
import { cubicMillimetresPerLitre, sectionArea } from './volume.js';

/** Of all heads together. */
export function recessLitres(vessel: Vessel): number {
  const { top, bottom } = vessel.heads;
  const volume = [top, bottom].reduce(
    (sum, head) => sum + (head ? headRecess(vessel, head) : 0),
    0,
  );
  return volume / cubicMillimetresPerLitre;
}

/**
 * From the howel's inner edge to the land, which seals: what the howel and the groove have opened, less the plain inside that
 * the capacity counts below the head's inside face, less the bevelled head above it. `y` runs outwards from that face.
 */
function headRecess(vessel: Vessel, head: Head): number {
  const { groove, insideFace } = head;
  const inside = insideAt(groove.end, vessel.spec, vessel.ring, vessel.profile, vessel.wall);
  const land = head.section[1]!.y;
  const [howelEdge, lip] = [groove.howelTo, groove.innerLip].map(
    (height) => (height - insideFace) * groove.towardsEnd,
  ) as [number, number];
  const opened = (y: number): number => {
    const height = insideFace + groove.towardsEnd * y;
    const plain = sectionArea(vessel, inside.radius(height));
    const open = y < howelEdge ? plain : Math.PI * wallRadius(groove, inside, height) ** 2;
    return open - (y < 0 ? plain : Math.PI * bevelRadius(head, y) ** 2);
  };
  // smooth between these places
  const stops = [howelEdge, 0, lip, land].filter((y) => y <= land).sort((a, b) => a - b);
  return stops
    .slice(1)
    .reduce((sum, to, i) => sum + (to > stops[i]! ? integrate(opened, stops[i]!, to, 2) : 0), 0);
}

/** Radius of the inner bevel at a distance outwards from the inside face. */
function bevelRadius(head: Head, beyond: number): number {
  const [face, land] = [head.section[0]!, head.section[1]!];
  return face.x + ((land.x - face.x) * beyond) / land.y;
}
