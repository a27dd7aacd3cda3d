/** What a dip rod's wet depth means in litres, standing on the bottom head or lying with the bung upwards. */
import { widestHeight } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';
import { volumeBelow, type LyingInside } from './lying.js';
import { polygonSection, roundSection, type Section } from './section.js';
import { cubicMillimetresPerLitre, holdingHeights, volumeBetween } from './volume.js';

const between = (x: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, x));

/** Wet depth of the full vessel on a rod that stands on the bottom's inside face, mm. */
export function fullDipStanding(vessel: Vessel): number {
  const { from, to } = holdingHeights(vessel);
  return to - from;
}

/** Litres at a wet depth above the bottom's inside face; a depth outside the vessel counts as empty or full. */
export function dipStanding(vessel: Vessel, depth: number): number {
  const { from, to } = holdingHeights(vessel);
  const volume = volumeBetween(vessel, from, between(from + depth, from, to));
  return volume / cubicMillimetresPerLitre;
}

/** Wet depth of the full vessel on a rod through the bung to the lowest inside point at the bilge, mm. */
export function fullDipLying(vessel: Vessel): number {
  const section = lyingSection(vessel);
  return bilgeRadius(lyingInside(vessel)) * (section.below + section.above);
}

/**
 * Litres at a wet depth above the lowest inside point at the bilge, the axis level and the widest stave's middle upwards. A
 * depth outside the vessel counts as empty or full. A tub counts as if a lid lay on its rim; its bilge is its wider end.
 */
export const dipLying = (vessel: Vessel, depth: number): number => lyingLitres(vessel)(depth);

/** The same for many depths of one vessel. */
export function lyingLitres(vessel: Vessel): (depth: number) => number {
  const [inside, section] = [lyingInside(vessel), lyingSection(vessel)];
  const radius = bilgeRadius(inside);
  const [lowest, highest] = [-radius * section.below, radius * section.above];
  return (depth) => {
    const level = between(depth + lowest, lowest, highest);
    return volumeBelow(inside, section, level) / cubicMillimetresPerLitre;
  };
}

function lyingInside({ spec, wall, heads }: Vessel): LyingInside {
  const { from, to } = holdingHeights({ spec, heads });
  return { radius: wall.insideRadius, from, to, widest: between(widestHeight(spec), from, to) };
}

const bilgeRadius = ({ radius, widest }: LyingInside): number => radius(widest);

function lyingSection({ spec, ring }: Vessel): Section {
  if (spec.staves.inside === 'hollowed') return roundSection;
  return polygonSection(ring.alphas, ring.alphas.indexOf(ring.widestAlpha));
}
