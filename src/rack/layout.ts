/** Staves laid out in sets that are not yet known to close: what dealing makes and mending changes. */

import {
  nearestExchange,
  sortedSums,
  type FoundExchange,
  type Size,
  type SortedSums,
} from './exchange.js';
import type { Pool } from './pool.js';

/** Stands for the staves in no set, where a set's number is asked for. */
export const REST = -1;

export class Layout {
  readonly sets: number[][];
  /** sum of girth shares of each set, mm */
  readonly girth: number[];
  /** staves in no set */
  readonly rest: number[];
  /** staves that stay in their set: standing, or the bung stave that the set counts on */
  private readonly fixed = new Set<number>();
  /** by set and size; what a change to a set makes stale is thrown away */
  private readonly known = new Map<number, Partial<Record<Size, SortedSums>>>();

  constructor(
    readonly pool: Pool,
    sets: number,
    unused: readonly number[],
  ) {
    this.sets = Array.from({ length: sets }, () => []);
    this.girth = this.sets.map(() => 0);
    this.rest = [...unused];
  }

  place(set: number, stave: number, fixed: boolean): void {
    this.sets[set]!.push(stave);
    this.girth[set]! += this.pool.girth[stave]!;
    if (fixed) this.fixed.add(stave);
  }

  /** The exchange between two sets (or a set and the rest) that lowers the first's girth by about `wanted`. */
  find(
    set: number,
    other: number,
    wanted: number,
    [out, into]: readonly [Size, Size],
  ): FoundExchange | null {
    return nearestExchange(this.sums(set, out), this.sums(other, into), wanted);
  }

  private sums(set: number, size: Size): SortedSums {
    let known = this.known.get(set);
    if (!known) this.known.set(set, (known = {}));
    const loose = (): number[] => this.staves(set).filter((stave) => !this.fixed.has(stave));
    return (known[size] ??= sortedSums(this.pool.girth, loose(), size));
  }

  private staves(set: number): number[] {
    return set === REST ? this.rest : this.sets[set]!;
  }

  exchange(set: number, other: number, { out, into }: Omit<FoundExchange, 'lowersBy'>): void {
    replace(this.staves(set), out, into);
    replace(this.staves(other), into, out);
    this.changed(set);
    this.changed(other);
  }

  private changed(set: number): void {
    this.known.delete(set);
    if (set === REST) return;
    this.girth[set] = this.sets[set]!.reduce((sum, stave) => sum + this.pool.girth[stave]!, 0);
  }

  /** Takes a set apart: its staves join the rest. The numbers of later sets fall by one. */
  dissolve(set: number): void {
    const [staves] = this.sets.splice(set, 1);
    this.girth.splice(set, 1);
    for (const stave of staves!) this.fixed.delete(stave);
    this.rest.push(...staves!);
    this.known.clear();
  }
}

function replace(list: number[], out: readonly number[], into: readonly number[]): void {
  for (const stave of out) list.splice(list.indexOf(stave), 1);
  list.push(...into);
}
