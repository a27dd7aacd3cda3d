/** Which sizes may be asked of pieces that take some: the widths of the stave fan, and what boards are cut from. */
import type { Spec } from '../spec/spec.js';
import { greatestDiameter } from '../vessel/profile.js';
import { stepOf, type WidthRange } from './stave-widths.js';

export const mostFanWidths = 60;
/** Longer or wider than any plank or sheet that is sold, by far, mm. */
export const largestPlank = 20_000;

export type FanFault = 'not-above-0' | 'fan-order' | 'fan-too-wide' | 'fan-too-many';
export type PlankFault = 'not-above-0' | 'plank-too-large';

/** Why a vessel cannot have a fan of these widths, mm, or null. */
export function fanFault({ from, to }: WidthRange, spec: Spec): FanFault | null {
  if (from <= 0) return 'not-above-0';
  if (to < from) return 'fan-order';
  if (to > greatestDiameter(spec) / 2) return 'fan-too-wide';
  return (to - from) / stepOf(spec.units) > mostFanWidths ? 'fan-too-many' : null;
}

/** Why boards cannot be cut from a plank or sheet of this size, mm, or null. */
export function plankFault(size: {
  readonly width: number;
  readonly height: number;
}): PlankFault | null {
  if (Math.min(size.width, size.height) <= 0) return 'not-above-0';
  return Math.max(size.width, size.height) > largestPlank ? 'plank-too-large' : null;
}
