/** From what is typed into a box to what stands in the file. */
import type { Plain } from './edit-spec.js';
import type { Field } from './fields.js';
import { readDecimal, readLength, type LengthProblem, type Units } from './read-length.js';

export type FieldProblem = LengthProblem | 'not-a-number';
export type FieldRead = { readonly value: Plain } | { readonly problem: FieldProblem };

/** An empty box is the problem `empty`: the key is left to its default. */
export function readField({ kind }: Field, typed: string, units: Units): FieldRead {
  if (typed.trim() === '') return { problem: 'empty' };
  if (kind === 'text' || kind === 'choice') return { value: typed.replace(/[\r\n]+/g, ' ').trim() };
  if (kind === 'length') return lengthOf(typed, units);
  if (kind === 'lengths') return lengthsOf(typed, units);
  const number = readDecimal(typed.trim().replace(/\s*[°%]$/, ''), true);
  return typeof number === 'number' ? { value: number } : { problem: 'not-a-number' };
}

function lengthOf(typed: string, units: Units): FieldRead {
  const read = readLength(typed, units);
  return 'problem' in read ? read : { value: read.written };
}

/** Parted by semicolons, line breaks, or commas with a blank after them, since a comma alone may be a decimal one. */
function lengthsOf(typed: string, units: Units): FieldRead {
  const parts = typed.split(/[;\n]|,\s+/).filter((part) => part.trim() !== '');
  const reads = parts.map((part) => readLength(part, units));
  const wrong = reads.find((read) => 'problem' in read);
  if (wrong && 'problem' in wrong) return wrong;
  return { value: reads.map((read) => ('written' in read ? read.written : '')) };
}
