/** The list of a form to cut by: one line a row, a thin rule under each; a long name takes more lines. */
import type { Table } from '../drawing/drawing.js';
import { textWidth } from '../drawing/lettering.js';
import { wrap } from '../drawing/wrap.js';
import { formHeight, linePitch, textLine, type FormBlock } from './form-block.js';
import { inkTogether, lineWidths, rule } from './ink.js';

const between = 4;
/** Below the text of a row, its rule included. */
const below = 0.7;

/** Headings first, then the rows: each a block. The first column takes the room that the others leave. */
export function listRows({ headings, rows }: Table, width: number): FormBlock[] {
  const all = [headings, ...rows];
  const natural = headings.map((_, i) =>
    Math.max(...all.map((row) => textWidth(row[i] ?? '', formHeight))),
  );
  const rights: number[] = [];
  let right = width;
  for (let i = headings.length - 1; i > 0; i -= 1) {
    rights[i] = right;
    right -= natural[i]! + between;
  }
  return all.map((row, i) => listRow(row, right, rights, width, i === 0));
}

function listRow(
  [first = '', ...others]: readonly string[],
  firstWidth: number,
  rights: readonly number[],
  width: number,
  isHead: boolean,
): FormBlock {
  const lines = wrap(first, formHeight, firstWidth);
  const height = lines.length * linePitch + below;
  const y = -height + below / 2;
  return {
    ink: inkTogether(
      ...lines.map((line, i) => textLine(line, 0, i * linePitch)),
      ...others.map((text, i) => textLine(text, rights[i + 1]!, 0, 'right')),
      rule({ x: 0, y }, { x: width, y }, isHead ? lineWidths.narrow : lineWidths.fine),
    ),
    height,
  };
}
