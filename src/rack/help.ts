/**
 * What would make one set more: so many staves of such widths. The sets already made are kept, and one more is made
 * from what is left on the rack and the new staves; every width named has been tried by choosing again.
 */

import type { ClosedSet } from './aims.js';
import { upperBound } from './bound.js';
import type { Driver } from './drive.js';
import { makePool, type Pool } from './pool.js';
import type { Help } from './request.js';
import { search } from './search.js';
import type { StockStave } from './stock.js';

/** More new staves than this are a new rack, not a help. */
const MOST_STAVES = 8;
/** Widths are tried this far apart, mm. */
const STEP = 1;
/** A range of widths is as good as any beyond this, mm. */
const WIDEST_RANGE = 6;

/** Null when nothing that could be tried helps. */
export async function helpFor(
  pool: Pool,
  sets: readonly ClosedSet[],
  driver: Driver,
): Promise<Help | null> {
  if (pool.staves.length === 0) return null;
  const used = new Set(sets.flatMap(({ staves }) => staves));
  const rest = pool.staves.filter((_, i) => !used.has(i));
  const standing = sets.length === 0 ? (pool.request.standing ?? []) : [];
  const trial: Trial = { pool, rest, standing, driver };
  const makesSet = sets.length + 1;
  let best: Help | null = null;
  let most = MOST_STAVES;
  for (let staves = 1; staves <= most; staves++) {
    const range = await widthsThatHelp(trial, staves);
    if (driver.stopped || (range && isEasy(range))) return range && { staves, ...range, makesSet };
    if (range && !best) {
      best = { staves, ...range, makesSet };
      most = Math.min(MOST_STAVES, staves + MORE_FOR_EASE);
    }
  }
  return best;
}

/** A width that must be met to the millimetre is hard to find: so many staves more may be asked for instead. */
const MORE_FOR_EASE = 2;
const EASY_RANGE = 3;

function isEasy({ fromWidth, toWidth }: Range): boolean {
  return toWidth - fromWidth >= EASY_RANGE;
}

interface Trial {
  readonly pool: Pool;
  readonly rest: readonly StockStave[];
  readonly standing: readonly string[];
  readonly driver: Driver;
}

type Range = Pick<Help, 'fromWidth' | 'toWidth'>;

/** The first unbroken range of widths, from narrow to wide, that makes a set; null when none does. */
async function widthsThatHelp(trial: Trial, staves: number): Promise<Range | null> {
  const { narrowest, widest } = ordinaryWidths(trial.pool);
  let from: number | null = null;
  for (let w = narrowest; w <= widest; w += STEP) {
    const helps = await makesASet(trial, staves, w);
    if (!helps && from !== null) return { fromWidth: from, toWidth: w - STEP };
    if (helps) from ??= w;
    if (from !== null && w - from >= WIDEST_RANGE) return { fromWidth: from, toWidth: w };
  }
  return null;
}

/** Widths worth asking for: the rack's own, or about what equal staves would need, in whole mm. */
function ordinaryWidths({ request, width }: Pool): { narrowest: number; widest: number } {
  const { diameter, count, bung } = request;
  const [narrow, wide] = [width[0]!, width.at(-1)!];
  const girth = Math.PI * diameter;
  return {
    narrowest: Math.floor(Math.min(narrow, (SPREAD_DOWN * girth) / count.max)),
    widest: Math.ceil(Math.max(wide, (SPREAD_UP * girth) / count.min, (bung ?? 0) + WIDEST_RANGE)),
  };
}

/** How far widths of one set commonly lie from those of equal staves: down to and up to these shares. */
const SPREAD_DOWN = 0.85;
const SPREAD_UP = 1.2;

/** Chooses one set from what is left and so many new staves of one width. */
async function makesASet(trial: Trial, staves: number, width: number): Promise<boolean> {
  const { pool, rest, standing, driver } = trial;
  if (driver.stopped) return false;
  const unstated = { width, length: null, thickness: null, bung: null, note: '' };
  const added = Array.from({ length: staves }, (_, k) => ({ ...unstated, mark: `\u0000${k}` }));
  const tried = makePool([...rest, ...added], { ...pool.request, vessels: 1, standing });
  if (upperBound(tried).sets === 0) return false;
  const progress = { stage: 'choosing', done: 0, of: 1 } as const;
  const { result } = await driver.run(search(tried, 1), () => progress);
  return result?.length === 1;
}
