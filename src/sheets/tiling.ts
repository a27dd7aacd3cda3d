/** Which way a drawing is laid on the paper, and which tiling of it needs the fewest sheets. */
import type { Part } from '../drawing/build.js';
import type { Bounds } from '../geometry/measure.js';
import { cellOf, gridOver, type Grid, type TilePlace } from './grid.js';
import type { Laid } from './lay.js';
import { lay, quarterOf, turnedPart } from './lay.js';
import { neededPlaces } from './needed.js';
import type { Lying, Page, Printed } from './page.js';
import { plainPage } from './page.js';
import type { Size } from './paper.js';
import type { Units } from './proof.js';
import { heightOf, holds, turnedBounds, widthOf } from './rectangle.js';
import type { Tiling } from './tile.js';
import { windowArea } from './tile.js';
import { tracesOf, turnedTraces, type Traces } from './traces.js';

/** Shares of the spare room that may lie on one side, the best-looking first; more where sheets lie in a single row. */
const shares = [0.5, 0.25, 0.75];
const sharesInRow = [...shares, 0.375, 0.625, 0.125, 0.875];

/** A grid with more tiles than this is a mistake, or worse. */
const mostTiles = 20_000;

/** Each way of laying the drawing: as it stands or turned, on paper upright or sideways. */
export interface Placement {
  readonly lying: Lying;
  /** known before the drawing is turned */
  readonly size: Size;
  /** worked out when it is first asked for: few drawings are ever turned */
  readonly laid: Laid;
  /** the same for both ways that paper lies */
  readonly shape: Shape;
}

/** All that counting sheets takes, which is quicker to turn than the drawing. */
interface Shape {
  readonly bounds: Bounds;
  /** of the closed lines */
  readonly contours: readonly Bounds[];
  /** of the letterings */
  readonly boxes: readonly Bounds[];
  readonly traces: Traces;
}

export function placementsOf(drawing: Part): Placement[] {
  const standing = once(() => lay(drawing));
  const turned = once(() => lay(turnedPart(drawing)));
  const shape = once(() => shapeOf(standing()));
  const turnedShape = once(() => turnShape(shape(), quarterOf(drawing)));
  const { bounds } = standing();
  const [width, height] = [widthOf(bounds), heightOf(bounds)];
  return [
    ...bothWays({ width, height }, standing, shape),
    ...bothWays({ width: height, height: width }, turned, turnedShape),
  ];
}

function bothWays(size: Size, laid: () => Laid, shape: () => Shape): Placement[] {
  return (['upright', 'sideways'] as const).map((lying) => ({
    lying,
    size,
    get laid() {
      return laid();
    },
    get shape() {
      return shape();
    },
  }));
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => (made ??= { value: make() }).value;
}

function shapeOf(laid: Laid): Shape {
  const contours = laid.strokes.filter(({ curve }) => curve.closed).map(({ bounds }) => bounds);
  const boxes = laid.letterings.map(({ box }) => box);
  return { bounds: laid.bounds, contours, boxes, traces: tracesOf(laid) };
}

function turnShape({ bounds, contours, boxes, traces }: Shape, quarter: 1 | -1): Shape {
  return {
    bounds: turnedBounds(bounds, quarter),
    contours: contours.map((contour) => turnedBounds(contour, quarter)),
    boxes: boxes.map((box) => turnedBounds(box, quarter)),
    traces: turnedTraces(traces, quarter),
  };
}

/** One of the ways to tile a drawing, with the tiles that it needs. */
interface Counted {
  readonly placement: Placement;
  readonly page: Page;
  readonly grid: Grid;
  readonly places: readonly TilePlace[];
  /** of those places */
  readonly cells: readonly Bounds[];
}

/**
 * The fewest sheets; among those the drawing as it stands before the drawing turned; among those the fewest closed lines
 * that a join would cut, since a gauge that is glued together is never as true as one in a piece; then the fewest letterings;
 * among those the first tried.
 */
export function fewestTiles(
  placements: readonly Placement[],
  paper: Size,
  printed: Printed,
  units: Units,
): Tiling {
  let alike: Counted[] = [];
  for (const placement of placements) {
    const page = plainPage(paper, placement.lying, printed);
    for (const grid of gridsOver(placement.shape.bounds, windowArea(page, units))) {
      const places = neededPlaces(placement.shape.traces, grid, mostUseful(placement, alike[0]));
      if (!places) continue;
      if (alike[0] && places.length < alike[0].places.length) alike = [];
      const cells = places.map((place) => cellOf(grid, place));
      alike.push({ placement, page, grid, places, cells });
    }
  }
  const whole = leastOf(alike, cutContours);
  const { placement, page, grid, places } = leastOf(whole, cutLetterings)[0]!;
  return { page, laid: placement.laid, grid, places };
}

/** How many tiles a way may need to be looked at beside the best one yet: as many, but fewer where it turns the drawing. */
function mostUseful({ shape }: Placement, best: Counted | undefined): number {
  if (!best) return Infinity;
  return best.places.length - (best.placement.shape === shape ? 0 : 1);
}

/** The room to spare shared out in every way. */
function gridsOver(bounds: Bounds, area: Bounds): Grid[] {
  const window = { width: widthOf(area), height: heightOf(area) };
  const { columns, rows } = gridOver(bounds, window);
  if (columns * rows > mostTiles) throw new RangeError(`${columns} by ${rows} sheets`);
  const tried = columns === 1 || rows === 1 ? sharesInRow : shares;
  return sharesOver(columns, tried).flatMap((left) =>
    sharesOver(rows, tried).map((above) => gridOver(bounds, window, left, above)),
  );
}

/** Where a single tile holds all, it is no matter which side the room lies on. */
function sharesOver(count: number, tried: readonly number[]): readonly number[] {
  return count === 1 ? tried.slice(0, 1) : tried;
}

/** Those for which it is least, in their order. */
function leastOf(list: readonly Counted[], measure: (each: Counted, most: number) => number) {
  let [least, found]: [number, Counted[]] = [Infinity, []];
  if (list.length === 1) return list;
  for (const each of list) {
    const measured = measure(each, least);
    if (measured < least) found = [];
    if (measured <= least) found.push(each);
    least = Math.min(least, measured);
  }
  return found;
}

const cutContours = (counted: Counted, most: number): number =>
  cut(counted, counted.placement.shape.contours, most);
const cutLetterings = (counted: Counted, most: number): number =>
  cut(counted, counted.placement.shape.boxes, most);

/** How many of the boxes lie in no cell as a whole, counted up to one more than `most`. */
function cut({ cells }: Counted, boxes: readonly Bounds[], most: number): number {
  let count = 0;
  for (let i = 0; i < boxes.length && count <= most; i++) {
    if (!isInOne(cells, boxes[i]!)) count += 1;
  }
  return count;
}

function isInOne(cells: readonly Bounds[], box: Bounds): boolean {
  for (let i = 0; i < cells.length; i++) if (holds(cells[i]!, box)) return true;
  return false;
}
