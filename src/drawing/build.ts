/** Small builders that pieces put drawings together with. A part is some strokes and letterings; parts merge. */
import type { Curve, Point } from '../geometry/curve.js';
import { line, polyline } from '../geometry/curve.js';
import { arrowhead } from './arrow.js';
import type { Drawing, Legend, Lettering, Stroke } from './drawing.js';
import { frameAt } from './frame.js';
import { heights } from './heights.js';
import { letteringBox } from './lettering.js';

export interface Part {
  readonly strokes: readonly Stroke[];
  readonly letterings: readonly Lettering[];
}

export type LabelOptions = Partial<Pick<Lettering, 'height' | 'align' | 'angle'>>;

/** Clear space in mm between lettering and the line that belongs to it. */
export const clearance = 1;
/** Length in mm of a leader beside its text, before it turns towards its target. */
const landing = 3;

export function merge(...parts: readonly Part[]): Part {
  const merged = { strokes: [] as Stroke[], letterings: [] as Lettering[] };
  // every piece is put together by this: loops take a third of what flatMap does
  for (const part of parts) {
    for (const stroke of part.strokes) merged.strokes.push(stroke);
    for (const lettering of part.letterings) merged.letterings.push(lettering);
  }
  return merged;
}

export function strokes(layer: Stroke['layer'], ...curves: readonly Curve[]): Part {
  return { strokes: curves.map((curve) => ({ layer, curve })), letterings: [] };
}

/** A line of text. Unless told otherwise it is 3.5 mm high, level, and starts at `at`. */
export function label(text: string, at: Point, options: LabelOptions = {}): Part {
  return { strokes: [], letterings: [lettering(text, at, options)] };
}

/** A line of text with a leader that runs from the side of the text nearest to `target` and ends there in an arrowhead. */
export function leaderLabel(
  text: string,
  at: Point,
  target: Point,
  options: LabelOptions = {},
): Part {
  const words = lettering(text, at, options);
  const path = leaderPath(words, target);
  const [before, end] = path.slice(-2) as [Point, Point];
  const direction = Math.atan2(end.y - before.y, end.x - before.x);
  return {
    strokes: [{ layer: 'dimension', curve: arrowhead(target, direction) }],
    letterings: [{ ...words, leader: polyline(path) }],
  };
}

/** Two crossed centre lines, each `size` mm long. */
export function cross(at: Point, size: number): Part {
  const arm = size / 2;
  return strokes(
    'centre',
    line({ x: at.x - arm, y: at.y }, { x: at.x + arm, y: at.y }),
    line({ x: at.x, y: at.y - arm }, { x: at.x, y: at.y + arm }),
  );
}

const noLegend: Legend = { notes: [], tables: [] };

/** A part as a drawing, without a legend until it is given one. */
export function drawingOf(name: string, title: string, part: Part, legend = noLegend): Drawing {
  const { strokes, letterings } = part;
  return { name, title, subject: '', strokes, letterings, legend };
}

/** Unless told otherwise 3.5 mm high, level, and starting at `at`. */
export function lettering(text: string, at: Point, options: LabelOptions = {}): Lettering {
  return { text, at, height: heights.normal, align: 'left', angle: 0, ...options };
}

/** From the text to the target: level with the middle of the capitals, or from above or below the text. */
function leaderPath(words: Lettering, target: Point): Point[] {
  const frame = frameAt(words.at, words.angle);
  const box = letteringBox(words).map(frame.inward) as [Point, Point, Point, Point];
  const [left, right] = [box[0].x - clearance, box[1].x + clearance];
  const aim = frame.inward(target);
  if (aim.x > left && aim.x < right) {
    const below = aim.y < box[0].y;
    const y = below ? box[0].y - clearance : box[2].y + clearance;
    return [frame.outward({ x: (left + right) / 2, y }), target];
  }
  const outwards = aim.x <= left ? -1 : 1;
  const start = { x: aim.x <= left ? left : right, y: words.height / 2 };
  const turn = { x: start.x + outwards * landing, y: start.y };
  const passes = (aim.x - turn.x) * outwards > 0;
  return [start, ...(passes ? [turn] : []), aim].map(frame.outward);
}
