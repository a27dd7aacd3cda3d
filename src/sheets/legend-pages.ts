/** A legend shared out over columns and pages: as many notes and rows in each as its height allows. */
import type { Legend, Table } from '../drawing/drawing.js';
import { legendBlock, legendHeight } from '../drawing/legend.js';
import type { Bounds } from '../geometry/measure.js';
import { inkOf, inkTogether } from './ink.js';
import { heightOf, widthOf } from './rectangle.js';
import type { Ink } from './sheet.js';

const columnGap = 12;
const widestColumn = 200;

export function isEmpty({ notes, tables }: Legend): boolean {
  return notes.length === 0 && tables.length === 0;
}

interface Measured {
  readonly width: number;
  readonly height: number;
}

const measured = new WeakMap<Legend, Measured>();

/** How high a legend is at a width. The cover asks whether it has room for it; the pages after it ask again. */
export function heightOfLegend(legend: Legend, width: number): number {
  const before = measured.get(legend);
  if (before?.width === width) return before.height;
  const height = legendHeight(legend, width);
  measured.set(legend, { width, height });
  return height;
}

/** The ink of each page, at least one item on every page; `space` is the same on all. */
export function legendPages(legend: Legend, space: Bounds): Ink[] {
  const columns = columnsOf(space);
  const pages: Ink[] = [];
  let rest = legend;
  while (!isEmpty(rest)) {
    const inks: Ink[] = [];
    for (const column of columns) {
      if (isEmpty(rest)) break;
      const count = Math.max(1, mostItems(rest, column));
      const block = legendBlock(items(rest, 0, count), widthOf(column));
      inks.push(inkOf(block, column.minX, column.maxY));
      rest = items(rest, count, itemCount(rest));
    }
    pages.push(inkTogether(...inks));
  }
  return pages;
}

function columnsOf(space: Bounds): Bounds[] {
  const count = Math.ceil((widthOf(space) + columnGap) / (widestColumn + columnGap));
  const width = (widthOf(space) - (count - 1) * columnGap) / count;
  return Array.from({ length: count }, (_, i) => {
    const minX = space.minX + i * (width + columnGap);
    return { ...space, minX, maxX: minX + width };
  });
}

function mostItems(legend: Legend, column: Bounds): number {
  const heightOfPart = (part: Legend) => heightOfLegend(part, widthOf(column));
  const fits = (part: Legend) => heightOfPart(part) <= heightOf(column);
  let [most, tooMany] = [0, itemCount(legend)];
  const whole = heightOfPart(legend);
  if (whole <= heightOf(column)) return tooMany;
  // the first guess takes all items for equally high
  let guess = Math.floor((tooMany * heightOf(column)) / whole);
  let stride = 1;
  while (tooMany - most > 1) {
    const middle = Math.min(tooMany - 1, Math.max(most + 1, guess));
    if (fits(items(legend, 0, middle))) [most, guess] = [middle, middle + stride];
    else [tooMany, guess] = [middle, middle - stride];
    stride *= 2;
  }
  return wholeTables(legend, most, fits);
}

/** Fewer items, where that keeps a table whole that a column of its own would hold. */
function wholeTables(legend: Legend, most: number, fits: (legend: Legend) => boolean): number {
  let start = legend.notes.length;
  for (const table of legend.tables) {
    const end = start + rowCount(table);
    const isCut = start < most && most < end;
    if (isCut && start > 0 && fits({ notes: [], tables: [table] })) return start;
    start = end;
  }
  return most;
}

/** Notes and rows of tables; a table without rows counts as one. */
function itemCount({ notes, tables }: Legend): number {
  return notes.length + tables.reduce((sum, table) => sum + rowCount(table), 0);
}

function rowCount({ rows }: Table): number {
  return Math.max(1, rows.length);
}

/** The items from one index to before another; a table that is cut keeps its title and headings in both parts. */
function items({ notes, tables }: Legend, from: number, to: number): Legend {
  let start = notes.length;
  const parts = tables.flatMap((table): Table[] => {
    const [first, last] = [Math.max(0, from - start), Math.min(rowCount(table), to - start)];
    start += rowCount(table);
    return first < last ? [{ ...table, rows: table.rows.slice(first, last) }] : [];
  });
  return { notes: notes.slice(from, to), tables: parts };
}
