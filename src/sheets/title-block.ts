/** The title block: the data fields of ISO 7200:2004, and scale and units beside them, in cells of equal columns. */
import { ascenderPart, descenderPart } from '../drawing/lettering.js';
import { scaleText } from '../drawing/scale.js';
import type { Bounds } from '../geometry/measure.js';
import { fitText } from './fit-text.js';
import { inkTogether, lineWidths, rectangle, rule, words } from './ink.js';
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

/** One sheet's title block. */
export interface TitleBlockEntry extends TitleBlock {
  readonly units: Units;
  /** of a picture; 1:1 without it */
  readonly scale?: number;
  /** of a document that draws nothing, and so has no scale */
  readonly documentType?: string;
  readonly sheet: number;
  readonly sheets: number;
}

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
  const box = titleBlockBox(space);
  const rows = [
    { cells: lowerRow(entry, terms), height: low },
    { cells: middleRow(entry, terms), height: high },
    { cells: upperRow(entry, terms), height: low },
  ];
  let bottom = box.minY;
  const parts = rows.map(({ cells, height }, index) => {
    const row = { ...box, minY: bottom, maxY: bottom + height };
    bottom = row.maxY;
    return inkTogether(
      ...cells.map((cell) => cellInk(cell, row)),
      ...(index === 0 ? [] : [rule({ x: row.minX, y: row.minY }, { x: row.maxX, y: row.minY })]),
    );
  });
  return inkTogether(rectangle(box, lineWidths.frame), ...parts);
}

export function titleBlockBox({ minX, minY, maxX }: Bounds): Bounds {
  const width = Math.min(titleBlockWidth, maxX - minX);
  return { minX: maxX - width, minY, maxX, maxY: minY + titleBlockHeight };
}

function lowerRow(entry: TitleBlockEntry, { titleBlock: terms }: SheetWords): Cell[] {
  return [
    cell(terms.scale, entry.documentType ? '–' : scaleText(entry.scale), 0, 30),
    cell(terms.units, terms.unitNames[entry.units], 30, 60),
    cell(terms.number, entry.number, 60, 120),
    cell(terms.date, entry.date, 120, 150),
    cell(terms.sheet, terms.sheetOf(entry.sheet, entry.sheets), 150, 180),
  ];
}

function middleRow(entry: TitleBlockEntry, { titleBlock: terms }: SheetWords): Cell[] {
  const lines: [string, number][] = [
    [entry.title, 5],
    [entry.subtitle, 3.5],
  ];
  const title = { caption: terms.title, lines, ...columns(60, 180) };
  return [{ caption: terms.owner, lines: [[entry.owner, 3.5]], ...columns(0, 60) }, title];
}

function upperRow(entry: TitleBlockEntry, { titleBlock: terms }: SheetWords): Cell[] {
  return [
    cell(terms.creator, entry.creator, 0, 60),
    cell(terms.approved, entry.approved, 60, 120),
    cell(terms.documentType, documentTypeOf(entry, terms), 120, 180),
  ];
}

function documentTypeOf(entry: TitleBlockEntry, terms: SheetWords['titleBlock']): string {
  return entry.documentType ?? (entry.scale ? terms.picture : terms.pattern);
}

function cell(caption: string, text: string, from: number, to: number): Cell {
  return { caption, lines: [[text, 2.5]], ...columns(from, to) };
}

function columns(from: number, to: number): { from: number; to: number } {
  return { from: from / titleBlockWidth, to: to / titleBlockWidth };
}

/** The caption at the top of the cell, the text below it, and the rule on the cell's left unless it is the first. */
function cellInk({ caption, lines, from, to }: Cell, row: Bounds): Ink {
  const width = widthOf(row);
  const left = row.minX + from * width;
  const room = (to - from) * width - 2 * padding.side;
  let top = row.maxY - padding.above;
  const placed = [[caption, captionHeight] as const, ...lines].map(([text, height]) => {
    const fitted = fitText(text, room, height);
    const baseline = top - ascenderPart * height;
    top = baseline - descenderPart * height - padding.below;
    return words(fitted.text, { x: left + padding.side, y: baseline }, fitted.height);
  });
  const divider = from === 0 ? [] : [rule({ x: left, y: row.minY }, { x: left, y: row.maxY })];
  return inkTogether(...placed, ...divider);
}
