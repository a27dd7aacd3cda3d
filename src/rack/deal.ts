/** Deals chosen staves out into sets, so that all come near the same girth. */

import { Layout } from './layout.js';
import type { Pool } from './pool.js';

/**
 * Every set first gets one stave that can be its bung stave, the first set its standing staves. All others go,
 * widest first, where most girth is wanted for each place still free. Null when bung staves or places run out.
 */
export function deal(
  pool: Pool,
  used: readonly number[],
  counts: readonly number[],
  target: number,
): Layout | null {
  const taken = new Set(used);
  const unused = [...pool.staves.keys()].filter((index) => !taken.has(index));
  const layout = new Layout(pool, counts.length, unused);
  const dealer = new Dealer(layout, counts, target);
  const order = [...used].sort((a, b) => a - b);
  for (const stave of pool.standing) dealer.give(0, stave, true);
  if (pool.request.bung !== null && !dealer.giveBungStaves(order)) return null;
  for (const stave of order.reverse()) if (!dealer.has(stave)) dealer.giveToNeediest(stave);
  return layout.sets.every((set, j) => set.length === counts[j]) ? layout : null;
}

class Dealer {
  private readonly given = new Set<number>();

  constructor(
    private readonly layout: Layout,
    private readonly counts: readonly number[],
    private readonly target: number,
  ) {}

  has(stave: number): boolean {
    return this.given.has(stave);
  }

  give(set: number, stave: number, fixed: boolean): void {
    this.layout.place(set, stave, fixed);
    this.given.add(stave);
  }

  /** The narrowest that will do, one to each set that has none yet; false when they run out. */
  giveBungStaves(order: readonly number[]): boolean {
    const { pool, sets } = this.layout;
    const waiting = order.filter((stave) => pool.canBung[stave] === 1 && !this.has(stave));
    return sets.every((set, j) => {
      if (set.some((stave) => pool.canBung[stave] === 1)) return true;
      const stave = waiting.shift();
      if (stave === undefined || set.length >= this.counts[j]!) return false;
      this.give(j, stave, true);
      return true;
    });
  }

  giveToNeediest(stave: number): void {
    const { sets, girth } = this.layout;
    let neediest = -1;
    let most = -Infinity;
    for (let j = 0; j < sets.length; j++) {
      const places = this.counts[j]! - sets[j]!.length;
      const need = (this.target - girth[j]!) / places;
      if (places > 0 && need > most) [neediest, most] = [j, need];
    }
    if (neediest >= 0) this.give(neediest, stave, false);
  }
}
