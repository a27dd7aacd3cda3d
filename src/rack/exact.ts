/**
 * The best choice for one or two sets from a small rack, proven in all aims.
 *
 * Where few patterns (so many staves of each class) close, all are listed and the best packing of them is sought;
 * see `levels`. Where they are many, the aims before the last are met by many choices and the rest decides: choices
 * for all sets together are listed, best first, until one can be parted into sets; see `exact-unions.ts`.
 */

import { COMPARED_TO, hundredths, type ClosedSet } from './aims.js';
import { classesOf, type StaveClass } from './classes.js';
import { Effort } from './effort.js';
import { bestUnion } from './exact-levels.js';
import type { Outcome, ProvenSets } from './exact-unions.js';
import { bestOfFewLeft } from './leave-few.js';
import { bestPacking, closingPattern, type ClosingPattern } from './packing.js';
import { eachPattern } from './patterns.js';
import type { Pool } from './pool.js';
import { closingWindows, ROUNDING, type Window } from './window.js';

export interface ExactAnswer {
  /** null when none was found */
  readonly sets: readonly ClosedSet[] | null;
  /** no method can make more, of the number asked for */
  readonly upperBound: number;
  readonly provenBest: boolean;
}

/** Yields now and then, so that the caller may stop it there. */
export function* chooseExactly(pool: Pool, most: number): Generator<null, ExactAnswer> {
  const classes = classesOf(pool);
  for (let sets = most; sets > 0; sets--) {
    const found = yield* bestOf(pool, classes, sets);
    if (found === 'unknown') return { sets: null, upperBound: sets, provenBest: false };
    if (found !== 'none') return { ...found, upperBound: sets };
  }
  return { sets: [], upperBound: 0, provenBest: true };
}

type Found = ProvenSets | 'none' | 'unknown';

function* bestOf(pool: Pool, classes: readonly StaveClass[], sets: number): Generator<null, Found> {
  const all = levels(pool);
  for (const level of all) {
    yield null;
    const lists = listPatterns(pool, classes, level);
    if (!lists) return (yield* bestOfMany(pool, classes, sets)) ?? 'unknown';
    yield null;
    const effort = new Effort(PACKING_STEPS);
    const packed = bestPacking(pool, classes, lists, sets, effort);
    if (effort.exhausted) {
      const united = yield* bestOfMany(pool, classes, sets);
      if (united === 'none' || united?.provenBest) return united;
      return packed ? { sets: packed, provenBest: false } : 'unknown';
    }
    if (packed && (level === all.at(-1) || isWithin(packed, level)))
      return { sets: packed, provenBest: true };
  }
  return 'none';
}

/** Where patterns are many. */
function* bestOfMany(
  pool: Pool,
  classes: readonly StaveClass[],
  sets: number,
): Generator<null, Outcome> {
  const left = sets === 2 ? yield* bestOfFewLeft(pool, classes) : null;
  if (left === 'none' || left?.provenBest) return left;
  return (yield* bestUnion(pool, classes, sets)) ?? left;
}

/** Work allowed, in steps. */
const LISTING_STEPS = 3_000_000;
const PACKING_STEPS = 3_000_000;
/** More patterns than this are many. */
const MANY = 8000;

/**
 * All patterns planed and deviating by no more than this. A packing whose sums keep to it is the best of all, since
 * each set of a better one would keep to it too.
 */
interface Level {
  /** in hundredths of a millimetre */
  readonly planing: number;
  /** mm */
  readonly deviation: number;
  /** whether all deviations within the tolerance are in */
  readonly isWide: boolean;
  readonly window: Window;
}

/** Narrow levels first: few patterns, and most racks are done there. The last one holds every pattern. */
function levels(pool: Pool): readonly Level[] {
  const { tolerance, plane } = pool.request;
  const close = [0.01, 0.1].filter((limit) => limit < tolerance);
  const planed = [0, 0.05, 0.5].filter((limit) => limit < plane);
  return [
    ...close.map((deviation) => ({ planing: 0, deviation, isWide: false })),
    ...[...planed, plane].map((limit) => ({
      planing: Math.round(limit / COMPARED_TO),
      deviation: tolerance,
      isWide: true,
    })),
  ].map((level) => {
    // planing is rounded to whole hundredths, so a little more than the limit of a level may be in it
    const limit = level.isWide ? Math.min(plane, (level.planing + 0.6) * COMPARED_TO) : 0;
    return { ...level, window: closingWindows(pool, level.deviation, limit).outer };
  });
}

function isWithin(sets: readonly ClosedSet[], { planing, deviation, isWide }: Level): boolean {
  const planed = sets.reduce((sum, set) => sum + set.planing, 0);
  const strayed = sets.reduce((sum, set) => sum + set.deviation, 0);
  if (isWide) return planed <= planing;
  return planed === 0 && (hundredths(strayed) + 1) * COMPARED_TO <= deviation + ROUNDING;
}

interface Lists {
  readonly first: readonly ClosingPattern[];
  readonly others: readonly ClosingPattern[];
}

/** Null when they are too many to be listed. */
function listPatterns(pool: Pool, classes: readonly StaveClass[], { window }: Level): Lists | null {
  const { count, bung } = pool.request;
  const list = (withStanding: boolean): readonly ClosingPattern[] | null => {
    const effort = new Effort(LISTING_STEPS);
    const found: ClosingPattern[] = [];
    const question = { classes, count, window, bungs: bung === null ? 0 : 1, withStanding };
    const areAll = eachPattern(question, effort, (numbers) => {
      const pattern = closingPattern(pool, classes, numbers);
      if (pattern) found.push(pattern);
      if (found.length > MANY) effort.end();
    });
    return areAll ? found : null;
  };
  const first = list(true);
  const others = pool.standing.length > 0 && first ? list(false) : first;
  return first && others && { first, others };
}
