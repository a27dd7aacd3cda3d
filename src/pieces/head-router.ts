/**
 * All boards of a head nested on the board or sheet that they are cut from, one drawing a sheet; its lower left corner is the
 * origin. On paper the sheet is broken off where nothing more lies on it.
 */
import { line, polygon, polyline, type Point } from '../geometry/curve.js';
import { boundsOf } from '../geometry/measure.js';
import { arrowhead } from '../drawing/arrow.js';
import { breakLine } from '../drawing/break-line.js';
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing, Legend } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { shortLengthText } from '../drawing/length-text.js';
import { movePart } from '../drawing/legend.js';
import { overlaps } from '../drawing/overlap.js';
import type { Units } from '../spec/spec.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { boardLines } from './head-boards.js';
import { bores } from './head-bores.js';
import { namedHeads } from './head-names.js';
import { nest, type Nest, type Nested, type Size } from './nest.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

export interface RouterOptions {
  /** the board or sheet to cut from, mm, its width along the grain; by default the shortest plank that will do */
  readonly sheet?: Size;
  /** between boards and from the edge, mm */
  readonly gap?: number;
}

/** A cutter of 8 mm with a little wood on both sides of it (common practice, no source). */
const cutterGap = 12;
/** Lengths to which planks are cut off, and their width, as wide as is often sawn (common practice, no source). */
const planks: Record<Units, { readonly lengths: readonly number[]; readonly width: number }> = {
  mm: { lengths: [500, 1000, 1500, 2000], width: 250 },
  in: { lengths: [24, 36, 48, 72].map((inches) => inches * 25.4), width: 10 * 25.4 },
};

/** On paper: from the edge of the last board's gap to the break, and the least that is worth breaking off, mm. */
const paperBreak = { after: 8, least: 60 };

interface BoardPiece {
  readonly number: number;
  /** seen from outside, its bounds' lower left corner at the origin */
  readonly part: Part;
  readonly size: Size;
}

interface Job {
  readonly head: Head;
  readonly boards: readonly BoardPiece[];
  readonly sheet: Size;
  readonly gap: number;
  readonly nested: Nest;
  readonly twice: boolean;
  readonly units: Units;
  readonly words: Words;
}

/** `head-router-1` ... for each head that differs; a sheet without a board where not one fits. */
export function headRouters(
  vessel: Vessel,
  words: Words,
  { sheet, gap = cutterGap }: RouterOptions = {},
): Drawing[] {
  const { units } = vessel.spec;
  return namedHeads(vessel, words).flatMap(({ head, name }) => {
    const boards = head.boards.map((_, i) => boardPiece(head, i));
    const sizes = boards.map(({ size }) => size);
    const used = sheet ?? plankFor(sizes, gap, units);
    const nested = nest(sizes, used, gap);
    const twice = name === 'head' && vessel.heads.top !== null;
    const job: Job = { head, boards, sheet: used, gap, nested, twice, units, words };
    const sheets = nested.sheets.length > 0 ? nested.sheets : [[]];
    const stem = name.replace('head', 'head-router');
    const title = words.router.title[twice ? 'both' : head.groove.end];
    return sheets.map((on, i) => {
      const reach = reachOf(on, boards) + gap;
      const own = sheet ? job : { ...job, sheet: cutToLength(used, reach, units) };
      const ownTitle = words.router.sheetOf(title, i + 1, sheets.length);
      return sheetDrawing(own, on, reach, `${stem}-${i + 1}`, ownTitle);
    });
  });
}

/** `reach`: how much of the sheet's length is taken. */
function sheetDrawing(
  job: Job,
  on: readonly Nested[],
  reach: number,
  name: string,
  title: string,
): Drawing {
  const { sheet, words } = job;
  const legend = legendOf(job, on);
  const drawing = drawingOf(name, title, sheetPart(job, on, edgeOf(sheet)), legend);
  const end = reach + paperBreak.after;
  if (on.length === 0 || sheet.width - end < paperBreak.least) return drawing;
  const notes = [words.router.notes.broken, ...legend.notes];
  const paper = sheetPart(job, on, brokenEdge(sheet, end));
  return { ...drawing, forPaper: { ...paper, legend: { ...legend, notes } } };
}

/** How far along the sheet the boards on it reach. */
function reachOf(on: readonly Nested[], boards: readonly BoardPiece[]): number {
  return Math.max(0, ...on.map(({ index, x }) => x + boards[index]!.size.width));
}

/** The shortest that holds all boards, else the longest; longer or wider than any where a single board needs it. */
function plankFor(sizes: readonly Size[], gap: number, units: Units): Size {
  const { lengths, width } = planks[units];
  const longest = Math.ceil(Math.max(...sizes.map((size) => size.width)) + 2 * gap);
  const widest = Math.ceil(Math.max(...sizes.map((size) => size.height)) + 2 * gap);
  const choices = lengths.map((length) => ({
    width: Math.max(length, longest),
    height: Math.max(width, widest),
  }));
  const holdsAll = (plank: Size): boolean => nest(sizes, plank, gap).sheets.length === 1;
  return choices.find(holdsAll) ?? choices.at(-1)!;
}

/** A plank of which so much is used is bought no longer than it need be. */
function cutToLength(plank: Size, reach: number, units: Units): Size {
  const enough = planks[units].lengths.find((length) => length >= reach) ?? plank.width;
  return { ...plank, width: Math.min(plank.width, enough) };
}

function boardPiece(head: Head, index: number): BoardPiece {
  const board = head.boards[index]!;
  const own = head.dowels.filter(({ joint }) => joint === index || joint === index + 1);
  const { outline, bevels } = boardLines(head, board);
  const { minX, minY, maxX, maxY } = boundsOf(outline)!;
  const wood = merge(
    strokes('outline', outline),
    strokes('bevel', ...bevels),
    bores(own, head.spec, board.from, board.to),
  );
  const number = index + 1;
  return {
    number,
    part: movePart(merge(wood, numberIn(wood, String(number), (minY + maxY) / 2)), -minX, -minY),
    size: { width: maxX - minX, height: maxY - minY },
  };
}

/** The board's number where it touches no line: near the middle if it can be; left out where there is no room. */
function numberIn(wood: Part, text: string, middle: number): Part {
  for (const height of [heights.title, heights.normal, heights.small]) {
    for (const x of [0, 12, -12, 24, -24, 40, -40, 60, -60]) {
      const at = { x, y: middle - height / 2 };
      const words = label(text, at, { height, align: 'centre' });
      if (overlaps(merge(wood, words)).length === 0) return words;
    }
  }
  return merge();
}

function edgeOf({ width, height }: Size): Part {
  const corners = [corner(0, 0), corner(width, 0), corner(width, height), corner(0, height)];
  return strokes('station', polygon(corners));
}

/** The sheet's left part, up to `end`. */
function brokenEdge({ height }: Size, end: number): Part {
  const corners = [corner(end, 0), corner(0, 0), corner(0, height), corner(end, height)];
  return merge(
    strokes('station', polyline(corners)),
    strokes('dimension', breakLine(end, height, 0)),
  );
}

const corner = (x: number, y: number): Point => ({ x, y });

function sheetPart({ boards, sheet, words }: Job, on: readonly Nested[], edge: Part): Part {
  const [left, right] = [corner(0, sheet.height + 5), corner(40, sheet.height + 5)];
  return merge(
    edge,
    strokes('dimension', line(left, right), arrowhead(left, Math.PI), arrowhead(right, 0)),
    label(words.grain, { x: 20, y: sheet.height + 7.2 }, { align: 'centre' }),
    ...on.map(({ index, x, y }) => movePart(boards[index]!.part, x, y)),
  );
}

function legendOf(
  { head, boards, sheet, gap, nested, twice, units, words }: Job,
  on: readonly Nested[],
): Legend {
  const { notes, table } = words.router;
  const text = (mm: number): string => shortLengthText(mm, units);
  const named = (mm: number): string => withUnit(mm, units, words);
  const left = nested.tooLarge.map((i) => boards[i]!);
  const need = (of: (size: Size) => number): string =>
    named(Math.ceil(Math.max(...left.map(({ size }) => of(size))) + 2 * gap));
  const names = left.map(({ number, size }) =>
    notes.board(number, text(size.width), text(size.height)),
  );
  const tooLarge = notes.tooLarge;
  return {
    notes: [
      notes.sheet(named(sheet.width), named(sheet.height), named(head.spec.thickness)),
      ...(left.length > 0
        ? [
            tooLarge(
              names.join(', '),
              need((size) => size.width),
              need((size) => size.height),
            ),
          ]
        : []),
      ...(twice ? [notes.twice] : []),
      notes.gap(named(gap)),
      notes.outline,
      notes.seen,
      notes.joints,
      words.caution.machines,
    ],
    tables: [
      {
        title: table.title,
        headings: table.headings(words.unitNames[units]),
        rows: on.map(({ index, x, y }) => {
          const { number, size } = boards[index]!;
          return [String(number), ...[size.width, size.height, x, y].map(text)];
        }),
      },
    ],
  };
}
