/**
 * Dimension lines after the practice of ISO 129-1 (sizes from memory): extension lines that start clear of the
 * piece and run past the dimension line, open arrowheads, text above the line, to be read from the bottom or the right.
 */
import type { Point } from '../geometry/curve.js';
import { line } from '../geometry/curve.js';
import { arrowhead, arrowLength } from './arrow.js';
import type { Part } from './build.js';
import { clearance, label, merge, strokes } from './build.js';
import type { Frame } from './frame.js';
import { frameAt, readable } from './frame.js';
import { heights } from './heights.js';
import { descenderPart, textWidth } from './lettering.js';

/** Gap between the piece and an extension line, and how far that line runs past the dimension line, mm. */
export const extensionGap = 1;
export const overshoot = 1.5;
/** How far the line runs on outside when its arrows don't fit between, mm. */
export const tail = 2 * arrowLength;
/** Least length between the ends that has room for two arrowheads, mm. */
export const roomForArrows = 3 * arrowLength;

export interface DimensionOptions {
  /** direction of the dimension line, radians; along `from` to `to` unless given */
  readonly angle?: number;
  readonly height?: number;
}

/**
 * The distance from `from` to `to`, measured along a dimension line that runs through `through`.
 * Where the text or the arrows don't fit between the ends they stand outside, the text beyond the far end.
 */
export function dimensionLine(
  text: string,
  from: Point,
  to: Point,
  through: Point,
  options: DimensionOptions = {},
): Part {
  const height = options.height ?? heights.normal;
  const angle = readable(options.angle ?? Math.atan2(to.y - from.y, to.x - from.x));
  const frame = frameAt(through, angle);
  const [start, end] = [from, to].map(frame.inward).sort((a, b) => a.x - b.x) as [Point, Point];
  const length = end.x - start.x;
  const width = textWidth(text, height);
  const textFits = width + 2 * clearance <= length;
  const arrowsFit = textFits && length >= roomForArrows;
  const textLeft = textFits ? start.x + (length - width) / 2 : end.x + clearance;
  const textAt = { x: textLeft, y: clearance + descenderPart * height };
  const reach = textFits ? tail : Math.max(tail, clearance + width);
  return merge(
    extensionLine(frame, start),
    extensionLine(frame, end),
    levelLine(frame, start.x - (arrowsFit ? 0 : tail), end.x + (arrowsFit ? 0 : reach)),
    arrowAt(frame, start.x, angle + (arrowsFit ? Math.PI : 0)),
    arrowAt(frame, end.x, angle + (arrowsFit ? 0 : Math.PI)),
    label(text, frame.outward(textAt), { height, angle }),
  );
}

/** From just off the measured point to just past the dimension line; nothing when the point lies on that line. */
function extensionLine(frame: Frame, point: Point): Part {
  if (Math.abs(point.y) <= extensionGap) return merge();
  const side = Math.sign(point.y);
  return strokes(
    'dimension',
    line(
      frame.outward({ x: point.x, y: point.y - side * extensionGap }),
      frame.outward({ x: point.x, y: -side * overshoot }),
    ),
  );
}

function levelLine(frame: Frame, fromX: number, toX: number): Part {
  const [from, to] = [
    { x: fromX, y: 0 },
    { x: toX, y: 0 },
  ];
  return strokes('dimension', line(frame.outward(from), frame.outward(to)));
}

function arrowAt(frame: Frame, x: number, direction: number): Part {
  return strokes('dimension', arrowhead(frame.outward({ x, y: 0 }), direction));
}
