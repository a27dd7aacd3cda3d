/** Which kinds of sets can hold the staves that already stand; see `kinds.ts`. */

import { reachOf, type Grid, type Kind } from './kinds.js';
import { sum } from './sum.js';
import { ROUNDING } from './window.js';

/** All kinds when none stand. Others than these can't hold them all, whatever else they hold. */
export function kindsThatHold(grid: Grid, kinds: readonly Kind[]): readonly Kind[] {
  const { classes } = grid;
  const count = sum(classes.map(({ standing }) => standing));
  const steps = sum(classes.map(({ standing }, k) => standing * grid.steps[k]!));
  const beside = sum(classes.map(({ standing }, k) => standing * grid.beside[k]!));
  return kinds.filter((kind) => {
    const reach = reachOf(grid, kind.count - count, kind.steps - steps);
    if (!reach) return false;
    const { low, high } = kind.beside;
    return reach.low + beside <= high + ROUNDING && reach.high + beside >= low - ROUNDING;
  });
}

/** Puts those that stand in the place of others of about the same width. `taken` is how many of each class are used. */
export function withStanding({ classes, steps }: Grid, taken: readonly number[]): number[] {
  const changed = [...taken];
  for (const [into, { standing }] of classes.entries())
    while (changed[into]! < standing) {
      const spare = [...classes.keys()].filter((k) => changed[k]! > classes[k]!.standing);
      const away = (k: number): number => Math.abs(steps[k]! - steps[into]!);
      const out = spare.reduce((best, k) => (away(k) < away(best) ? k : best), spare[0]!);
      changed[out]!--;
      changed[into]!++;
    }
  return changed;
}
