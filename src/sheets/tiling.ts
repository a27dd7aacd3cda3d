/** Which way a drawing is laid on the paper, and which tiling of it needs the fewest sheets. */
import type { Part } from '../drawing/build.js';
import { cellOf, gridOver, neededTiles } from './grid.js';
import type { Laid } from './lay.js';
import { lay, samplesOf, turnedPart } from './lay.js';
import type { Lying, Printed } from './page.js';
import { plainPage } from './page.js';
import type { Size } from './paper.js';
import type { Units } from './proof.js';
import { heightOf, holds, widthOf } from './rectangle.js';
import type { Tiling } from './tile.js';
import { windowArea } from './tile.js';

/** Shares of the spare room that may lie on one side, the best-looking first. */
const shares = [0.5, 0.25, 0.75];

/** A grid with more tiles than this is a mistake, or worse. */
const mostTiles = 20_000;

/** Each way of laying the drawing: as it stands or turned, on paper upright or sideways. */
export interface Placement {
  readonly laid: Laid;
  readonly lying: Lying;
}

export function placementsOf(drawing: Part): Placement[] {
  return [drawing, turnedPart(drawing)].map(lay).flatMap((laid) => [
    { laid, lying: 'upright' as const },
    { laid, lying: 'sideways' as const },
  ]);
}

/**
 * The fewest sheets; among those the drawing as it stands before the drawing turned; among those the fewest letterings
 * that a join would cut; among those the first tried.
 */
export function fewestTiles(
  placements: readonly Placement[],
  paper: Size,
  printed: Printed,
  units: Units,
): Tiling {
  const laids = new Set(placements.map(({ laid }) => laid));
  const samples = new Map([...laids].map((laid) => [laid, samplesOf(laid)]));
  const tilings = placements.flatMap(({ laid, lying }): Tiling[] => {
    const page = plainPage(paper, lying, printed);
    const area = windowArea(page, units);
    const window = { width: widthOf(area), height: heightOf(area) };
    const points = samples.get(laid)!;
    const { columns, rows } = gridOver(laid.bounds, window);
    if (columns * rows > mostTiles) throw new RangeError(`${columns} by ${rows} sheets`);
    return sharesOver(columns).flatMap((left) =>
      sharesOver(rows).map((above) => {
        const grid = gridOver(laid.bounds, window, left, above);
        return { page, laid, grid, places: neededTiles(grid, points) };
      }),
    );
  });
  const fewest = Math.min(...tilings.map(({ places }) => places.length));
  const few = tilings.filter(({ places }) => places.length === fewest);
  const alike = few.filter(({ laid }) => laid === few[0]!.laid);
  const cuts = alike.map(cutLetterings);
  return alike[cuts.indexOf(Math.min(...cuts))]!;
}

/** Where a single tile holds all, it is no matter which side the room lies on. */
function sharesOver(count: number): readonly number[] {
  return count === 1 ? shares.slice(0, 1) : shares;
}

function cutLetterings({ laid, grid, places }: Tiling): number {
  const cells = places.map((place) => cellOf(grid, place));
  return laid.letterings.filter(({ box }) => !cells.some((cell) => holds(cell, box))).length;
}
