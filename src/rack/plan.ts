/** Before dealing: how many staves all sets take together, and which ones. */

import type { StaveClass } from './classes.js';
import { nearestExchange, sortedSums, type SortedSums } from './exchange.js';
import type { Pool } from './pool.js';
import { price, type Pricing } from './union.js';
import type { Window } from './window.js';

/** Total counts for so many sets, those that allow equal counts first, then by the rest that they promise. */
export function totalCounts(
  pool: Pool,
  classes: readonly StaveClass[],
  sets: number,
  window: Window,
): number[] {
  const { min, max } = pool.request.count;
  const most = Math.min(pool.staves.length, sets * max);
  const reach = new Reach(pool);
  const totals: { n: number; spread: number; off: number; rest: number }[] = [];
  const target = sets * pool.request.diameter * Math.PI;
  for (let n = sets * min; n <= most; n++) {
    const [low, high] = [reach.narrowest(n), reach.widest(n)];
    if (high < sets * window.low || low > sets * window.high) continue;
    const off = Math.max(0, low - target, target - high);
    totals.push({ n, spread: n % sets === 0 ? 0 : 1, off, rest: 0 });
  }
  const likely = totals
    .sort((a, b) => a.off - b.off || a.spread - b.spread || a.n - b.n)
    .slice(0, TRIED);
  for (const total of likely) total.rest = promisedRest(pool, classes, sets, total.n, window);
  return likely
    .sort((a, b) => a.off - b.off || a.spread - b.spread || a.rest - b.rest || a.n - b.n)
    .map(({ n }) => n);
}

const TRIED = 24;

class Reach {
  private readonly sums: number[] = [0];

  constructor(pool: Pool) {
    for (const share of pool.girth) this.sums.push(this.sums.at(-1)! + share);
  }

  narrowest(n: number): number {
    return this.sums[n]!;
  }

  widest(n: number): number {
    return this.sums.at(-1)! - this.sums[this.sums.length - 1 - n]!;
  }
}

function promisedRest(
  pool: Pool,
  classes: readonly StaveClass[],
  sets: number,
  count: number,
  { low, high }: Window,
): number {
  const window = { low: sets * low, high: sets * high };
  const pricing = price({ classes, count, window, bungs: bungsNeeded(pool, sets) });
  const left = pool.staves.length - count;
  if (!pricing || left === 0) return 0;
  return (pool.offMiddle.reduce((sum, off) => sum + off, 0) - pricing.most) / left;
}

/** How many staves that can be bung staves a number of sets must have. */
export function bungsNeeded(pool: Pool, sets: number): number {
  return pool.request.bung === null ? 0 : sets;
}

/**
 * The staves for so many sets: those with the best rest, put right by one exchange with the rest so that their
 * girth shares come as near as may be to what the sets want. Null when bung staves are too few.
 */
export function chooseStaves(
  pool: Pool,
  classes: readonly StaveClass[],
  sets: number,
  count: number,
): readonly number[] | null {
  const bungs = bungsNeeded(pool, sets);
  const reach = new Reach(pool);
  const ideal = sets * pool.request.diameter * Math.PI;
  const target = Math.min(Math.max(ideal, reach.narrowest(count)), reach.widest(count));
  const pricing = price({ classes, count, window: { low: target, high: target }, bungs });
  if (!pricing) return null;
  const order = byWorth(pool, classes, pricing, bungs);
  const [used, rest] = [order.slice(0, count), order.slice(count)];
  if (used.filter((i) => pool.canBung[i] === 1).length < bungs) return null;
  return nearer(pool, used, rest, target);
}

/** All staves: standing ones, as many bung staves as are needed, then by falling worth. */
function byWorth(
  pool: Pool,
  classes: readonly StaveClass[],
  { worth }: Pricing,
  bungs: number,
): number[] {
  const standing = new Set(pool.standing);
  const staves = classes
    .flatMap((c, k) => c.staves.map((index) => ({ index, worth: worth[k]! })))
    .sort((a, b) => b.worth - a.worth || a.index - b.index)
    .map(({ index }) => index);
  const needed = new Set(staves.filter((i) => pool.canBung[i] === 1).slice(0, bungs));
  const rank = (i: number): number => (standing.has(i) ? 0 : needed.has(i) ? 1 : 2);
  return staves.sort((a, b) => rank(a) - rank(b));
}

/** How many of the least missed are offered for an exchange. */
const OFFERED = 90;

function nearer(pool: Pool, used: number[], rest: number[], target: number): readonly number[] {
  const excess = used.reduce((sum, i) => sum + pool.girth[i]!, 0) - target;
  const standing = new Set(pool.standing);
  const mine = used.slice(-OFFERED).filter((i) => !standing.has(i));
  const pairs = (group: readonly number[]): SortedSums => sortedSums(pool.girth, group, 2);
  const found = nearestExchange(pairs(mine), pairs(rest.slice(0, OFFERED)), excess);
  if (!found || Math.abs(excess - found.lowersBy) >= Math.abs(excess)) return used;
  const out = new Set(found.out);
  return [...used.filter((i) => !out.has(i)), ...found.into];
}
