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
/** A place is only passed over where the box meets a line by more than this, mm: the rest is looked at as everywhere else. */
const sure = 1e-4;

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
  const count = Math.ceil(lengthOf(strip) / 2 / step);
  const blocked = blockedPlaces(strip, bounds, count, obstacles);
  const clear = (place: number): boolean =>
    blocked[count + place] === 0 && isClear(strip, box, bounds, place * step, obstacles);
  for (let place = 0; place < count; place++) {
    if (clear(place)) return place * step;
    if (place > 0 && clear(-place)) return -place * step;
  }
  return null;
}

/**
 * The places where the box surely meets a line, from `-count` to `count` about the middle: worked out line by line, which
 * takes far less than to try each place against all of them.
 */
function blockedPlaces(
  strip: Bounds,
  box: Bounds,
  count: number,
  obstacles: readonly Line[],
): Uint8Array {
  const blocked = new Uint8Array(2 * count + 1);
  const isAcross = !isLevel(strip);
  const [low, high] = isAcross ? [box.minX, box.maxX] : [box.minY, box.maxY];
  const [start, end] = isAcross ? [box.minY, box.maxY] : [box.minX, box.maxX];
  for (let i = 0; i < obstacles.length; i++) {
    const { points, margin } = obstacles[i]!;
    const within = margin - sure;
    const span = isAcross
      ? spanBetween(points[0].y, points[0].x, points[1].y, points[1].x, low - within, high + within)
      : spanBetween(
          points[0].x,
          points[0].y,
          points[1].x,
          points[1].y,
          low - within,
          high + within,
        );
    if (!span) continue;
    const first = Math.max(-count, Math.ceil((span.from - within - end) / step));
    const last = Math.min(count, Math.floor((span.to + within - start) / step));
    for (let place = first; place <= last; place++) blocked[count + place] = 1;
  }
  return blocked;
}

/** How far along the strip a straight piece reaches where it lies between two lengths across it; null when nowhere. */
function spanBetween(
  fromAlong: number,
  fromAcross: number,
  toAlong: number,
  toAcross: number,
  low: number,
  high: number,
): { readonly from: number; readonly to: number } | null {
  let [enters, leaves] = [0, 1];
  const rise = toAcross - fromAcross;
  if (rise === 0) {
    if (fromAcross < low || fromAcross > high) return null;
  } else {
    const atLow = (low - fromAcross) / rise;
    const atHigh = (high - fromAcross) / rise;
    enters = Math.max(0, Math.min(atLow, atHigh));
    leaves = Math.min(1, Math.max(atLow, atHigh));
    if (enters > leaves) return null;
  }
  const a = fromAlong + enters * (toAlong - fromAlong);
  const b = fromAlong + leaves * (toAlong - fromAlong);
  return { from: Math.min(a, b), to: Math.max(a, b) };
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
