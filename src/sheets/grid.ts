/**
 * How a large drawing is shared out over sheets. Windows, as large as can be printed, overlap by 10 mm; down the middle
 * of each overlap runs the join. Between the joins lie the cells, which show the whole drawing without gap or repetition.
 * Columns count from the left, rows from the top. All in the drawing's own coordinates.
 */
import type { Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import type { Size } from './paper.js';
import { heightOf, widthOf } from './rectangle.js';

export const overlap = 10;
export const strip = overlap / 2;

export interface TilePlace {
  readonly column: number;
  readonly row: number;
}

export interface Grid {
  readonly columns: number;
  readonly rows: number;
  /** of one tile's window */
  readonly window: Size;
  /** upper left corner of the first window */
  readonly corner: Point;
}

/**
 * The fewest columns and rows that cover `bounds`. `shareLeft` and `shareAbove` say which part of the room to spare lies
 * on the left and above.
 */
export function gridOver(bounds: Bounds, window: Size, shareLeft = 0.5, shareAbove = 0.5): Grid {
  const columns = countOver(widthOf(bounds), window.width);
  const rows = countOver(heightOf(bounds), window.height);
  const spare = {
    x: spanOf(columns, window.width) - widthOf(bounds),
    y: spanOf(rows, window.height) - heightOf(bounds),
  };
  const corner = { x: bounds.minX - spare.x * shareLeft, y: bounds.maxY + spare.y * shareAbove };
  return { columns, rows, window, corner };
}

function countOver(length: number, window: number): number {
  return Math.max(1, Math.ceil((length - overlap) / (window - overlap)));
}

function spanOf(count: number, window: number): number {
  return count * (window - overlap) + overlap;
}

/** What one sheet shows. */
export function windowOf({ window, corner }: Grid, { column, row }: TilePlace): Bounds {
  const minX = corner.x + column * (window.width - overlap);
  const maxY = corner.y - row * (window.height - overlap);
  return { minX, maxX: minX + window.width, minY: maxY - window.height, maxY };
}

/** The window as far as its joins: what is seen of it once all sheets are joined. */
export function cellOf(grid: Grid, place: TilePlace): Bounds {
  const { minX, minY, maxX, maxY } = windowOf(grid, place);
  const { column, row } = place;
  return {
    minX: column > 0 ? minX + strip : minX,
    maxX: column < grid.columns - 1 ? maxX - strip : maxX,
    minY: row < grid.rows - 1 ? minY + strip : minY,
    maxY: row > 0 ? maxY - strip : maxY,
  };
}

/** The window cut at its joins with those neighbours that there are. */
export function joinedWindow(
  grid: Grid,
  place: TilePlace,
  isThere: (neighbour: TilePlace) => boolean,
): Bounds {
  const window = windowOf(grid, place);
  const { column, row } = place;
  const cut = (neighbour: TilePlace) =>
    isInside(grid, neighbour) && isThere(neighbour) ? strip : 0;
  return {
    minX: window.minX + cut({ column: column - 1, row }),
    maxX: window.maxX - cut({ column: column + 1, row }),
    minY: window.minY + cut({ column, row: row + 1 }),
    maxY: window.maxY - cut({ column, row: row - 1 }),
  };
}

function isInside({ columns, rows }: Grid, { column, row }: TilePlace): boolean {
  return column >= 0 && column < columns && row >= 0 && row < rows;
}

export const samePlace = (a: TilePlace, b: TilePlace) => a.column === b.column && a.row === b.row;

/** `B3`: row B, column 3. */
export function markOf({ column, row }: TilePlace): string {
  return rowMark(row) + columnMark(column);
}

export function columnMark(column: number): string {
  return String(column + 1);
}

export function rowMark(row: number): string {
  const before = row < 26 ? '' : rowMark(Math.floor(row / 26) - 1);
  return before + String.fromCharCode(65 + (row % 26));
}

/** Row by row from the top, each from left to right. */
export function allPlaces({ columns, rows }: Grid): TilePlace[] {
  return Array.from({ length: columns * rows }, (_, index) => ({
    column: index % columns,
    row: Math.floor(index / columns),
  }));
}
