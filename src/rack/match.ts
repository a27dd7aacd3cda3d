/**
 * From a rack and a request to sets that close:
 *
 *   stock --makePool--> pool --choose--> staves of each set --finishSets--> order, spares, sureness
 *                                   \--helpFor--> what would make one set more
 */

import type { ClosedSet } from './aims.js';
import { choose, type Choice } from './choose.js';
import { Driver } from './drive.js';
import { helpFor } from './help.js';
import { readingOrder } from './marks.js';
import { makePool, type Pool } from './pool.js';
import { finishSets } from './finish.js';
import type { MatchHooks, MatchRequest, MatchResult } from './request.js';
import type { Stock } from './stock.js';

/**
 * The sets that the rack gives, best by the aims in `aims.ts`. The request must have passed `checkRequest`. The
 * same stock, in whatever order, request and seed give the same answer, unless the hooks stop the search.
 */
export async function matchStaves(
  stock: Stock,
  request: MatchRequest,
  hooks: MatchHooks = {},
): Promise<MatchResult> {
  const started = hooks.now?.() ?? 0;
  const driver = new Driver(hooks);
  const pool = makePool(stock.staves, request);
  const choice = await choose(pool, driver);
  const sets = await finishSets(pool, choice.sets, stock.step, driver);
  const isShort = isHelpWorthwhile(pool, choice) && !driver.stopped;
  const help = isShort ? await helpFor(pool, choice.sets, driver) : null;
  return {
    sets,
    left: marksLeft(stock, pool, choice.sets),
    unfit: pool.unfit,
    upperBound: choice.upperBound,
    proven: choice.sets.length === choice.upperBound,
    provenBest: choice.provenBest,
    seconds: (hooks.now?.() ?? 0) - started,
    shortfall: choice.shortfall,
    help,
  };
}

function marksLeft(stock: Stock, pool: Pool, sets: readonly ClosedSet[]): readonly string[] {
  const used = new Set(sets.flatMap(({ staves }) => staves.map((i) => pool.staves[i]!.mark)));
  return stock.staves
    .filter(({ mark }) => !used.has(mark))
    .sort((a, b) => a.width - b.width || readingOrder(a.mark, b.mark))
    .map(({ mark }) => mark);
}

/** Where all were asked for, one set more matters on a small rack only. */
const SMALL_RACK = 400;

function isHelpWorthwhile({ request, staves }: Pool, { sets }: Choice): boolean {
  if (request.vessels === 'max') return staves.length <= SMALL_RACK;
  return sets.length < request.vessels;
}
