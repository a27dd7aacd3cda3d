/** A set of staves as a spec of its own: the same vessel with uneven widths, at the diameter at which they close. */
import type { Measured } from '../rack/closing.js';
import type { MatchedSet } from '../rack/request.js';
import type { Spec } from '../spec/spec.js';
import { flatWidth } from './wishes.js';

/** Widths are kept to 0.0001 mm, so that a file shows no rounding of floating point. */
const settled = 1e4;

/** `title` is that of the set. Widths are those after planing, across the flat outer face, in ring order. */
export function specOfSet(spec: Spec, set: MatchedSet, measured: Measured, title: string): Spec {
  const widths = set.staves.map(({ width, planeOff }) => {
    const flat = flatWidth(width - planeOff, set.closesAt, measured);
    return Math.round(flat * settled) / settled;
  });
  return { ...spec, title, staves: { ...spec.staves, count: widths.length, widths } };
}
