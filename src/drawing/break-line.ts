/** The thin zigzag at which a drawing leaves off what goes on (ISO 128, from memory). */
import { polyline, type Curve } from '../geometry/curve.js';

/** How far it runs past both edges, and its kink to either side, mm. */
const zigzag = 2;

/** Across something whose edges lie at `top` and `bottom`. */
export function breakLine(x: number, top: number, bottom: number): Curve {
  const middle = (top + bottom) / 2;
  return polyline([
    { x, y: top + zigzag },
    { x, y: middle + zigzag },
    { x: x - zigzag, y: middle + zigzag / 2 },
    { x: x + zigzag, y: middle - zigzag / 2 },
    { x, y: middle - zigzag },
    { x, y: bottom - zigzag },
  ]);
}
