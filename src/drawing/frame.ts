/** A turned and shifted frame: lettering and dimensions are worked out level, then put in place. */
import type { Point } from '../geometry/curve.js';

export interface Frame {
  /** from the frame's own coordinates to the drawing's */
  readonly outward: (point: Point) => Point;
  /** from the drawing's coordinates to the frame's */
  readonly inward: (point: Point) => Point;
}

/** The frame with its origin at `origin` and its x axis at `angle` radians from the drawing's. */
export function frameAt(origin: Point, angle: number): Frame {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return {
    outward: ({ x, y }) => ({ x: origin.x + x * cos - y * sin, y: origin.y + x * sin + y * cos }),
    inward: (point) => {
      const x = point.x - origin.x;
      const y = point.y - origin.y;
      return { x: x * cos + y * sin, y: y * cos - x * sin };
    },
  };
}

/** The same direction or its opposite, whichever text along it can be read from the bottom or the right of the sheet. */
export function readable(angle: number): number {
  const turned = Math.atan2(Math.sin(angle), Math.cos(angle));
  const slack = 1e-9;
  if (turned > Math.PI / 2 + slack) return turned - Math.PI;
  return turned <= -Math.PI / 2 + slack ? turned + Math.PI : turned;
}
