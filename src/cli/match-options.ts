/** The options of `match`, read in the units of the spec. */
import { InvalidArgumentError } from 'commander';
import type { Spec, Wishes } from '../index.js';
import { givenLength, noLength } from './given-length.js';
import type { Speaking } from './language-option.js';

export interface MatchOptions extends Speaking {
  readonly stock: string;
  readonly vessels?: number | 'max';
  readonly count?: { readonly min: number; readonly max: number };
  readonly tolerance?: string;
  readonly plane?: string;
  readonly bung?: string;
  readonly measured?: 'blank' | 'backed';
  readonly standing?: readonly string[];
  readonly swap?: string;
  readonly seed?: number;
  readonly json?: true;
  readonly out?: string;
  readonly replace?: true;
  readonly quiet?: true;
}

/** Or what is wrong with them. */
export function wishesOf(options: MatchOptions, units: Spec['units']): Wishes | string {
  const lengths: { tolerance?: number; plane?: number; bung?: number | null } = {};
  for (const name of ['tolerance', 'plane', 'bung'] as const) {
    const text = options[name];
    if (text === undefined) continue;
    if (name === 'bung' && text === 'none') {
      lengths.bung = null;
      continue;
    }
    const length = givenLength(text, units, name !== 'bung');
    if (length === null) return noLength(`--${name}`, text, units);
    lengths[name] = length;
  }
  const { vessels, count, measured, standing, seed } = options;
  return {
    ...lengths,
    ...(vessels !== undefined && { vessels }),
    ...(count && { count }),
    ...(measured && { measured }),
    ...(standing && { standing }),
    ...(seed !== undefined && { seed }),
  };
}

/** A whole number, or `max`. */
export function vesselsOf(text: string): number | 'max' {
  if (text.trim() === 'max') return 'max';
  if (/^\d{1,6}$/.test(text.trim()) && Number(text) > 0) return Number(text);
  throw new InvalidArgumentError('Give a whole number above 0, or max.');
}

/** `28`, or `25-30`. */
export function countOf(text: string): { min: number; max: number } {
  const match = /^\s*(\d{1,6})(?:\s*-\s*(\d{1,6}))?\s*$/.exec(text);
  if (!match)
    throw new InvalidArgumentError('Give how many staves a vessel may have, such as 28 or 25-30.');
  return { min: Number(match[1]), max: Number(match[2] ?? match[1]) };
}

/** Marks with commas between them. */
export function marksOf(text: string): string[] {
  const marks = text.split(',').map((mark) => mark.trim());
  if (marks.every((mark) => mark !== '')) return marks;
  throw new InvalidArgumentError('Give the marks of the staves with commas between them: A4,B17.');
}

export function seedOf(text: string): number {
  if (/^\d{1,9}$/.test(text.trim())) return Number(text);
  throw new InvalidArgumentError('Give a whole number.');
}
