/** Plain vector arithmetic on points. */
import type { Point } from './curve.js';

export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });

export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });

export const times = (a: Point, factor: number): Point => ({ x: a.x * factor, y: a.y * factor });

/** `a + factor * b` */
export const along = (a: Point, b: Point, factor: number): Point => ({
  x: a.x + b.x * factor,
  y: a.y + b.y * factor,
});

export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/** Positive when `b` points to the left of `a`. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;

export const size = (a: Point): number => Math.sqrt(a.x * a.x + a.y * a.y);

export const distance = (a: Point, b: Point): number => {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  return Math.sqrt(dx * dx + dy * dy);
};

/** The direction of `a`, of length 1. */
export const unit = (a: Point): Point => times(a, 1 / size(a));

/** `a` turned a quarter to the left. */
export const leftNormal = (a: Point): Point => ({ x: -a.y, y: a.x });

/** `a` turned counter-clockwise by an angle in radians. */
export function turned(a: Point, angle: number): Point {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return { x: a.x * c - a.y * s, y: a.x * s + a.y * c };
}
