/** What lettering must not meet where it is moved to, and how much of that it meets. */
import type { Lettering } from '../drawing/drawing.js';
import type { TurnedBox } from '../drawing/turned-box.js';
import { boxesMeet, chainMeets } from '../drawing/turned-box.js';
import type { Curve } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { isLine } from '../geometry/segment.js';
import type { Chord } from './chords.js';
import { chordRuns, chordsOf } from './chords.js';
import type { Laid, LaidStroke } from './lay.js';
import { comeNear, meet } from './rectangle.js';

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

/** The lines that a lettering could meet within an area; its own leader aside. */
export function linesNear(laid: Laid, lettering: Lettering, area: Bounds): Line[] {
  const lines: Line[] = [];
  for (const stroke of laid.strokes) addLinesOf(stroke, area, lines);
  for (const { lettering: other } of laid.letterings) {
    if (other.leader && other !== lettering) addLines(other.leader, leaderWidth, area, lines);
  }
  return lines;
}

/** The pieces of strokes that come into an area. */
export function linesIn(strokes: readonly LaidStroke[], area: Bounds): Line[] {
  const lines: Line[] = [];
  for (const stroke of strokes) addLinesOf(stroke, area, lines);
  return lines;
}

function addLinesOf({ curve, width, bounds }: LaidStroke, area: Bounds, lines: Line[]): void {
  const margin = width / 2 + air;
  if (!comeNear(bounds, area, margin)) return;
  // most lines are a single straight piece, whose bounds are known
  if (isLine(curve))
    lines.push({ points: [curve.vertices[0]!, curve.vertices[1]!], bounds, margin });
  else addLines(curve, width, area, lines);
}

function addLines(curve: Curve, width: number, area: Bounds, lines: Line[]): void {
  const margin = width / 2 + air;
  const runs = chordRuns(curve);
  for (let k = 0; k < runs.length; k++) {
    const { chords, bounds: reached } = runs[k]!;
    if (!comeNear(reached, area, margin)) continue;
    for (let i = 0; i < chords.length; i++) {
      const { points, bounds } = chords[i]!;
      if (comeNear(bounds, area, margin)) lines.push({ points, bounds, margin });
    }
  }
}

/**
 * How many marks, letterings and lines a box meets, and how many pieces of its leader cross lettering, itself too: counted
 * up to `most`, since a place is only ever compared with a better one.
 */
export function faultsAt(
  box: TurnedBox,
  leader: Curve | undefined,
  { marks, others, lines }: Obstacles,
  most = Infinity,
): number {
  let faults = count(marks, (mark) => meet(mark, box.bounds), most);
  faults += count(others, (other) => meetsBox(box, other), most - faults);
  faults += count(lines, (line) => meets(line, box), most - faults);
  const crosses = (line: Line): boolean => [box, ...others].some((other) => meets(line, other));
  return faults + count(piecesOf(leader), crosses, most - faults);
}

function piecesOf(leader: Curve | undefined): Line[] {
  return leader ? chordsOf(leader).map((chord) => ({ ...chord, margin: air })) : [];
}

function meetsBox(a: TurnedBox, b: TurnedBox): boolean {
  return meet(a.bounds, b.bounds) && boxesMeet(a, b);
}

export function meets({ points, bounds, margin }: Line, box: TurnedBox): boolean {
  return comeNear(bounds, box.bounds, margin) && chainMeets(points, bounds, box, margin);
}

function count<T>(items: readonly T[], test: (item: T) => boolean, most: number): number {
  let sum = 0;
  for (let i = 0; i < items.length && sum < most; i++) if (test(items[i]!)) sum += 1;
  return sum;
}
