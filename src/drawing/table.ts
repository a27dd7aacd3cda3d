/** A ruled table: columns as wide as their text, narrowed and wrapped where the whole would be too wide. */
import { line, polygon } from '../geometry/curve.js';
import type { Part } from './build.js';
import { strokes } from './build.js';
import type { Lettering, Table } from './drawing.js';
import { heights } from './heights.js';
import { ascenderPart, descenderPart, textWidth } from './lettering.js';
import { wrap } from './wrap.js';

/** Clear space in mm between a rule and the box of the text beside it; above and below less in a close table. */
const padding = 1;
const closePadding = 0.15;
const height = heights.normal;
/** From one baseline to the next: the whole box of a line, so that accents and descenders never meet. */
export const pitch = (ascenderPart + descenderPart) * height + 0.1;
const startsLikeNumber = /^[-−+±]?[\d½¼¾⅛⅜⅝⅞]/;

export interface Block extends Part {
  readonly width: number;
  readonly height: number;
}

/** The headings and rows, without the title; the top left corner is the origin, y downwards negative. */
export function ruledTable(table: Table, width: number): Block {
  const { columns, wrapped } = laidOut(table, width);
  const xs = sums(columns);
  const above = rowPadding(table);
  const ys = sums(wrapped.map((row) => -rowHeight(row, above)));
  const numeric = columns.map((_, i) =>
    table.rows.every((row) => startsLikeNumber.test(row[i] ?? '')),
  );
  const cells = wrapped.flatMap((row, r) =>
    row.flatMap((lines, c) => cell(lines, xs[c]!, xs[c + 1]!, ys[r]! - above, numeric[c]!)),
  );
  const { strokes } = rules(xs, ys);
  return { strokes, letterings: cells, width: xs.at(-1)!, height: -ys.at(-1)! };
}

/** How high it will be: setting a table only to measure it is slow. */
export function tableHeight(table: Table, width: number): number {
  const above = rowPadding(table);
  return laidOut(table, width).wrapped.reduce((sum, row) => sum + rowHeight(row, above), 0);
}

function rowPadding({ close }: Table): number {
  return close ? closePadding : padding;
}

interface LaidOut {
  readonly columns: readonly number[];
  readonly wrapped: readonly (readonly (readonly string[])[])[];
}

/** A table is measured, tried in several widths and set; in most of them it has its natural columns. */
const laidOuts = new WeakMap<Table, Map<number, LaidOut>>();
const naturals = new WeakMap<Table, readonly number[]>();

function laidOut(table: Table, width: number): LaidOut {
  let answers = laidOuts.get(table);
  if (!answers) laidOuts.set(table, (answers = new Map()));
  let answer = answers.get(width);
  if (!answer) answers.set(width, (answer = laidOutAnew(table, width)));
  return answer;
}

function laidOutAnew(table: Table, width: number): LaidOut {
  const columns = columnWidths(table, width);
  const wrapped = [table.headings, ...table.rows].map((row) =>
    columns.map((column, i) => wrap(row[i] ?? '', height, column - 2 * padding)),
  );
  return { columns, wrapped };
}

/** Natural widths; if they are too much together, the widest columns share what the others leave. */
function columnWidths(table: Table, width: number): number[] {
  let natural = naturals.get(table);
  if (!natural) naturals.set(table, (natural = naturalWidths(table)));
  let left = width;
  let open = natural.length;
  const widths = [...natural];
  for (const [index, wish] of [...natural.entries()].sort((a, b) => a[1] - b[1])) {
    widths[index] = Math.min(wish, left / open);
    left -= widths[index];
    open -= 1;
  }
  return widths;
}

function naturalWidths({ headings, rows }: Table): number[] {
  return headings.map((heading, i) => {
    let most = textWidth(heading, height);
    for (const row of rows) most = Math.max(most, textWidth(row[i] ?? '', height));
    return most + 2 * padding + 0.01;
  });
}

function rowHeight(row: readonly (readonly string[])[], above: number): number {
  return Math.max(...row.map((lines) => lines.length)) * pitch + 2 * above;
}

/** 0 and the running totals after it. */
function sums(values: readonly number[]): number[] {
  const totals = [0];
  for (const value of values) totals.push(totals.at(-1)! + value);
  return totals;
}

function cell(
  lines: readonly string[],
  left: number,
  right: number,
  top: number,
  numeric: boolean,
): Lettering[] {
  const x = numeric ? right - padding : left + padding;
  const align = numeric ? 'right' : 'left';
  const written: Lettering[] = [];
  lines.forEach((text, i) => {
    if (text === '') return;
    const y = top - ascenderPart * height - i * pitch;
    written.push({ text, at: { x, y }, height, align, angle: 0 });
  });
  return written;
}

/** One closed frame and the rules inside it; no line is drawn twice. */
function rules(xs: readonly number[], ys: readonly number[]): Part {
  const [right, bottom] = [xs.at(-1)!, ys.at(-1)!];
  const at = (x: number, y: number) => ({ x, y });
  return strokes(
    'dimension',
    polygon([at(0, 0), at(0, bottom), at(right, bottom), at(right, 0)]),
    ...ys.slice(1, -1).map((y) => line(at(0, y), at(right, y))),
    ...xs.slice(1, -1).map((x) => line(at(x, 0), at(x, bottom))),
  );
}
