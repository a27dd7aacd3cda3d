/** Which way a drawing is laid on the paper, and which tiling of it needs the fewest sheets. */
import type { Drawing } from '../drawing/drawing.js';
import { letteringBox } from '../drawing/lettering.js';
import { boundsOfPoints } from '../geometry/measure.js';
import { cellOf, gridOver, neededTiles } from './grid.js';
import type { Laid } from './lay.js';
import { lay } from './lay.js';
import type { Lying, Printed } from './page.js';
import { plainPage } from './page.js';
import type { Size } from './paper.js';
import type { Units } from './proof.js';
import { heightOf, holds, widthOf } from './rectangle.js';
import type { Tiling } from './tile.js';
import { windowArea } from './tile.js';

/** Shares of the spare room that may lie on one side, the best-looking first. */
const shares = [0.5, 0.25, 0.75];

/** Something made for each way of laying the drawing: as it stands or turned, on paper upright or sideways. */
export function placements<T>(drawing: Drawing, make: (laid: Laid, lying: Lying) => T): T[] {
  const ways: Lying[] = ['upright', 'sideways'];
  return [false, true].flatMap((quarterTurn) => {
    const laid = lay(drawing, quarterTurn);
    return ways.map((lying) => make(laid, lying));
  });
}

/** The fewest sheets; among those the fewest letterings that a join would cut; among those the first tried. */
export function fewestTiles(drawing: Drawing, paper: Size, printed: Printed, units: Units): Tiling {
  const tilings = placements(drawing, (laid, lying): Tiling[] => {
    const page = plainPage(paper, lying, printed);
    const area = windowArea(page, units);
    const window = { width: widthOf(area), height: heightOf(area) };
    return shares.flatMap((left) =>
      shares.map((above) => {
        const grid = gridOver(laid.bounds, window, left, above);
        return { page, laid, grid, places: neededTiles(grid, laid) };
      }),
    );
  }).flat();
  const fewest = Math.min(...tilings.map(({ places }) => places.length));
  const candidates = tilings.filter(({ places }) => places.length === fewest);
  const cuts = candidates.map(cutLetterings);
  return candidates[cuts.indexOf(Math.min(...cuts))]!;
}

function cutLetterings({ laid, grid, places }: Tiling): number {
  return laid.letterings.filter((lettering) => {
    const box = boundsOfPoints(letteringBox(lettering))!;
    return !places.some((place) => holds(cellOf(grid, place), box));
  }).length;
}
