/** Lines across a long piece, each with an upright label beside the piece on a leader that keeps clear of its neighbours. */
import { line, polyline } from '../geometry/curve.js';
import { merge, type Part } from '../drawing/build.js';
import { heights } from '../drawing/heights.js';
import { spread } from './spread.js';

export interface CrossLine {
  readonly x: number;
  /** half the length of the line, from the centre line outwards; 0 draws the label only */
  readonly half: number;
  readonly text: string;
}

/** Distance between neighbouring upright labels. */
const pitch = 4.5;
/** From the edge of the piece to the bend of a leader, and on to the label. */
const stub = 2.5;
const fan = 6;

/**
 * Draws the lines on `station` and their labels above (`side` 1) or below (-1) the piece. `edge` is how far the piece
 * reaches from the centre line on that side.
 */
export function crossLines(lines: readonly CrossLine[], edge: number, side: 1 | -1): Part {
  const ordered = [...lines].sort((a, b) => a.x - b.x);
  const places = spread(
    ordered.map(({ x }) => x),
    pitch,
  );
  return merge(...ordered.map((each, i) => crossLine(each, places[i]!, edge, side)));
}

function crossLine({ x, half, text }: CrossLine, place: number, edge: number, side: 1 | -1): Part {
  const height = heights.small;
  const across = line({ x, y: -half }, { x, y: half });
  const start = { x, y: side * (edge + 1) };
  const bend = { x, y: side * (edge + stub) };
  const end = { x: place, y: side * (edge + stub + fan) };
  const lettering = {
    text,
    // the baseline runs upwards; its capitals stand to the left of it
    at: { x: place + height / 2, y: side * (edge + stub + fan + 1.5) },
    height,
    align: side > 0 ? ('left' as const) : ('right' as const),
    angle: Math.PI / 2,
    leader: polyline([start, bend, end]),
  };
  return {
    strokes: half > 0 ? [{ layer: 'station', curve: across }] : [],
    letterings: [lettering],
  };
}
