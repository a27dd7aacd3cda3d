/** How lettering can be moved into one of several areas, the least moves first. */
import type { Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { add } from '../geometry/vector.js';
import { grown, heightOf, widthOf } from './rectangle.js';

/** How far beyond the least move others are tried, and how close together, mm. */
const reach = { along: 60, across: 12 };
const step = { along: 2, across: 3 };
/** What two ways to work out a cost may differ by, mm. */
const rounding = 1e-6;
const mostTries = 400;
const mostRegions = 4;
/** Costs beyond the least up to which moves are worked out together: most lettering finds its place among the first. */
const bands = [6, 20, Infinity];

export interface Shift {
  /** index of the area that it leads to */
  readonly region: number;
  readonly shift: Point;
  readonly cost: number;
}

/**
 * Moves that bring the box of lettering whose baseline runs at `angle` into the nearest areas that hold it, in batches:
 * the least first, in each and one after the other.
 */
export function* shiftsNear(
  box: Bounds,
  angle: number,
  areas: readonly Bounds[],
): Generator<readonly Shift[]> {
  const direction = { x: Math.cos(angle), y: Math.sin(angle) };
  const nearest = areas
    .flatMap((area, region): Shift[] => {
      const shift = shiftInto(area, box);
      return shift ? [{ region, shift, cost: costOf(shift.x, shift.y, direction) }] : [];
    })
    .sort(byCost)
    .slice(0, mostRegions);
  const least = nearest[0]?.cost ?? 0;
  let [beyond, left] = [-Infinity, mostTries];
  for (const band of bands) {
    const between = { over: beyond, upTo: least + band };
    const found = nearest.flatMap((first) =>
      slidesFrom(first, direction, between, fitsInto(areas[first.region]!, box)),
    );
    const batch = found.sort(byCost).slice(0, left);
    beyond = between.upTo;
    left -= batch.length;
    if (batch.length > 0) yield batch;
  }
}

const byCost = (a: Shift, b: Shift): number => a.cost - b.cost;

/** Moving across the baseline counts double. */
function costOf(x: number, y: number, direction: Point): number {
  const along = x * direction.x + y * direction.y;
  const across = y * direction.x - x * direction.y;
  return Math.sqrt(along * along + 4 * across * across);
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

/** Whether a box, moved by that much, lies in an area. */
type Fits = (x: number, y: number) => boolean;

const fitsInto =
  (area: Bounds, { minX, maxX, minY, maxY }: Bounds): Fits =>
  (x, y) =>
    minX + x >= area.minX &&
    maxX + x <= area.maxX &&
    minY + y >= area.minY &&
    maxY + y <= area.maxY;

/**
 * A move and others round it, along and across the baseline: those whose cost lies in a range, and that keep to the area. A
 * cost is at least as far as it goes along the baseline, and at least twice as far as it goes across: most need no more.
 */
function slidesFrom(
  { region, shift: first }: Shift,
  direction: Point,
  { over, upTo }: { readonly over: number; readonly upTo: number },
  fits: Fits,
): Shift[] {
  const all: Shift[] = [];
  const firstAlong = first.x * direction.x + first.y * direction.y;
  const firstAcross = first.y * direction.x - first.x * direction.y;
  const farthest = upTo + rounding;
  for (let along = -reach.along; along <= reach.along; along += step.along) {
    if (Math.abs(firstAlong + along) > farthest) continue;
    for (let across = -reach.across; across <= reach.across; across += step.across) {
      if (2 * Math.abs(firstAcross + across) > farthest) continue;
      const x = first.x + along * direction.x - across * direction.y;
      const y = first.y + along * direction.y + across * direction.x;
      const cost = costOf(x, y, direction);
      if (cost > over && cost <= upTo && fits(x, y)) all.push({ region, shift: { x, y }, cost });
    }
  }
  return all;
}

export function shiftedBox(box: Bounds, { x, y }: Point): Bounds {
  return { minX: box.minX + x, maxX: box.maxX + x, minY: box.minY + y, maxY: box.maxY + y };
}

/** Of a box at any angle. */
export type Corners = readonly [Point, Point, Point, Point];

export function shiftedCorners([a, b, c, d]: Corners, shift: Point): Corners {
  return [add(a, shift), add(b, shift), add(c, shift), add(d, shift)];
}
