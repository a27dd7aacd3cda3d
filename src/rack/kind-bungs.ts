/**
 * How many sets the rack gives at most when each has a bung stave that is much wider than the others; see `kinds.ts`. A
 * wide stave brings so much beside its steps that a set of many a kind can have only some of them, or needs two. So here
 * every set is of a kind and of the class of a bung stave, and only its other staves are taken from the rack as they come.
 */

import { provenBy, reachOf, type Grid, type Kind } from './kinds.js';
import { mostGain } from './simplex.js';

/** With more ways for a set than this the linear programme takes too long. */
const MOST_WAYS = 400;

/** No choice makes more sets. `Infinity` when nothing is known. */
export function mostWithBungs(grid: Grid, kinds: readonly Kind[], wanted: number): number {
  const { classes, steps } = grid;
  if (classes.every(({ canBung }) => canBung)) return Infinity;
  // from that of the narrowest: small numbers, of which small differences count
  const beside = grid.beside.map((share) => share - grid.beside[0]!);
  const ways = waysOf(grid, kinds).map((way) => {
    const shared = way.others * grid.beside[0]!;
    return { ...way, low: way.low - shared, high: way.high - shared };
  });
  if (ways.length > MOST_WAYS) return Infinity;
  const row = (ofClass: (k: number) => number, ofWay: (way: Way) => number): number[] => [
    ...classes.map((_, k) => ofClass(k)),
    ...ways.map(ofWay),
  ];
  const takes = [
    row(
      () => 1,
      ({ others }) => -others,
    ),
    row(
      () => -1,
      ({ others }) => others,
    ),
    row(
      (k) => steps[k]!,
      (way) => -way.steps,
    ),
    row(
      (k) => -steps[k]!,
      (way) => way.steps,
    ),
    row(
      (k) => beside[k]!,
      (way) => -way.high,
    ),
    row(
      (k) => -beside[k]!,
      (way) => way.low,
    ),
    row(
      () => 0,
      () => 1,
    ),
    ...classes.map((_, c) =>
      row(
        (k) => (k === c ? 1 : 0),
        ({ bung }) => (bung === c ? 1 : 0),
      ),
    ),
  ];
  const limits = [0, 0, 0, 0, 0, 0, wanted, ...classes.map(({ staves }) => staves.length)];
  const gain = row(
    () => 0,
    () => 1,
  );
  const { prices } = mostGain({ gain, takes, limits });
  return provenBy(prices, { takes, limits, classes: classes.length });
}

/** A set of a kind with a bung stave of a class, and what its other staves come to. */
interface Way {
  readonly bung: number;
  readonly others: number;
  readonly steps: number;
  /** beside the steps, mm */
  readonly low: number;
  readonly high: number;
}

function waysOf(grid: Grid, kinds: readonly Kind[]): readonly Way[] {
  return kinds.flatMap((kind) =>
    grid.classes.flatMap(({ canBung }, bung) => {
      const others = kind.count - 1;
      const steps = kind.steps - grid.steps[bung]!;
      const reach = canBung ? reachOf(grid, others, steps) : null;
      if (!reach) return [];
      const low = Math.max(reach.low, kind.beside.low - grid.beside[bung]!);
      const high = Math.min(reach.high, kind.beside.high - grid.beside[bung]!);
      return low <= high ? [{ bung, others, steps, low, high }] : [];
    }),
  );
}
