/** Lines as short straight pieces, to ask what lettering would meet. */
import { flatten } from '../drawing/flatten.js';
import type { Curve, Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { spanned } from './rectangle.js';

export interface Chord {
  readonly points: readonly [Point, Point];
  readonly bounds: Bounds;
}

/** The pieces stray from the line by at most this, mm. */
const flatness = 0.05;

const known = new WeakMap<Curve, readonly Chord[]>();

/** The same line is taken apart once only: each of its tiles asks again. */
export function chordsOf(curve: Curve): readonly Chord[] {
  const before = known.get(curve);
  if (before) return before;
  const chords = takenApart(curve);
  known.set(curve, chords);
  return chords;
}

function takenApart(curve: Curve): Chord[] {
  const chain = flatten(curve, flatness);
  const chords: Chord[] = [];
  for (let i = 1; i < chain.length; i++) {
    const from = chain[i - 1]!;
    const to = chain[i]!;
    chords.push({ points: [from, to], bounds: spanned(from, to) });
  }
  return chords;
}
