/** Parts choices of staves for one or two sets of known kinds: by a short walk on the grid, then by tables. */

import { COMPARED_TO, type ClosedSet } from './aims.js';
import { Parter } from './best-parting.js';
import type { Effort } from './effort.js';
import type { GridPartings } from './grid-partings.js';
import type { Grid, Kind } from './kinds.js';
import { leastDeviation } from './least-deviation.js';
import type { Pool } from './pool.js';
import type { Random } from './random.js';
import { split, splitOnGrid, type SplitLimit } from './split.js';
import { ROUNDING } from './window.js';

type Pair = readonly [Kind, Kind];

export class Divider {
  private readonly parter: Parter;

  constructor(
    private readonly pool: Pool,
    /** null when widths lie on none, or a fine one */
    private readonly grid: Grid | null,
    private readonly limit: Omit<SplitLimit, 'kinds'>,
    private readonly random: Random,
    private readonly effort: Effort,
  ) {
    this.parter = new Parter(pool, grid, random, effort);
  }

  /** As `split`. `pair`: of what kinds the sets are, in the order of their counts; null: of any. */
  part(
    staves: readonly number[],
    counts: readonly number[],
    pair: Pair | null,
  ): readonly ClosedSet[] | null | 'unknown' {
    const { pool, random, effort, grid } = this;
    if (this.straysTooFar(staves, counts)) return null;
    const limit = { ...this.limit, kinds: pair && { pair, grid: grid! } };
    const [large, small] = counts;
    if (!pair || small === undefined || pool.standing.length > 0)
      return split(pool, staves, counts, limit, random, effort);
    const onGrid = splitOnGrid(pool, staves, counts, limit, effort);
    if (onGrid !== 'unknown') return onGrid;
    const question = {
      staves: [...staves].sort((a, b) => a - b),
      counts: [large!, small],
    } as const;
    return this.parter.within(question, limit.deviation, pair[0].steps);
  }

  private straysTooFar(staves: readonly number[], counts: readonly number[]): boolean {
    if (counts.length === 1) return false;
    const most = (this.limit.deviation + 1) * COMPARED_TO;
    return leastDeviation(this.pool, staves, counts, most) > most + ROUNDING;
  }
}

/** Whether a choice has as many staves of the first table as two sets of such kinds may have. */
export function sharesOf(
  pair: Pair | null,
  tables: GridPartings | null,
): (numbers: Uint16Array) => boolean {
  const [ofOne, ofOther] = [pair?.[0].ofFirst, pair?.[1].ofFirst];
  if (!tables || !ofOne || !ofOther) return () => true;
  const sums = new Set([...ofOne].flatMap((a) => [...ofOther].map((b) => a + b)));
  return (numbers) => {
    let many = 0;
    for (let k = 0; k < numbers.length; k++) if (tables.isFirst[k]) many += numbers[k]!;
    return sums.has(many);
  };
}
