/**
 * Listing on a saw: the two settings of a carriage that leave a tub's stave with both its tapered edges. All lines are
 * those on the carriage's bed, where the stave's outer face lies. Lengths in mm, angles in radians.
 */
import type { Stave } from './stave.js';
import type { Vessel } from './vessel.js';

/** What the first cut leaves for the second to take off, at the wide end (common practice, no source). */
export const leftForSecondCut = 3;
/** How far the carriage runs past the blank at either end. */
const beyondBlank = 30;

export interface Listing {
  /** of each edge from the stave's middle line; positive when it widens upwards */
  readonly taper: number;
  /** across the outer face at mid-height, and at the wider end of the blank */
  readonly middleWidth: number;
  readonly widestWidth: number;
  /** end planes along the blade's line from mid-height, in the first cut */
  readonly ends: { readonly top: number; readonly bottom: number };
  /** half the carriage's length */
  readonly reach: number;
  /** distance of the fence from the blade's line, square to it, at a place along that line from mid-height */
  firstFence(along: number): number;
  secondFence(along: number): number;
}

/**
 * First cut: a straight raw edge lies on the fence, at the taper's angle to the blade. Second: the stave is turned end for
 * end and its first cut lies on the fence, at twice that angle the other way. Blade and fence then meet where the two
 * edges do, `w / (2 sin taper)` along the blade from mid-height, so the fence is `w cos(taper) / cos(2 taper) - x tan(2
 * taper)` away. Null for a cask: its edges are curved.
 */
export function listingOf(
  { spec, bend }: Pick<Vessel, 'spec' | 'bend'>,
  stave: Stave,
): Listing | null {
  if (spec.vessel === 'cask') return null;
  const [low, high] = [stave.blankEnds.bottom.outer, stave.blankEnds.top.outer];
  const widthAt = (station: number): number =>
    2 * stave.halfWidth(bend.sectionAtStation(station), 0);
  const middleWidth = widthAt(0);
  const widestWidth = Math.max(widthAt(low), widthAt(high));
  const taper = Math.atan((widthAt(high) - widthAt(low)) / 2 / (high - low));
  const onBlade = (station: number): number => station / Math.cos(taper);
  const first = (middleWidth / 2 + widestWidth / 2 + leftForSecondCut) / Math.cos(taper);
  const second = (middleWidth * Math.cos(taper)) / Math.cos(2 * taper);
  return {
    taper,
    middleWidth,
    widestWidth,
    ends: {
      top: onBlade(stave.ends.top.outerStation),
      bottom: onBlade(stave.ends.bottom.outerStation),
    },
    reach: onBlade(Math.max(-low, high)) + beyondBlank,
    firstFence: (along) => first + along * Math.tan(taper),
    secondFence: (along) => second - along * Math.tan(2 * taper),
  };
}
