/** Reads what is asked of a rack from the boxes that it is typed into. Knows nothing of the page. */
import type { Wishes } from '../../index.js';
import { marksIn } from './standing.js';
import { readLength, type LengthProblem, type Units } from '../state/read-length.js';

export type WishBox = 'vessels' | 'count' | 'tolerance' | 'plane' | 'bung';
export type WishProblem = LengthProblem | 'no-vessels' | 'no-count';

interface Asked {
  readonly asMany: boolean;
  readonly noBung: boolean;
  readonly measured: 'blank' | 'backed';
  readonly units: Units;
  /** marks, as typed */
  readonly standing: string;
}

type Problems = Partial<Record<WishBox, WishProblem>>;

/** Boxes to wishes, or what is wrong in which box. */
export function readWishes(
  text: Readonly<Record<WishBox, string>>,
  asked: Asked,
): { readonly wishes: Wishes } | { readonly problems: Problems } {
  const problems: Problems = {};
  const lengthIn = (box: 'tolerance' | 'plane' | 'bung'): number | undefined => {
    if (text[box].trim() === '') return undefined;
    const read = readLength(text[box], asked.units);
    if ('mm' in read) return read.mm;
    problems[box] = read.problem;
    return undefined;
  };
  const vessels = asked.asMany ? 'max' : vesselsOf(text.vessels);
  if (vessels === null) problems.vessels = 'no-vessels';
  const count = countOf(text.count);
  if (count === null) problems.count = 'no-count';
  const [tolerance, plane] = [lengthIn('tolerance'), lengthIn('plane')];
  const bung = asked.noBung ? null : lengthIn('bung');
  if (Object.keys(problems).length > 0) return { problems };
  const standing = marksIn(asked.standing);
  return {
    wishes: {
      vessels: vessels!,
      measured: asked.measured,
      ...(count && { count }),
      ...(tolerance !== undefined && { tolerance }),
      ...(plane !== undefined && { plane }),
      ...(bung !== undefined && { bung }),
      ...(standing.length > 0 && { standing }),
    },
  };
}

function vesselsOf(text: string): number | null {
  const number = text.trim();
  return /^\d{1,3}$/.test(number) && Number(number) > 0 ? Number(number) : null;
}

/** `28`, `25-30`; undefined where nothing is typed, null where it is no count. */
export function countOf(text: string): { min: number; max: number } | null | undefined {
  if (text.trim() === '') return undefined;
  const found = /^(\d{1,3})(?:\s*[-–]\s*(\d{1,3}))?$/.exec(text.trim());
  if (!found) return null;
  const [min, max] = [Number(found[1]), Number(found[2] ?? found[1])];
  return min >= 3 && max >= min ? { min, max } : null;
}

/** How many vessels so many staves are enough for, at the fewest staves a vessel; null where more are not asked for. */
export function tooManyVessels(text: string, staves: number, fewest: number): number | null {
  const [vessels, most] = [vesselsOf(text), Math.floor(staves / fewest)];
  return vessels !== null && staves > 0 && vessels > most ? most : null;
}
