/** What lettering must not meet where it is moved to, and how much of that it meets. */
import type { TurnedBox } from '../drawing/turned-box.js';
import { boxesMeet, chainMeets } from '../drawing/turned-box.js';
import type { Curve } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import type { Chord } from './chords.js';
import { chordsOf } from './chords.js';
import type { Laid, LaidLettering } from './lay.js';
import { grown, meet } from './rectangle.js';
import { farthest } from './shifts.js';

/** Kept clear round lines, mm. */
const air = 0.3;
/** Of leaders, mm. */
const leaderWidth = 0.13;

export interface Obstacles {
  readonly marks: readonly Bounds[];
  readonly others: readonly TurnedBox[];
  readonly lines: readonly Line[];
}

/** A straight piece of a line, and how near one may come to it. */
export interface Line extends Chord {
  readonly margin: number;
}

/** The lines that a lettering could meet wherever it is tried; its own leader aside. */
export function linesNear(
  { strokes, letterings }: Laid,
  { lettering, box }: LaidLettering,
): Line[] {
  const leaders = letterings.flatMap(({ lettering: other }) =>
    other.leader && other !== lettering ? [{ curve: other.leader, width: leaderWidth }] : [],
  );
  return [...strokes, ...leaders].flatMap(({ curve, width }) =>
    linesIn(curve, width, grown(box, farthest)),
  );
}

/** The pieces of a line that come into an area. */
export function linesIn(curve: Curve, width: number, area: Bounds): Line[] {
  return chordsOf(curve)
    .filter(({ bounds }) => meet(grown(bounds, width), area))
    .map((chord) => ({ ...chord, margin: width / 2 + air }));
}

/** How many marks, letterings and lines a box meets, and how many letterings its leader crosses, itself too. */
export function faultsAt(
  box: TurnedBox,
  leader: Curve | undefined,
  { marks, others, lines }: Obstacles,
): number {
  const crossed = leader ? chordsOf(leader) : [];
  return (
    count(marks, (mark) => meet(mark, box.bounds)) +
    count(others, (other) => boxesMeet(box, other)) +
    count(lines, (line) => meets(line, box)) +
    count([box, ...others], (other) =>
      crossed.some((chord) => meets({ ...chord, margin: air }, other)),
    )
  );
}

export function meets({ points, bounds, margin }: Line, box: TurnedBox): boolean {
  return chainMeets(points, bounds, box, margin);
}

function count<T>(items: readonly T[], test: (item: T) => boolean): number {
  return items.reduce((sum, item) => sum + (test(item) ? 1 : 0), 0);
}
