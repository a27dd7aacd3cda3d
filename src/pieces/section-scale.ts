/** Pictures of the whole vessel: which scale, and putting true lengths onto it. */
import { reductions } from '../drawing/scale.js';
import type { Part } from '../drawing/build.js';
import type { Stroke } from '../drawing/drawing.js';
import type { Curve, Point } from '../geometry/curve.js';
import { fitArcs, type SmoothCurve } from '../geometry/fit.js';
import { fitTolerance } from '../geometry/tolerance.js';
import { scale as enlarged } from '../geometry/transform.js';
import type { Units } from '../spec/spec.js';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** What a frame and a title block leave of A4 and of Letter, upright and lying: the paper that pictures are made to fit. */
const rooms: Record<Units, readonly Size[]> = {
  mm: [
    { width: 168, height: 225 },
    { width: 255, height: 132 },
  ],
  in: [
    { width: 173, height: 207 },
    { width: 237, height: 137 },
  ],
};

/** The largest standard reduction at which a thing fits one sheet with `beside` mm of paper for figures and words. */
export function pictureScale(thing: Size, beside: Size, units: Units): number {
  const fits = (scale: number): boolean =>
    rooms[units].some(
      ({ width, height }) =>
        thing.width * scale + beside.width <= width &&
        thing.height * scale + beside.height <= height,
    );
  return reductions.find(fits) ?? reductions.at(-1)!;
}

/** The curves of a full-size part at a scale; lettering is set after scaling. */
export function scaledLines(layer: Stroke['layer'], scale: number, curves: readonly Curve[]): Part {
  return {
    strokes: curves.map((curve) => ({ layer, curve: enlarged(curve, scale) })),
    letterings: [],
  };
}

export function scaledPoint({ x, y }: Point, scale: number): Point {
  return { x: x * scale, y: y * scale };
}

/** Arcs that are as near to the true curve on paper as those of a pattern are. */
export function pictureArcs(
  curve: SmoothCurve,
  from: number,
  to: number,
  scale: number,
): ReturnType<typeof fitArcs> {
  return fitArcs(curve, from, to, fitTolerance / scale);
}
