/** What is written in the strips beyond the joins: text at a place that the lines of the drawing leave clear. */
import { letteringBox } from '../drawing/lettering.js';
import { turnedBox } from '../drawing/turned-box.js';
import type { Bounds } from '../geometry/measure.js';
import { boundsOfPoints } from '../geometry/measure.js';
import { noInk } from './ink.js';
import type { LaidStroke } from './lay.js';
import { linesIn, meets, type Line } from './obstacles.js';
import { comeNear, heightOf, holds, widthOf } from './rectangle.js';
import type { Ink, SheetLettering } from './sheet.js';
import { shiftedBox, shiftedCorners } from './shifts.js';

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
  const obstacles = linesAcross(strip, lines);
  const places = placesAlong(strip);
  const [middle] = places;
  if (!middle) return noInk;
  for (const text of texts) {
    // measured once: along the strip its box only moves
    const box = letteringBox({ ...middle, text });
    const bounds = boundsOfPoints(box)!;
    const found = places.find(({ at, angle }) => {
      const shift = { x: at.x - middle.at.x, y: at.y - middle.at.y };
      const reached = shiftedBox(bounds, shift);
      if (!holds(strip, reached)) return false;
      // most lines are nowhere near
      const near = obstacles.filter((line) => comeNear(line.bounds, reached, line.margin));
      if (near.length === 0) return true;
      const there = turnedBox(shiftedCorners(box, shift), angle);
      return !near.some((line) => meets(line, there));
    });
    if (found) return { strokes: [], letterings: [{ ...found, text }] };
  }
  return noInk;
}

/** The middle first, then either side of it. */
function placesAlong(strip: Bounds): Omit<SheetLettering, 'text'>[] {
  const level = widthOf(strip) >= heightOf(strip);
  const half = Math.max(widthOf(strip), heightOf(strip)) / 2;
  const places: Omit<SheetLettering, 'text'>[] = [];
  for (let away = 0; away < half; away += step) {
    for (const offset of away === 0 ? [0] : [away, -away]) {
      const at = level
        ? { x: strip.minX + half + offset, y: strip.minY + rise }
        : { x: strip.maxX - rise, y: strip.minY + half + offset };
      places.push({ at, height, align: 'centre', angle: level ? 0 : Math.PI / 2 });
    }
  }
  return places;
}

function linesAcross(strip: Bounds, strokes: readonly LaidStroke[]): Line[] {
  return strokes
    .filter(({ bounds, width }) => comeNear(bounds, strip, width))
    .flatMap(({ curve, width }) => linesIn(curve, width, strip));
}
