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
 * Between the howel's inner edge and the land, which seals: the round that howel and groove have cut, less the plain inside
 * (counted already) below the head's inside face, less the bevelled head above it. Each span is smooth.
 */
function headRecess(vessel: Vessel, head: Head): number {
  const { groove } = head;
  const inside = insideAt(groove.end, vessel.spec, vessel.ring, vessel.profile, vessel.wall);
  const land = head.insideFace + groove.towardsEnd * head.section[1]!.y;
  const lip = groove.innerLip;
  const taken = (height: number): number => {
    const beyond = (height - head.insideFace) * groove.towardsEnd;
    return beyond > 0
      ? Math.PI * bevelRadius(head, beyond) ** 2
      : sectionArea(vessel, inside.radius(height));
  };
  const over = (from: number, to: number, cut: (height: number) => number): number => {
    if ((to - from) * groove.towardsEnd <= 0) return 0;
    return Math.abs(integrate((height) => Math.PI * cut(height) ** 2 - taken(height), from, to, 2));
  };
  const inner = (limit: number): number =>
    groove.towardsEnd > 0 ? Math.min(limit, land) : Math.max(limit, land);
  const face = inner(head.insideFace);
  const howelled = (height: number): number => wallRadius(groove, inside, height);
  const beforeLip = inner(lip);
  return (
    over(groove.howelTo, face, howelled) +
    over(face, beforeLip, howelled) +
    over(beforeLip, land, () => groove.radius)
  );
}

/** Radius of the inner bevel at a distance outwards from the inside face. */
function bevelRadius(head: Head, beyond: number): number {
  const [face, land] = [head.section[0]!, head.section[1]!];
  return face.x + ((land.x - face.x) * beyond) / land.y;
}
