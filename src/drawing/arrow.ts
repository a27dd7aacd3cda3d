/** Open arrowheads of 30 degrees after ISO 129-1 (shape from memory): two short lines, so that nothing needs filling. */
import type { Curve, Point } from '../geometry/curve.js';
import { polyline } from '../geometry/curve.js';

/** Length of an arrowhead along its line, mm. */
export const arrowLength = 3;
const halfAngle = Math.PI / 12;

/** An arrowhead with its point at `tip`, pointing in `direction` (radians counter-clockwise from +x). */
export function arrowhead(tip: Point, direction: number): Curve {
  const side = arrowLength / Math.cos(halfAngle);
  const barb = (angle: number): Point => ({
    x: tip.x - side * Math.cos(direction + angle),
    y: tip.y - side * Math.sin(direction + angle),
  });
  return polyline([barb(halfAngle), tip, barb(-halfAngle)]);
}
