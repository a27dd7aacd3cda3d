/** Registration crosses and join lines of a tile, in the coordinates of its windows. */
import type { Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { strip } from './grid.js';
import { inkTogether, lineWidths, rule } from './ink.js';
import { grown } from './rectangle.js';
import type { Ink } from './sheet.js';

/** Half the length of a cross, mm: a trifle less than a strip is wide. */
const arm = 4;

/** The neighbours of a tile that are sheets themselves, by their marks; null where there is none. */
export interface Neighbours {
  readonly left: string | null;
  readonly right: string | null;
  readonly above: string | null;
  readonly below: string | null;
}

/** A cross at each corner of an overlap: the same point of the drawing on every sheet that shows it. */
export function crossPoints(window: Bounds, { left, right, above, below }: Neighbours): Point[] {
  const { minX, minY, maxX, maxY } = grown(window, -strip);
  return [
    ...(left !== null || above !== null ? [{ x: minX, y: maxY }] : []),
    ...(right !== null || above !== null ? [{ x: maxX, y: maxY }] : []),
    ...(left !== null || below !== null ? [{ x: minX, y: minY }] : []),
    ...(right !== null || below !== null ? [{ x: maxX, y: minY }] : []),
  ];
}

export function crossBox({ x, y }: Point): Bounds {
  return grown({ minX: x, minY: y, maxX: x, maxY: y }, arm);
}

export function cross({ x, y }: Point): Ink {
  return inkTogether(
    rule({ x: x - arm, y }, { x: x + arm, y }, lineWidths.wide),
    rule({ x, y: y - arm }, { x, y: y + arm }, lineWidths.wide),
  );
}

/** A thin line down the middle of each overlap, from edge to edge of the window. */
export function joinLines(window: Bounds, { left, right, above, below }: Neighbours): Ink {
  const upright = (x: number) =>
    rule({ x, y: window.minY }, { x, y: window.maxY }, lineWidths.fine);
  const level = (y: number) => rule({ x: window.minX, y }, { x: window.maxX, y }, lineWidths.fine);
  return inkTogether(
    ...(left === null ? [] : [upright(window.minX + strip)]),
    ...(right === null ? [] : [upright(window.maxX - strip)]),
    ...(above === null ? [] : [level(window.maxY - strip)]),
    ...(below === null ? [] : [level(window.minY + strip)]),
  );
}

/** Where the words of each strip go: between the crosses. */
export function stripBoxes(window: Bounds): Record<keyof Neighbours, Bounds> {
  const { minX, minY, maxX, maxY } = grown(window, -strip);
  const clear = arm + 1;
  return {
    left: { minX: window.minX, maxX: minX, minY: minY + clear, maxY: maxY - clear },
    right: { minX: maxX, maxX: window.maxX, minY: minY + clear, maxY: maxY - clear },
    above: { minX: minX + clear, maxX: maxX - clear, minY: maxY, maxY: window.maxY },
    below: { minX: minX + clear, maxX: maxX - clear, minY: window.minY, maxY: minY },
  };
}
