/** Tiles: each with its window of the drawing, crosses, joins with the neighbours' marks, and a foot to measure. */
import type { Bounds } from '../geometry/measure.js';
import { footHeight, footSetter } from './foot.js';
import type { Grid, TilePlace } from './grid.js';
import { joinedWindow, markOf, overlap, samePlace, windowOf } from './grid.js';
import { inkOf, inkTogether, moveInk } from './ink.js';
import type { Laid, LaidStroke } from './lay.js';
import { withBounds } from './lay.js';
import type { Neighbours } from './marks.js';
import { crossBox, crossPoints, joinSetter, stripBoxes } from './marks.js';
import type { Page } from './page.js';
import type { Units } from './proof.js';
import { comeNear, grown, holds } from './rectangle.js';
import { settle } from './settle.js';
import type { Ink, Sheet } from './sheet.js';
import { stripWords } from './strip-words.js';
import type { SheetNumber, TitleBlockFields } from './title-block.js';
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
    const strokes: LaidStroke[] = [];
    for (let i = 0; i < lines.length; i++) {
      const line = lines[i]!;
      if (comeNear(line.bounds, tile.window, line.width / 2)) strokes.push(line);
    }
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

/** The sheets of a tiling's tiles. What they have in common is set once. */
export function tileSetter(
  { page, places }: Pick<Tiling, 'page' | 'places'>,
  fields: TitleBlockFields,
  terms: SheetWords,
): (tile: Tile, number: SheetNumber) => Sheet {
  const area = windowArea(page, fields.units);
  const joins = joinSetter(area);
  const foot = footSetter(fields, page.area, places.length > 1, terms);
  const { width, height, correction } = page;
  return (tile, number) => {
    const { content, window, mark, neighbours } = tile;
    const [dx, dy] = [area.minX - window.minX, area.minY - window.minY];
    const furniture = inkTogether(
      joins(neighbours),
      ...joinWords(tile, terms).map((ink) => moveInk(ink, dx, dy)),
      foot(mark, number),
    );
    const placed = { ...content, at: { x: dx, y: dy }, window: area };
    return { width, height, correction, content: [placed], furniture };
  };
}

/** The left and upper edges are cut and lie on top; the right and lower strips are covered. */
function joinWords({ content, window, neighbours }: Tile, { tile }: SheetWords): Ink[] {
  const boxes = stripBoxes(window);
  const { left, right, above, below } = neighbours;
  const middle = grown(window, -overlap);
  const lines = content.strokes.filter(({ bounds }) => !holds(middle, bounds));
  const write = (mark: string | null, text: (mark: string) => string, strip: Bounds): Ink[] =>
    mark === null ? [] : [stripWords([text(mark), mark], strip, lines)];
  return [
    ...write(left, tile.cutHere, boxes.left),
    ...write(above, tile.cutHere, boxes.above),
    ...write(right, tile.covered, boxes.right),
    ...write(below, tile.covered, boxes.below),
  ];
}
