/** The frame of the setting plan: what its parts share, and where a place of the ring lies on paper. */
import type { Point } from '../geometry/curve.js';
import { shortLengthText } from '../drawing/length-text.js';
import type { MatchedSet } from '../rack/request.js';
import { widestHeight } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';
import { pictureScale } from './section-scale.js';
import type { Words } from './words/index.js';

/** Paper that the numbers round the ring take up, mm. */
const beside = { width: 16.5, height: 16.5 };
/** From the ring to the marks of head joints, and their length, mm on paper. */
export const tick = { from: 0.8, length: 2 };

/** A set, the vessel that it makes, and which set of the answer it is, from 1. */
export interface SettingPlan {
  readonly vessel: Vessel;
  readonly set: MatchedSet;
  readonly number: number;
}

/** What the parts of the picture share. Lengths are on paper, mm. */
export interface RingView {
  readonly plan: SettingPlan;
  readonly words: Words;
  readonly scale: number;
  readonly outside: number;
  readonly inside: number;
  /** azimuth of the middle of each stave, clockwise from the top */
  readonly middles: readonly number[];
  /** a length as the language sets it; marks are never set so */
  readonly text: (mm: number) => string;
}

export function ringView(plan: SettingPlan, words: Words): RingView {
  const { spec, profile, wall, staves } = plan.vessel;
  const height = widestHeight(spec);
  const radius = profile.radius(height);
  const scale = pictureScale({ width: 2 * radius, height: 2 * radius }, beside, spec.units);
  let azimuth = -staves[0]!.alpha;
  const middles = staves.map(({ alpha }) => {
    azimuth += 2 * alpha;
    return azimuth - alpha;
  });
  const text = (mm: number): string => words.typeset(shortLengthText(mm, spec.units));
  const outside = radius * scale;
  const inside = wall.insideRadius(height) * scale;
  return { plan, words, scale, outside, inside, middles, text };
}

/** A point by its distance from the axis and its azimuth, clockwise from the top. */
export function ringPoint(radius: number, azimuth: number): Point {
  return { x: radius * Math.sin(azimuth), y: radius * Math.cos(azimuth) };
}

/** How far out the marks of head joints reach. */
export const markedOutside = ({ outside, plan }: RingView): number =>
  outside / Math.cos(plan.vessel.ring.widestAlpha) + tick.from + tick.length;
