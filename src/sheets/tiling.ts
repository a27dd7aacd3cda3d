/** Which way a drawing is laid on the paper, and which tiling of it needs the fewest sheets. */
import type { Part } from '../drawing/build.js';
import type { Bounds } from '../geometry/measure.js';
import { cellOf, gridOver, neededOf, type Grid, type TilePlace } from './grid.js';
import type { Laid } from './lay.js';
import { lay, quarterOf, samplesOf, turnedPart } from './lay.js';
import type { Lying, Page, Printed } from './page.js';
import { plainPage } from './page.js';
import type { Size } from './paper.js';
import type { Units } from './proof.js';
import { heightOf, holds, turnedBounds, widthOf } from './rectangle.js';
import type { Tiling } from './tile.js';
import { windowArea } from './tile.js';

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
  readonly samples: readonly number[];
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
  return { bounds: laid.bounds, contours, boxes, samples: samplesOf(laid) };
}

function turnShape({ bounds, contours, boxes, samples }: Shape, quarter: 1 | -1): Shape {
  const turned = samples.map((_, i) =>
    i % 2 === 0 ? -quarter * samples[i + 1]! : quarter * samples[i - 1]!,
  );
  return {
    bounds: turnedBounds(bounds, quarter),
    contours: contours.map((contour) => turnedBounds(contour, quarter)),
    boxes: boxes.map((box) => turnedBounds(box, quarter)),
    samples: turned,
  };
}

interface Counted {
  readonly placement: Placement;
  readonly page: Page;
  readonly grid: Grid;
  readonly places: readonly TilePlace[];
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
  const tilings = placements.flatMap((placement) =>
    tilingsOf(placement, plainPage(paper, placement.lying, printed), units),
  );
  const fewest = Math.min(...tilings.map(({ places }) => places.length));
  const few = tilings.filter(({ places }) => places.length === fewest);
  const alike = few.filter(({ placement }) => placement.shape === few[0]!.placement.shape);
  const whole = leastOf(alike, cutContours);
  const { placement, page, grid, places } = leastOf(whole, cutLetterings)[0]!;
  return { page, laid: placement.laid, grid, places };
}

/** The room to spare shared out in every way. */
function tilingsOf(placement: Placement, page: Page, units: Units): Counted[] {
  const { bounds, samples } = placement.shape;
  const area = windowArea(page, units);
  const window = { width: widthOf(area), height: heightOf(area) };
  const { columns, rows } = gridOver(bounds, window);
  if (columns * rows > mostTiles) throw new RangeError(`${columns} by ${rows} sheets`);
  const tried = columns === 1 || rows === 1 ? sharesInRow : shares;
  const grids = sharesOver(columns, tried).flatMap((left) =>
    sharesOver(rows, tried).map((above) => gridOver(bounds, window, left, above)),
  );
  const needed = neededOf(samples);
  return grids.map((grid) => ({ placement, page, grid, places: needed(grid) }));
}

/** Where a single tile holds all, it is no matter which side the room lies on. */
function sharesOver(count: number, tried: readonly number[]): readonly number[] {
  return count === 1 ? tried.slice(0, 1) : tried;
}

/** Those for which it is least, in their order. */
function leastOf<T>(list: readonly T[], measure: (each: T) => number): T[] {
  const measured = list.map(measure);
  const least = Math.min(...measured);
  return list.filter((_, i) => measured[i] === least);
}

const cutContours = (counted: Counted): number => cut(counted, counted.placement.shape.contours);
const cutLetterings = (counted: Counted): number => cut(counted, counted.placement.shape.boxes);

/** How many of the boxes lie in no cell as a whole. */
function cut({ grid, places }: Counted, boxes: readonly Bounds[]): number {
  const cells = places.map((place) => cellOf(grid, place));
  return boxes.filter((box) => !cells.some((cell) => holds(cell, box))).length;
}
