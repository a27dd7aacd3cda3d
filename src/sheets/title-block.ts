/** The title block: the data fields of ISO 7200:2004, and scale and units beside them, in cells of equal columns. */
import { ascenderPart, descenderPart } from '../drawing/lettering.js';
import { scaleText } from '../drawing/scale.js';
import type { Bounds } from '../geometry/measure.js';
import { fitText } from './fit-text.js';
import { inkTogether, lineWidths, rectangle, rule, words } from './ink.js';
import { keeper } from './kept.js';
import { widthOf } from './rectangle.js';
import type { Units } from './proof.js';
import type { Ink } from './sheet.js';
import type { SheetWords } from './words.js';

/** What the fields say; a field may be empty. The number of sheets and the scale are ours. */
export interface TitleBlock {
  readonly owner: string;
  readonly number: string;
  readonly date: string;
  /** the piece */
  readonly title: string;
  /** the vessel that it belongs to */
  readonly subtitle: string;
  readonly creator: string;
  readonly approved: string;
}

/** What the title blocks of all sheets of a piece say. */
export interface TitleBlockFields extends TitleBlock {
  readonly units: Units;
  /** of a picture; 1:1 without it */
  readonly scale?: number;
  /** of a document that draws nothing, and so has no scale */
  readonly documentType?: string;
}

/** Which of how many a sheet is. */
export interface SheetNumber {
  readonly sheet: number;
  readonly sheets: number;
}

/** One sheet's title block. */
export interface TitleBlockEntry extends TitleBlockFields, SheetNumber {}

/** ISO 7200:2004, 5.2: 180 mm wide at most, so that it fits an A4 sheet with its margins. */
export const titleBlockWidth = 180;
const [low, high] = [10, 20];
export const titleBlockHeight = low + high + low;

/** Space in mm beside and above the texts of a cell, and below each line. */
const padding = { side: 1.5, above: 0.8, below: 0.5 };
const captionHeight = 1.8;

interface Cell {
  readonly caption: string;
  /** lines of text from the top with their greatest heights */
  readonly lines: readonly (readonly [text: string, height: number])[];
  /** share of the block's width */
  readonly from: number;
  readonly to: number;
}

/** The block in the lower right corner of `space`; narrower than 180 mm only where the space is. */
export function titleBlockInk(entry: TitleBlockEntry, space: Bounds, terms: SheetWords): Ink {
  return titleBlockSetter(entry, space, terms)(entry);
}

/** The blocks of sheets of one piece that have the same space: all but the sheet's number is set once. */
export function titleBlockSetter(
  fields: TitleBlockFields,
  space: Bounds,
  terms: SheetWords,
): (number: SheetNumber) => Ink {
  const box = titleBlockBox(space);
  const lower = { ...box, maxY: box.minY + low };
  const middle = { ...box, minY: lower.maxY, maxY: lower.maxY + high };
  const upper = { ...box, minY: middle.maxY, maxY: middle.maxY + low };
  const numberCell = cell(terms.titleBlock.sheet, '', 150, 180);
  const { title: _, ...others } = fields;
  // all but the title is the same for every piece of a vessel
  const same = keptRows(terms, JSON.stringify([others, box]), () => ({
    frameAndLower: inkTogether(
      rectangle(box, lineWidths.frame),
      ...lowerRow(fields, terms).map((each) => cellInk(each, lower)),
      cellInk(numberCell, lower),
    ),
    upper: rowInk(upperRow(fields, terms), upper),
  }));
  const after = inkTogether(rowInk(middleRow(fields, terms), middle), same.upper);
  return ({ sheet, sheets }) => {
    const text = terms.titleBlock.sheetOf(sheet, sheets);
    const number = linesInk({ ...numberCell, lines: [[text, 2.5]] }, lower);
    return inkTogether(same.frameAndLower, ...number, after);
  };
}

const keptRows = keeper<{ readonly frameAndLower: Ink; readonly upper: Ink }>();

/** The cells, and the rule between them and the row below. */
function rowInk(cells: readonly Cell[], row: Bounds): Ink {
  const below = rule({ x: row.minX, y: row.minY }, { x: row.maxX, y: row.minY });
  return inkTogether(...cells.map((each) => cellInk(each, row)), below);
}

export function titleBlockBox({ minX, minY, maxX }: Bounds): Bounds {
  const width = Math.min(titleBlockWidth, maxX - minX);
  return { minX: maxX - width, minY, maxX, maxY: minY + titleBlockHeight };
}

/** All but the last of its cells: that one has the sheet's number. */
function lowerRow(entry: TitleBlockFields, { titleBlock: terms }: SheetWords): Cell[] {
  return [
    cell(terms.scale, entry.documentType ? '–' : scaleText(entry.scale), 0, 30),
    cell(terms.units, terms.unitNames[entry.units], 30, 60),
    cell(terms.number, entry.number, 60, 120),
    cell(terms.date, entry.date, 120, 150),
  ];
}

function middleRow(entry: TitleBlockFields, { titleBlock: terms }: SheetWords): Cell[] {
  const lines: [string, number][] = [
    [entry.title, 5],
    [entry.subtitle, 3.5],
  ];
  const title = { caption: terms.title, lines, ...columns(60, 180) };
  return [{ caption: terms.owner, lines: [[entry.owner, 3.5]], ...columns(0, 60) }, title];
}

function upperRow(entry: TitleBlockFields, { titleBlock: terms }: SheetWords): Cell[] {
  return [
    cell(terms.creator, entry.creator, 0, 60),
    cell(terms.approved, entry.approved, 60, 120),
    cell(terms.documentType, documentTypeOf(entry, terms), 120, 180),
  ];
}

function documentTypeOf(entry: TitleBlockFields, terms: SheetWords['titleBlock']): string {
  return entry.documentType ?? (entry.scale ? terms.picture : terms.pattern);
}

function cell(caption: string, text: string, from: number, to: number): Cell {
  return { caption, lines: [[text, 2.5]], ...columns(from, to) };
}

function columns(from: number, to: number): { from: number; to: number } {
  return { from: from / titleBlockWidth, to: to / titleBlockWidth };
}

/** The caption at the top of the cell, the text below it, and the rule on the cell's left unless it is the first. */
function cellInk(cell: Cell, row: Bounds): Ink {
  const left = row.minX + cell.from * widthOf(row);
  const divider = cell.from === 0 ? [] : [rule({ x: left, y: row.minY }, { x: left, y: row.maxY })];
  return inkTogether(captionInk(cell, row), ...linesInk(cell, row), ...divider);
}

function captionInk({ caption, ...place }: Cell, row: Bounds): Ink {
  return lineInk(caption, captionHeight, row.maxY - padding.above, place, row);
}

function linesInk({ lines, ...place }: Cell, row: Bounds): Ink[] {
  let top = below(row.maxY - padding.above, captionHeight);
  return lines.map(([text, height]) => {
    const ink = lineInk(text, height, top, place, row);
    top = below(top, height);
    return ink;
  });
}

/** Where the next line begins. */
function below(top: number, height: number): number {
  return top - ascenderPart * height - descenderPart * height - padding.below;
}

function lineInk(
  text: string,
  height: number,
  top: number,
  { from, to }: Pick<Cell, 'from' | 'to'>,
  row: Bounds,
): Ink {
  const width = widthOf(row);
  const fitted = fitText(text, (to - from) * width - 2 * padding.side, height);
  const at = { x: row.minX + from * width + padding.side, y: top - ascenderPart * height };
  return words(fitted.text, at, fitted.height);
}
