/** A small picture of the piece on its tiles, with the marks of columns above it and of rows on its left. */
import { scale } from '../geometry/transform.js';
import type { Bounds } from '../geometry/measure.js';
import type { Grid } from './grid.js';
import { allPlaces, cellOf, columnMark, rowMark, samePlace } from './grid.js';
import { inkTogether, lineWidths, moveInk, rectangle, stroked, words } from './ink.js';
import type { Laid } from './lay.js';
import type { Size } from './paper.js';
import type { Block } from './proof.js';
import { heightOf, widthOf } from './rectangle.js';
import type { Ink } from './sheet.js';
import type { Tiling } from './tile.js';

/** Room for the marks, mm. */
const marks = { left: 9, above: 6 };
/** The picture is at most this part of the full size. */
const largest = 1 / 4;
/** Lines of this width or wider on the piece are drawn wide in the picture; the narrowest are left out. */
const widest = 0.5;
const narrowest = 0.2;
const markHeight = 2.5;

/** The plan, as large as the space allows. */
export function assemblyPlan({ grid, laid, places }: Tiling, space: Size): Block {
  const whole = gridBounds(grid);
  const factor = Math.min(
    largest,
    (space.width - marks.left) / widthOf(whole),
    (space.height - marks.above) / heightOf(whole),
  );
  const cells = allPlaces(grid).map((place) => {
    const cell = scaled(cellOf(grid, place), factor);
    const needed = places.some((other) => samePlace(other, place));
    return needed ? rectangle(cell, lineWidths.narrow) : rectangle(cell, lineWidths.fine, 'dashed');
  });
  const ink = inkTogether(...cells, picture(laid, factor), ...marksOf(grid, factor));
  const dx = marks.left - whole.minX * factor;
  return {
    width: widthOf(whole) * factor + marks.left,
    height: heightOf(whole) * factor + marks.above,
    ink: moveInk(ink, dx, -whole.minY * factor),
  };
}

function gridBounds(grid: Grid): Bounds {
  const first = cellOf(grid, { column: 0, row: 0 });
  const last = cellOf(grid, { column: grid.columns - 1, row: grid.rows - 1 });
  return { minX: first.minX, maxX: last.maxX, minY: last.minY, maxY: first.maxY };
}

function scaled({ minX, minY, maxX, maxY }: Bounds, factor: number): Bounds {
  return { minX: minX * factor, minY: minY * factor, maxX: maxX * factor, maxY: maxY * factor };
}

function picture({ strokes }: Laid, factor: number): Ink {
  return inkTogether(
    ...strokes
      .filter(({ width, lineType }) => width >= narrowest && lineType !== 'long-dash-dot')
      .map(({ curve, width }) =>
        stroked(scale(curve, factor), width >= widest ? lineWidths.wide : lineWidths.fine),
      ),
  );
}

/** A mark for every column and row, or for every second or third where they are too small to mark each. */
function marksOf(grid: Grid, factor: number): Ink[] {
  const whole = scaled(gridBounds(grid), factor);
  const cells = allPlaces(grid).map((place) => ({
    ...place,
    ...scaled(cellOf(grid, place), factor),
  }));
  const columns = cells
    .filter(
      ({ row, column }) => row === 0 && column % everyNth(grid.window.width * factor, 5) === 0,
    )
    .map(({ column, minX, maxX }) => {
      const at = { x: (minX + maxX) / 2, y: whole.maxY + 1.4 };
      return words(columnMark(column), at, markHeight, { align: 'centre' });
    });
  const rows = cells
    .filter(
      ({ row, column }) => column === 0 && row % everyNth(grid.window.height * factor, 5) === 0,
    )
    .map(({ row, minY, maxY }) => {
      const at = { x: whole.minX - 1.5, y: (minY + maxY - markHeight) / 2 };
      return words(rowMark(row), at, markHeight, { align: 'right' });
    });
  return [...columns, ...rows];
}

function everyNth(cell: number, room: number): number {
  return Math.ceil(room / cell);
}
