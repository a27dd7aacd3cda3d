/** Widths as they are typed or pasted: one, or one a line, as a caliper or a spreadsheet gives them. */
import { readLength, type LengthProblem, type Units } from '../state/read-length.js';

/** Narrower or wider is a slip; the core's reader draws the same line. */
const ordinary = { least: 10, most: 400 };

export type WidthProblem = LengthProblem | 'no-stave';

export interface TypedWidths {
  readonly widths: readonly number[];
  /** the first line that is no width; nothing is taken then */
  readonly wrong: { readonly text: string; readonly problem: WidthProblem } | null;
}

export function typedWidths(text: string, units: Units): TypedWidths {
  const lines = text.split(/[\r\n\t;]+/).filter((line) => line.trim() !== '');
  if (lines.length === 0) return { widths: [], wrong: { text: '', problem: 'empty' } };
  const widths: number[] = [];
  for (const line of lines) {
    const read = readLength(line, units);
    const problem = 'problem' in read ? read.problem : isOrdinary(read.mm) ? null : 'no-stave';
    if (problem) return { widths: [], wrong: { text: line.trim(), problem } };
    if ('mm' in read) widths.push(read.mm);
  }
  return { widths, wrong: null };
}

const isOrdinary = (mm: number): boolean => mm >= ordinary.least && mm <= ordinary.most;

/** A table with a heading, and not a row of widths. */
export const isTable = (text: string): boolean =>
  /^[^\n]*\bmark\b/i.test(text.replace(/^\uFEFF/, ''));
