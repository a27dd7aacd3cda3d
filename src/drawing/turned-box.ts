/** A rectangle at any angle, and what meets it. */
import type { Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { boundsOfPoints } from '../geometry/measure.js';
import type { Frame } from './frame.js';
import { frameAt } from './frame.js';

export interface TurnedBox {
  readonly corners: readonly Point[];
  /** the frame in which it stands level, and its extent there */
  readonly frame: Frame;
  readonly level: Bounds;
  /** the upright rectangle round it */
  readonly bounds: Bounds;
}

/** Things that meet by less than this, mm, only touch: that is arithmetic, not an overlap. */
const slack = 1e-6;

export function turnedBox(
  corners: readonly [Point, Point, Point, Point],
  angle: number,
): TurnedBox {
  return new Turned(corners, angle);
}

/** Most boxes are only ever asked for the rectangle round them: the rest waits until it is. */
class Turned implements TurnedBox {
  readonly bounds: Bounds;
  private ownFrame: Frame | null = null;
  private ownLevel: Bounds | null = null;

  constructor(
    readonly corners: readonly [Point, Point, Point, Point],
    private readonly angle: number,
  ) {
    this.bounds = boundsOfPoints(corners)!;
  }

  get frame(): Frame {
    return (this.ownFrame ??= frameAt(this.corners[0], this.angle));
  }

  get level(): Bounds {
    return (this.ownLevel ??= boundsOfPoints(this.corners.map(this.frame.inward))!);
  }
}

/** Two rectangles are apart exactly when they are apart along a side of the one or of the other. */
export function boxesMeet(a: TurnedBox, b: TurnedBox): boolean {
  return (
    boundsMeet(a.bounds, b.bounds, 0) &&
    boundsMeet(a.level, boundsOfPoints(b.corners.map(a.frame.inward))!, 0) &&
    boundsMeet(b.level, boundsOfPoints(a.corners.map(b.frame.inward))!, 0)
  );
}

/** Whether a chain of straight segments within `bounds` comes nearer to the box than `margin` mm, or enters it. */
export function chainMeets(
  points: readonly Point[],
  bounds: Bounds,
  box: TurnedBox,
  margin: number,
): boolean {
  if (!boundsMeet(bounds, box.bounds, margin)) return false;
  const upright = grow(box.bounds, margin);
  const grown = grow(box.level, margin - slack);
  return points.some((to, i) => {
    const from = points[i - 1];
    if (!from || passes(from, to, upright)) return false;
    return segmentEnters(box.frame.inward(from), box.frame.inward(to), grown);
  });
}

/** A quick no: both ends lie beyond the same side. */
function passes(from: Point, to: Point, { minX, maxX, minY, maxY }: Bounds): boolean {
  return (
    (from.x < minX && to.x < minX) ||
    (from.x > maxX && to.x > maxX) ||
    (from.y < minY && to.y < minY) ||
    (from.y > maxY && to.y > maxY)
  );
}

function boundsMeet(a: Bounds, b: Bounds, margin: number): boolean {
  const { minX, maxX, minY, maxY } = grow(a, margin - slack);
  return minX < b.maxX && b.minX < maxX && minY < b.maxY && b.minY < maxY;
}

function grow({ minX, maxX, minY, maxY }: Bounds, by: number): Bounds {
  return { minX: minX - by, maxX: maxX + by, minY: minY - by, maxY: maxY + by };
}

/** Liang and Barsky: the segment enters the box before it leaves it, both between the sides and between the ends. */
function segmentEnters(from: Point, to: Point, box: Bounds): boolean {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const left = from.x - box.minX;
  const right = box.maxX - from.x;
  const below = from.y - box.minY;
  const above = box.maxY - from.y;
  const enters = Math.max(0, entry(dx, left, right), entry(dy, below, above));
  return enters <= Math.min(1, exit(dx, left, right), exit(dy, below, above));
}

/** Where a segment comes between two sides, in parts of its length; never, if it runs beside them. */
function entry(step: number, toLow: number, toHigh: number): number {
  if (step === 0) return toLow < 0 || toHigh < 0 ? Infinity : -Infinity;
  return step > 0 ? -toLow / step : toHigh / step;
}

function exit(step: number, toLow: number, toHigh: number): number {
  if (step === 0) return Infinity;
  return step > 0 ? toHigh / step : -toLow / step;
}
