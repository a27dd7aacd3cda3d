/** Whole numbers of sets of each kind, near a plan that isn't whole, such that the rack can give what they take. */

import type { Grid, Kind } from './kinds.js';

/** What some sets take together: staves, steps, and between what sums beside the steps. */
interface Taken {
  readonly count: number;
  readonly steps: number;
  readonly low: number;
  readonly high: number;
}

/** One set of a kind made one of another kind. */
interface Change {
  readonly from: number;
  readonly to: number;
}

/** Null when no change of up to two sets makes it fit. `whole` sums to the number of sets. */
export function fitKinds(
  grid: Grid,
  kinds: readonly Kind[],
  whole: readonly number[],
): readonly number[] | null {
  const rest = new Rest(grid);
  const taken = totals(kinds, whole);
  if (rest.fits(taken)) return whole;
  const changes = [...kinds.keys()].flatMap((from) =>
    [...kinds.keys()].filter((to) => to !== from).map((to) => ({ from, to })),
  );
  for (const change of changes) {
    const changed = apply(whole, [change]);
    if (changed && rest.fits(totals(kinds, changed))) return changed;
  }
  for (const [i, first] of changes.entries())
    for (const second of changes.slice(i)) {
      const changed = apply(whole, [first, second]);
      if (changed && rest.fits(totals(kinds, changed))) return changed;
    }
  return null;
}

function apply(whole: readonly number[], changes: readonly Change[]): readonly number[] | null {
  const changed = [...whole];
  for (const { from, to } of changes) {
    changed[from]!--;
    changed[to]!++;
  }
  return changed.every((many) => many >= 0) ? changed : null;
}

function totals(kinds: readonly Kind[], whole: readonly number[]): Taken {
  let [count, steps, low, high] = [0, 0, 0, 0];
  for (const [i, kind] of kinds.entries()) {
    count += whole[i]! * kind.count;
    steps += whole[i]! * kind.steps;
    low += whole[i]! * kind.beside.low;
    high += whole[i]! * kind.beside.high;
  }
  return { count, steps, low, high };
}

/** What is left on the rack: whether so many staves of so many steps are there. */
class Rest {
  /** running sums, narrowest staves first */
  private readonly steps: number[] = [0];
  private readonly beside: number[] = [0];

  constructor({ classes, steps, beside }: Grid) {
    for (const [k, { staves }] of classes.entries())
      for (let i = 0; i < staves.length; i++) {
        this.steps.push(this.steps.at(-1)! + steps[k]!);
        this.beside.push(this.beside.at(-1)! + beside[k]!);
      }
  }

  fits({ count, steps, low, high }: Taken): boolean {
    const all = this.steps.length - 1;
    const left = all - count;
    if (left < 0) return false;
    const stepsLeft = this.steps[all]! - steps;
    const narrowest = this.steps[left]!;
    const widest = this.steps[all]! - this.steps[all - left]!;
    if (stepsLeft < narrowest || stepsLeft > widest) return false;
    // as if what is left were a mixture of the narrowest and the widest: near enough, since it is little
    const share = widest > narrowest ? (stepsLeft - narrowest) / (widest - narrowest) : 0;
    const ofWidest = this.beside[all]! - this.beside[all - left]!;
    const beside = this.beside[all]! - (1 - share) * this.beside[left]! - share * ofWidest;
    return beside >= low && beside <= high;
  }
}
