/** Blocks that a form is set in: headings, numbers, the list, labels. Lettering to be read at arm's length, 3.5 mm and up. */
import type { FormEntry } from '../drawing/form.js';
import { heights } from '../drawing/heights.js';
import { ascenderPart, descenderPart, textWidth } from '../drawing/lettering.js';
import { wrap } from '../drawing/wrap.js';
import { inkTogether, lineWidths, moveInk, rectangle, rule, words } from './ink.js';
import type { Ink } from './sheet.js';

/** Of all lettering of a form, mm. */
export const formHeight = heights.normal;
/** A line of text with room for accents and descenders. */
export const linePitch = (ascenderPart + descenderPart) * formHeight + 0.05;
const ascender = ascenderPart * formHeight;

/** Its upper left corner is the origin; it reaches down to `-height`. */
export interface FormBlock {
  readonly ink: Ink;
  readonly height: number;
}

export function stacked(blocks: readonly FormBlock[], gap = 0): FormBlock {
  let height = 0;
  const inks = blocks.map((block, i) => {
    const top = height + (i === 0 ? 0 : gap);
    height = top + block.height;
    return moveInk(block.ink, 0, -top);
  });
  return { ink: inkTogether(...inks), height };
}

/** Wrapped lines from `left` to `right`. */
export function paragraph(text: string, left: number, right: number): FormBlock {
  const lines = wrap(text, formHeight, right - left);
  return {
    ink: inkTogether(...lines.map((line, i) => textLine(line, left, i * linePitch))),
    height: lines.length * linePitch,
  };
}

/** One line whose box begins `down` below the origin. */
export function textLine(
  text: string,
  x: number,
  down: number,
  align: 'left' | 'right' = 'left',
): Ink {
  return words(text, { x, y: -down - ascender }, formHeight, { align });
}

/** A line of text over a wide rule. */
export function headingBlock(text: string, width: number): FormBlock {
  const set = paragraph(text, 0, width);
  const y = -set.height - 0.4;
  const under = rule({ x: 0, y }, { x: width, y }, lineWidths.wide);
  return { ink: inkTogether(set.ink, under), height: set.height + 1.4 };
}

const columnGap = 8;

/** Names on the left and values on the right of two columns, read downwards. */
export function numbersBlock(entries: readonly FormEntry[], width: number): FormBlock {
  const rows = Math.ceil(entries.length / 2);
  const column = (width - columnGap) / 2;
  const columns = [entries.slice(0, rows), entries.slice(rows)].map((part, i) =>
    moveInk(numbersColumn(part, column), i * (column + columnGap), 0),
  );
  return { ink: inkTogether(...columns), height: rows * linePitch };
}

function numbersColumn(entries: readonly FormEntry[], width: number): Ink {
  const lines = entries.map(({ name, value }, i) => {
    const room = width - textWidth(value, formHeight) - 2;
    const [first = ''] = wrap(name, formHeight, room);
    return inkTogether(
      textLine(first, 0, i * linePitch),
      textLine(value, width, i * linePitch, 'right'),
    );
  });
  return inkTogether(...lines);
}

/** A finger holds it, and it goes on the narrowest stave. */
const labelSize = { width: 23, height: 7.5 };

/** Labels in rows, each row a block; neighbours share the line to cut along. */
export function labelRows(texts: readonly string[], width: number): FormBlock[] {
  const widest = Math.max(...texts.map((text) => textWidth(text, formHeight))) + 4;
  const inRow = Math.max(1, Math.floor(width / Math.max(labelSize.width, widest)));
  const cell = width / inRow;
  const rows: FormBlock[] = [];
  for (let from = 0; from < texts.length; from += inRow)
    rows.push(labelRow(texts.slice(from, from + inRow), cell, from === 0));
  return rows;
}

function labelRow(texts: readonly string[], cell: number, isFirst: boolean): FormBlock {
  const { height } = labelSize;
  const right = texts.length * cell;
  const down = (height - linePitch) / 2;
  const uprights = Array.from({ length: texts.length + 1 }, (_, i) =>
    rule({ x: i * cell, y: 0 }, { x: i * cell, y: -height }),
  );
  return {
    ink: inkTogether(
      ...texts.map((text, i) =>
        textLine(text, i * cell + (cell - textWidth(text, formHeight)) / 2, down),
      ),
      ...uprights,
      ...(isFirst ? [rule({ x: 0, y: 0 }, { x: right, y: 0 })] : []),
      rule({ x: 0, y: -height }, { x: right, y: -height }),
    ),
    height,
  };
}

/** A box to tick, as high as it is wide, at a place in a block. */
export function tickBox(x: number, down: number, size: number): Ink {
  return rectangle({ minX: x, maxX: x + size, minY: -down - size, maxY: -down }, lineWidths.narrow);
}
