/** Lines as short straight pieces, to ask what lettering would meet. */
import { flatten } from '../drawing/flatten.js';
import type { Curve, Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { together } from '../geometry/measure.js';
import { spanned } from './rectangle.js';

export interface Chord {
  readonly points: readonly [Point, Point];
  readonly bounds: Bounds;
}

/** The pieces stray from the line by at most this, mm. */
const flatness = 0.05;

/** So many pieces one after the other share a rectangle round them all: most of a long line is nowhere near a lettering. */
const runLength = 12;

export interface ChordRun {
  readonly chords: readonly Chord[];
  readonly bounds: Bounds;
}

const known = new WeakMap<Curve, readonly ChordRun[]>();

/** The same line is taken apart once only: each of its tiles asks again. */
export function chordRuns(curve: Curve): readonly ChordRun[] {
  const before = known.get(curve);
  if (before) return before;
  const runs = runsOf(chordsOf(curve));
  known.set(curve, runs);
  return runs;
}

export function chordsOf(curve: Curve): Chord[] {
  const chain = flatten(curve, flatness);
  const chords: Chord[] = [];
  for (let i = 1; i < chain.length; i++) {
    const from = chain[i - 1]!;
    const to = chain[i]!;
    chords.push({ points: [from, to], bounds: spanned(from, to) });
  }
  return chords;
}

function runsOf(all: readonly Chord[]): ChordRun[] {
  const runs: ChordRun[] = [];
  for (let i = 0; i < all.length; i += runLength) {
    const chords = all.slice(i, i + runLength);
    runs.push({ chords, bounds: together(chords.map(({ bounds }) => bounds))! });
  }
  return runs;
}
