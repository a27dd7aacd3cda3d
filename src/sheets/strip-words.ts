/** What is written in the strips beyond the joins: text at a place that the lines of the drawing leave clear. */
import { letteringBox } from '../drawing/lettering.js';
import { turnedBox, type TurnedBox } from '../drawing/turned-box.js';
import type { Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { boundsOfPoints } from '../geometry/measure.js';
import { noInk } from './ink.js';
import type { LaidStroke } from './lay.js';
import { linesIn, meets, type Line } from './obstacles.js';
import { comeNear, heightOf, holds, widthOf } from './rectangle.js';
import type { Ink, SheetLettering } from './sheet.js';
import { shiftedBox, shiftedCorners, type Corners } from './shifts.js';

const height = 2.5;
/** From the strip's lower edge to the baseline, mm. */
const rise = 1.2;
/** Between places that are tried, mm. */
const step = 2;

/**
 * One line of text along a strip, as near to its middle as can be: the first of the texts that finds a clear place, or
 * nothing when none does. In an upright strip it reads from the right.
 */
export function stripWords(
  texts: readonly string[],
  strip: Bounds,
  lines: readonly LaidStroke[],
): Ink {
  const obstacles = linesIn(lines, strip);
  const middle = placeOn(strip, 0);
  for (const text of texts) {
    // measured once: along the strip its box only moves
    const box = letteringBox({ ...middle, text });
    const offset = clearOffset(strip, box, obstacles);
    if (offset !== null) return { strokes: [], letterings: [{ ...placeOn(strip, offset), text }] };
  }
  return noInk;
}

/** How far from the strip's middle the box stands clear: there first, then either side of it; null when nowhere. */
function clearOffset(strip: Bounds, box: Corners, obstacles: readonly Line[]): number | null {
  const bounds = boundsOfPoints(box)!;
  const half = lengthOf(strip) / 2;
  const clear = (offset: number): boolean => isClear(strip, box, bounds, offset, obstacles);
  for (let away = 0; away < half; away += step) {
    if (clear(away)) return away;
    if (away > 0 && clear(-away)) return -away;
  }
  return null;
}

function isClear(
  strip: Bounds,
  box: Corners,
  bounds: Bounds,
  offset: number,
  obstacles: readonly Line[],
): boolean {
  const shift = shiftAlong(strip, offset);
  const reached = shiftedBox(bounds, shift);
  if (!holds(strip, reached)) return false;
  let there: TurnedBox | null = null;
  for (let i = 0; i < obstacles.length; i++) {
    const line = obstacles[i]!;
    // most lines are nowhere near
    if (!comeNear(line.bounds, reached, line.margin)) continue;
    there ??= turnedBox(shiftedCorners(box, shift), angleOf(strip));
    if (meets(line, there)) return false;
  }
  return true;
}

const isLevel = (strip: Bounds): boolean => widthOf(strip) >= heightOf(strip);

const lengthOf = (strip: Bounds): number => Math.max(widthOf(strip), heightOf(strip));

const angleOf = (strip: Bounds): number => (isLevel(strip) ? 0 : Math.PI / 2);

/** From the strip's middle, rounded as the places themselves are. */
function shiftAlong(strip: Bounds, offset: number): Point {
  const half = lengthOf(strip) / 2;
  const from = isLevel(strip) ? strip.minX : strip.minY;
  const along = from + half + offset - (from + half);
  return isLevel(strip) ? { x: along, y: 0 } : { x: 0, y: along };
}

function placeOn(strip: Bounds, offset: number): Omit<SheetLettering, 'text'> {
  const half = lengthOf(strip) / 2;
  const at = isLevel(strip)
    ? { x: strip.minX + half + offset, y: strip.minY + rise }
    : { x: strip.maxX - rise, y: strip.minY + half + offset };
  return { at, height, align: 'centre', angle: angleOf(strip) };
}
