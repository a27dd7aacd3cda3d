/** Registration crosses and join lines of a tile: down the middle of each overlap a thin line from edge to edge of the window. */
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
export function crossPoints(window: Bounds, neighbours: Neighbours): Point[] {
  return corners(window).filter((_, i) => isCrossed(neighbours)[i]);
}

/** Of the cells' edges: upper left, upper right, lower left, lower right. */
function corners(window: Bounds): Point[] {
  const { minX, minY, maxX, maxY } = grown(window, -strip);
  return [
    { x: minX, y: maxY },
    { x: maxX, y: maxY },
    { x: minX, y: minY },
    { x: maxX, y: minY },
  ];
}

function isCrossed({ left, right, above, below }: Neighbours): boolean[] {
  return [
    left !== null || above !== null,
    right !== null || above !== null,
    left !== null || below !== null,
    right !== null || below !== null,
  ];
}

export function crossBox({ x, y }: Point): Bounds {
  return grown({ minX: x, minY: y, maxX: x, maxY: y }, arm);
}

/** Join lines and crosses of the tiles whose windows lie at the same place on their sheets: each is made once. */
export function joinSetter(window: Bounds): (neighbours: Neighbours) => Ink {
  const upright = (x: number) =>
    rule({ x, y: window.minY }, { x, y: window.maxY }, lineWidths.fine);
  const level = (y: number) => rule({ x: window.minX, y }, { x: window.maxX, y }, lineWidths.fine);
  const lines = {
    left: upright(window.minX + strip),
    right: upright(window.maxX - strip),
    above: level(window.maxY - strip),
    below: level(window.minY + strip),
  };
  const crosses = corners(window).map(cross);
  return (neighbours) => {
    const { left, right, above, below } = neighbours;
    const crossed = isCrossed(neighbours);
    return inkTogether(
      ...(left === null ? [] : [lines.left]),
      ...(right === null ? [] : [lines.right]),
      ...(above === null ? [] : [lines.above]),
      ...(below === null ? [] : [lines.below]),
      ...crosses.filter((_, i) => crossed[i]),
    );
  };
}

function cross({ x, y }: Point): Ink {
  return inkTogether(
    rule({ x: x - arm, y }, { x: x + arm, y }, lineWidths.wide),
    rule({ x, y: y - arm }, { x, y: y + arm }, lineWidths.wide),
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
