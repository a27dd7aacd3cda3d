/** Dowel bores as they lie in the head: closed rectangles at mid-thickness, each with its axis. */
import { line, polygon } from '../geometry/curve.js';
import { merge, strokes, type Part } from '../drawing/build.js';
import type { Dowel } from '../vessel/boards.js';
import type { HeadSpec } from '../spec/spec.js';

/** How far a bore's axis is drawn past its ends. */
const overrun = 3;

/** The part of each dowel between two heights: a whole dowel in the head, half of it in one board. */
export function bores(
  dowels: readonly Dowel[],
  head: HeadSpec,
  from = -Infinity,
  to = Infinity,
): Part {
  return merge(...dowels.map((dowel) => bore(dowel, head, from, to)));
}

function bore({ x, y }: Dowel, head: HeadSpec, from: number, to: number): Part {
  const { diameter, length } = head.dowels;
  const [low, high] = [Math.max(from, y - length / 2), Math.min(to, y + length / 2)];
  const [left, right] = [x - diameter / 2, x + diameter / 2];
  const outline = polygon([
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ]);
  return merge(
    strokes('bore', outline),
    strokes('centre', line({ x, y: low - overrun }, { x, y: high + overrun })),
  );
}
