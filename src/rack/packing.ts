/** The best choice of several sets out of a complete list of the patterns that close. */

import { closeSet, compareAims, hundredths, type Aims, type ClosedSet } from './aims.js';
import { stavesOf, type StaveClass } from './classes.js';
import type { Effort } from './effort.js';
import type { Pool } from './pool.js';

/** A pattern that closes, with what the aims ask of it. */
export interface ClosingPattern {
  readonly numbers: Uint16Array;
  readonly count: number;
  readonly planing: number;
  readonly deviation: number;
  /** sum of its staves' distances from the middle of the rack's range */
  readonly offMiddle: number;
}

/** The pattern as a list entry; null when it doesn't close after all. */
export function closingPattern(
  pool: Pool,
  classes: readonly StaveClass[],
  numbers: Uint16Array,
): ClosingPattern | null {
  const staves = stavesOf(classes, numbers);
  const set = closeSet(pool, staves);
  if (!set) return null;
  const offMiddle = staves.reduce((sum, i) => sum + pool.offMiddle[i]!, 0);
  const { planing, deviation } = set;
  return { numbers: numbers.slice(), count: staves.length, planing, deviation, offMiddle };
}

interface Best {
  readonly aims: Aims;
  readonly chosen: readonly ClosingPattern[];
}

/**
 * Chooses `sets` patterns that the rack can supply together, best by the aims. `first` lists patterns for the
 * set with the standing staves; the same list as `others` when none stand. Null: there is no such choice (or
 * the effort ended, which the caller asks the effort).
 */
export function bestPacking(
  pool: Pool,
  classes: readonly StaveClass[],
  lists: { readonly first: readonly ClosingPattern[]; readonly others: readonly ClosingPattern[] },
  sets: number,
  effort: Effort,
): readonly ClosedSet[] | null {
  const packer = new Packer(pool, classes, sets, effort);
  const others = [...lists.others].sort(byCost);
  packer.choose(lists.first === lists.others ? others : [...lists.first].sort(byCost), others);
  return packer.best ? toSets(pool, classes, packer.best.chosen) : null;
}

function byCost(a: ClosingPattern, b: ClosingPattern): number {
  return a.planing - b.planing || a.deviation - b.deviation;
}

class Packer {
  best: Best | null = null;
  private readonly chosen: ClosingPattern[] = [];
  private readonly free: Int32Array;
  private readonly offMiddle: number;

  constructor(
    private readonly pool: Pool,
    classes: readonly StaveClass[],
    private readonly sets: number,
    private readonly effort: Effort,
  ) {
    this.free = Int32Array.from(classes, ({ staves }) => staves.length);
    this.offMiddle = pool.offMiddle.reduce((sum, off) => sum + off, 0);
  }

  choose(first: readonly ClosingPattern[], others: readonly ClosingPattern[]): void {
    for (const [i, pattern] of first.entries()) {
      if (this.tooDear(pattern, 0, 0, first === others)) return;
      this.withPattern(pattern, () => {
        this.more(others, first === others ? i : 0, pattern.planing, pattern.deviation);
      });
      if (this.effort.exhausted) return;
    }
  }

  private more(
    others: readonly ClosingPattern[],
    from: number,
    planing: number,
    deviation: number,
  ): void {
    if (this.chosen.length === this.sets) return this.weigh(planing, deviation);
    for (let i = from; i < others.length; i++) {
      if (!this.effort.step()) return;
      const next = others[i]!;
      // dearer patterns follow, so once this one is too dear for all places left, so are they
      if (this.tooDear(next, planing, deviation, true)) return;
      this.withPattern(next, () => {
        this.more(others, i, planing + next.planing, deviation + next.deviation);
      });
    }
  }

  /** Whether the answer can't be bettered when all places left, or just this one, cost as much as `next`. */
  private tooDear(
    next: ClosingPattern,
    planing: number,
    deviation: number,
    allPlaces: boolean,
  ): boolean {
    if (!this.best) return false;
    const places = allPlaces ? this.sets - this.chosen.length : 1;
    const { aims } = this.best;
    const leastPlaning = planing + places * next.planing;
    if (leastPlaning !== aims.planing) return leastPlaning > aims.planing;
    return hundredths(deviation + places * next.deviation) > aims.deviation;
  }

  private withPattern(pattern: ClosingPattern, then: () => void): void {
    const { numbers } = pattern;
    const { free } = this;
    for (let c = 0; c < free.length; c++) if (numbers[c]! > free[c]!) return;
    for (let c = 0; c < free.length; c++) free[c] = free[c]! - numbers[c]!;
    this.chosen.push(pattern);
    then();
    this.chosen.pop();
    for (let c = 0; c < free.length; c++) free[c] = free[c]! + numbers[c]!;
  }

  private weigh(planing: number, deviation: number): void {
    const counts = this.chosen.map(({ count }) => count);
    const left = this.pool.staves.length - counts.reduce((sum, count) => sum + count, 0);
    const off = this.chosen.reduce((sum, { offMiddle }) => sum - offMiddle, this.offMiddle);
    const aims = {
      sets: this.sets,
      planing,
      deviation: hundredths(deviation),
      spread: Math.max(...counts) - Math.min(...counts),
      rest: left === 0 ? 0 : off / left,
    };
    if (!this.best || compareAims(aims, this.best.aims) < 0)
      this.best = { aims, chosen: [...this.chosen] };
  }
}

function toSets(
  pool: Pool,
  classes: readonly StaveClass[],
  chosen: readonly ClosingPattern[],
): ClosedSet[] {
  const taken = new Uint16Array(classes.length);
  return chosen.map(({ numbers }) => {
    const staves = stavesOf(classes, numbers, taken);
    for (const [c, number] of numbers.entries()) taken[c] = taken[c]! + number;
    return closeSet(pool, staves)!;
  });
}
