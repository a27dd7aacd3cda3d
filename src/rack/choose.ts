/** Chooses the staves of each set: by the exact method where the rack is small enough for it, else by search. */

import { aimsOf, closeSet, compareAims, type ClosedSet } from './aims.js';
import { upperBound, type Bound } from './bound.js';
import { classesOf } from './classes.js';
import type { Driver } from './drive.js';
import { chooseExactly, type ExactAnswer } from './exact.js';
import { mostOnGrid } from './kind-attempt.js';
import type { Pool } from './pool.js';
import type { Shortfall } from './request.js';
import { search, type SearchState } from './search.js';

export interface Choice {
  readonly sets: readonly ClosedSet[];
  /** no method can make more, of the number asked for */
  readonly upperBound: number;
  /** whether no choice is better by any of the aims */
  readonly provenBest: boolean;
  /** null when there are as many sets as were asked for */
  readonly shortfall: Shortfall | null;
}

export async function choose(pool: Pool, driver: Driver): Promise<Choice> {
  const bound = upperBound(pool);
  const exact = isSmall(pool, bound.sets) ? await chooseSmall(pool, bound.sets, driver) : null;
  const most = exact?.upperBound ?? mostOnGrid(pool, classesOf(pool), bound.sets);
  const sets = exact?.provenBest ? exact.sets! : await searchFor(pool, most, exact, driver);
  return {
    sets: inOrder(pool, sets),
    upperBound: most,
    provenBest: exact?.provenBest ?? most === 0,
    shortfall: shortfallOf(pool, { ...bound, proven: most }, sets.length, driver.stopped),
  };
}

/** Racks that the exact method is tried on. */
const SMALL = { sets: 2, staves: 120 };

function isSmall(pool: Pool, sets: number): boolean {
  return sets > 0 && sets <= SMALL.sets && pool.staves.length <= SMALL.staves;
}

async function chooseSmall(pool: Pool, sets: number, driver: Driver): Promise<ExactAnswer | null> {
  const progress = { stage: 'choosing', done: 0, of: sets } as const;
  return (await driver.run(chooseExactly(pool, sets), () => progress)).result;
}

async function searchFor(
  pool: Pool,
  most: number,
  exact: ExactAnswer | null,
  driver: Driver,
): Promise<readonly ClosedSet[]> {
  const { result, state } = await driver.run(search(pool, most), ({ best }) => ({
    stage: 'choosing',
    done: best.length,
    of: most,
  }));
  const sets = result ?? (state ? salvage(pool, state) : []);
  return exact?.sets ? better(pool, exact.sets, sets) : sets;
}

function better(pool: Pool, a: readonly ClosedSet[], b: readonly ClosedSet[]) {
  return compareAims(aimsOf(pool, a), aimsOf(pool, b)) <= 0 ? a : b;
}

/** The better of the best answer so far and those sets on the bench that close already. */
function salvage(pool: Pool, { best, layout }: SearchState): readonly ClosedSet[] {
  const closed = layout?.sets.flatMap((staves) => closeSet(pool, staves) ?? []) ?? [];
  const standing = pool.standing[0];
  const kept = standing === undefined || closed.some(({ staves }) => staves.includes(standing));
  if (!kept) return best;
  return better(pool, best, closed);
}

/** The set with the standing staves first, then those that close best. */
function inOrder(pool: Pool, sets: readonly ClosedSet[]): readonly ClosedSet[] {
  const standing = pool.standing[0];
  const rank = ({ staves }: ClosedSet): number =>
    standing !== undefined && staves.includes(standing) ? 0 : 1;
  return [...sets].sort(
    (a, b) =>
      rank(a) - rank(b) ||
      a.planing - b.planing ||
      a.deviation - b.deviation ||
      a.staves[0]! - b.staves[0]!,
  );
}

function shortfallOf(
  pool: Pool,
  bound: Bound & { readonly proven: number },
  found: number,
  stopped: boolean,
): Shortfall | null {
  const { vessels } = pool.request;
  if (found === vessels || (vessels === 'max' && found > 0 && !stopped)) return null;
  if (stopped) return { reason: 'stopped', girthMissing: 0 };
  if (found === bound.sets) return bound.shortfall;
  if (found === 0 && pool.standing.length > 0) return { reason: 'standing', girthMissing: 0 };
  return { reason: found === bound.proven ? 'widths' : 'search', girthMissing: 0 };
}
