/** How lettering can be moved into one of several areas, the least moves first. */
import type { Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { grown, heightOf, holds, widthOf } from './rectangle.js';

/** How far beyond the least move others are tried, and how close together, mm. */
const reach = { along: 60, across: 12 };
const step = { along: 2, across: 3 };
const mostTries = 400;
const mostRegions = 4;
export interface Shift {
  /** index of the area that it leads to */
  readonly region: number;
  readonly shift: Point;
  readonly cost: number;
}

/** Moves that bring the box of lettering whose baseline runs at `angle` into the nearest areas that hold it. */
export function shiftsNear(box: Bounds, angle: number, areas: readonly Bounds[]): Shift[] {
  const direction = { x: Math.cos(angle), y: Math.sin(angle) };
  const nearest = areas.flatMap((area, region): Shift[] => {
    const shift = shiftInto(area, box);
    return shift ? [{ region, shift, cost: costOf(shift, direction) }] : [];
  });
  const byCost = (a: Shift, b: Shift) => a.cost - b.cost;
  return nearest
    .sort(byCost)
    .slice(0, mostRegions)
    .flatMap(({ region, shift: first }) =>
      slides(direction)
        .map((slide) => ({ x: first.x + slide.x, y: first.y + slide.y }))
        .filter((shift) => holds(areas[region]!, shiftedBox(box, shift)))
        .map((shift) => ({ region, shift, cost: costOf(shift, direction) })),
    )
    .sort(byCost)
    .slice(0, mostTries);
}

/** Moving across the baseline counts double. */
function costOf(shift: Point, direction: Point): number {
  const along = shift.x * direction.x + shift.y * direction.y;
  const across = shift.y * direction.x - shift.x * direction.y;
  return Math.hypot(along, 2 * across);
}

/** The least shift that brings a box into an area, or null when it is too large; a hair inside, against rounding. */
function shiftInto(area: Bounds, box: Bounds): Point | null {
  const inner = grown(area, -1e-6);
  if (widthOf(box) > widthOf(inner) || heightOf(box) > heightOf(inner)) return null;
  const into = (low: number, high: number, from: number, to: number) =>
    low < from ? from - low : high > to ? to - high : 0;
  return {
    x: into(box.minX, box.maxX, inner.minX, inner.maxX),
    y: into(box.minY, box.maxY, inner.minY, inner.maxY),
  };
}

function slides(direction: Point): Point[] {
  const all: Point[] = [];
  for (let along = -reach.along; along <= reach.along; along += step.along) {
    for (let across = -reach.across; across <= reach.across; across += step.across) {
      all.push({
        x: along * direction.x - across * direction.y,
        y: along * direction.y + across * direction.x,
      });
    }
  }
  return all;
}

export function shiftedBox(box: Bounds, { x, y }: Point): Bounds {
  return { minX: box.minX + x, maxX: box.maxX + x, minY: box.minY + y, maxY: box.maxY + y };
}
