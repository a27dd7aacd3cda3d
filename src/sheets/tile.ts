/** Tiles: each with its window of the drawing, crosses, joins with the neighbours' marks, and a foot to measure. */
import type { Bounds } from '../geometry/measure.js';
import { footHeight, footInk } from './foot.js';
import type { Grid, TilePlace } from './grid.js';
import { joinedWindow, markOf, samePlace, windowOf } from './grid.js';
import { inkOf, inkTogether, moveInk } from './ink.js';
import type { Laid, LaidStroke } from './lay.js';
import { withBounds } from './lay.js';
import type { Neighbours } from './marks.js';
import { cross, crossBox, crossPoints, joinLines, stripBoxes } from './marks.js';
import type { Page } from './page.js';
import type { Units } from './proof.js';
import { comeNear, grown } from './rectangle.js';
import { settle } from './settle.js';
import type { Ink, Sheet } from './sheet.js';
import { stripWords } from './strip-words.js';
import type { TitleBlockEntry } from './title-block.js';
import type { SheetWords } from './words.js';

export interface Tiling {
  readonly page: Page;
  readonly laid: Laid;
  readonly grid: Grid;
  readonly places: readonly TilePlace[];
}

/** Kept clear between lettering and the joins, mm. */
const besideJoin = 0.5;

/** What goes on one tile, in the drawing's own coordinates. */
export interface Tile {
  /** where it goes among the others: `B3`; empty when it is the only one */
  readonly mark: string;
  readonly window: Bounds;
  readonly neighbours: Neighbours;
  readonly content: {
    readonly strokes: readonly LaidStroke[];
    readonly letterings: Ink['letterings'];
  };
}

/** The window of a tile takes up the page's area but for the foot. */
export function windowArea({ area }: Page, units: Units): Bounds {
  return { ...area, minY: area.minY + footHeight(units) };
}

export function tilesOf({ laid, grid, places }: Tiling): Tile[] {
  const isThere = (place: TilePlace) => places.some((other) => samePlace(other, place));
  const tiles = places.map((place) => ({
    mark: places.length > 1 ? markOf(place) : '',
    area: grown(joinedWindow(grid, place, isThere), -besideJoin),
    window: windowOf(grid, place),
    neighbours: neighboursOf(place, isThere),
  }));
  const regions = tiles.map(({ area, window, neighbours }) => ({
    area,
    marks: crossPoints(window, neighbours).map(crossBox),
  }));
  const settled = settle(laid, regions);
  const lettered = inkOf({ strokes: [], letterings: settled.map(({ lettering }) => lettering) });
  const lines = [...laid.strokes, ...lettered.strokes.flatMap(withBounds)];
  return tiles.map((tile, index) => {
    const strokes = lines.filter(({ bounds, width }) => comeNear(bounds, tile.window, width / 2));
    const letterings = lettered.letterings.filter((_, i) => settled[i]!.region === index);
    return { ...tile, content: { strokes, letterings } };
  });
}

function neighboursOf(
  { column, row }: TilePlace,
  isThere: (place: TilePlace) => boolean,
): Neighbours {
  const at = (place: TilePlace) => (isThere(place) ? markOf(place) : null);
  return {
    left: at({ column: column - 1, row }),
    right: at({ column: column + 1, row }),
    above: at({ column, row: row - 1 }),
    below: at({ column, row: row + 1 }),
  };
}

export function tileSheet(
  { page, content, window, mark, neighbours }: Tile & { readonly page: Page },
  entry: TitleBlockEntry,
  terms: SheetWords,
): Sheet {
  const area = windowArea(page, entry.units);
  const [dx, dy] = [area.minX - window.minX, area.minY - window.minY];
  const furniture = inkTogether(
    joinLines(window, neighbours),
    ...crossPoints(window, neighbours).map(cross),
    ...joinWords({ content, window, neighbours }, terms),
  );
  return {
    width: page.width,
    height: page.height,
    correction: page.correction,
    content: [{ ...content, at: { x: dx, y: dy }, window: area }],
    furniture: inkTogether(moveInk(furniture, dx, dy), footInk(mark, entry, page.area, terms)),
  };
}

/** The left and upper edges are cut and lie on top; the right and lower strips are covered. */
function joinWords(
  { content, window, neighbours }: Pick<Tile, 'content' | 'window' | 'neighbours'>,
  { tile }: SheetWords,
): Ink[] {
  const boxes = stripBoxes(window);
  const { left, right, above, below } = neighbours;
  const write = (mark: string | null, text: (mark: string) => string, strip: Bounds): Ink[] =>
    mark === null ? [] : [stripWords([text(mark), mark], strip, content.strokes)];
  return [
    ...write(left, tile.cutHere, boxes.left),
    ...write(above, tile.cutHere, boxes.above),
    ...write(right, tile.covered, boxes.right),
    ...write(below, tile.covered, boxes.below),
  ];
}
