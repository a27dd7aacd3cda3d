/** One step of a form: a box to tick, its number and title, boxes to write in, what to do, and the caution beside a bar. */
import type { FormEntry, FormStep } from '../drawing/form.js';
import { textWidth } from '../drawing/lettering.js';
import {
  formHeight,
  linePitch,
  paragraph,
  stacked,
  textLine,
  tickBox,
  type FormBlock,
} from './form-block.js';
import { inkTogether, lineWidths, moveInk, noInk, rectangle, rule } from './ink.js';
import type { Ink } from './sheet.js';

/** Where the words of a step begin, right of its box. */
const indent = 8;
const tick = 5;
/** To write a number in by hand. */
const box = { width: 21, height: 6.6 };
const rowHeight = 7.1;
const gap = 2.5;

export function stepBlock(step: FormStep, number: number, width: number): FormBlock {
  const title = `${number} ${step.title}`;
  const caution = cautionOf(step.caution, width);
  if (step.measures.length === 0) {
    const text = paragraph(`${title}. ${step.text}`, indent, width);
    return withTick(stacked([text, ...caution]), linePitch);
  }
  const text = paragraph(step.text, indent, width);
  return withTick(
    stacked([measuresBlock(title, step.measures, width), text, ...caution]),
    rowHeight,
  );
}

/** The box to tick, in the middle of the first row. */
function withTick({ ink, height }: FormBlock, firstRow: number): FormBlock {
  return { ink: inkTogether(tickBox(0, (firstRow - tick) / 2, tick), ink), height };
}

/** The title with boxes beside it, and in rows below it where there are more. */
function measuresBlock(title: string, measures: readonly FormEntry[], width: number): FormBlock {
  const titleEnd = indent + textWidth(title, formHeight) + 2 * gap;
  const rows = measureRows(measures, titleEnd, width);
  return {
    ink: inkTogether(
      textLine(title, indent, (rowHeight - linePitch) / 2),
      ...rows.map((row, i) => moveInk(row, 0, -i * rowHeight)),
    ),
    height: rows.length * rowHeight,
  };
}

function cautionOf(text: string, width: number): FormBlock[] {
  if (text === '') return [];
  const set = paragraph(text, indent + 3, width);
  const x = indent + 1;
  const bar = rule({ x, y: -0.8 }, { x, y: -set.height + 0.8 }, lineWidths.frame);
  return [{ ink: inkTogether(set.ink, bar), height: set.height }];
}

/** Boxes from the right; the first row begins after the title, the others at the indent. At least one box a row. */
function measureRows(measures: readonly FormEntry[], titleEnd: number, width: number): Ink[] {
  const rows: FormEntry[][] = [];
  let left = titleEnd;
  let room = width - left;
  for (const measure of measures) {
    const needed = measureWidth(measure);
    if (rows.length === 0 || needed > room) {
      // the title's own row stays empty when not even one box fits beside it
      if (rows.length === 0 && needed > room) rows.push([]);
      rows.push([]);
      left = rows.length === 1 ? titleEnd : indent;
      room = width - left;
    }
    rows.at(-1)!.push(measure);
    room -= needed + 2 * gap;
  }
  return rows.map((row) => measureRow(row, width));
}

const nameOf = ({ name, value }: FormEntry): string => (value === '' ? name : `${name} ${value}`);

function measureWidth(measure: FormEntry): number {
  return textWidth(nameOf(measure), formHeight) + gap + box.width;
}

function measureRow(row: readonly FormEntry[], width: number): Ink {
  let right = width;
  let ink = noInk;
  for (const measure of [...row].reverse()) {
    const left = right - box.width;
    const top = -(rowHeight - box.height) / 2;
    ink = inkTogether(
      textLine(nameOf(measure), left - gap, (rowHeight - linePitch) / 2, 'right'),
      rectangle({ minX: left, maxX: right, minY: top - box.height, maxY: top }, lineWidths.narrow),
      ink,
    );
    right -= measureWidth(measure) + 2 * gap;
  }
  return ink;
}
