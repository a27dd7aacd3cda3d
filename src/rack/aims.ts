/** What makes one answer better than another, in the order in which the aims count. */

import { sum } from './sum.js';
import { closesAt } from './closing.js';
import { leastPlaning } from './planing.js';
import type { Pool } from './pool.js';

/** Diameters and planing are compared in whole hundredths of a millimetre, mm. */
export const COMPARED_TO = 0.01;
/** Closing diameters this close to the limit count as on it: they come out of a solver, mm. */
const ON_THE_LIMIT = 1e-9;

/** One set that closes. Staves are indices into the pool. */
export interface ClosedSet {
  /** narrowest first */
  readonly staves: readonly number[];
  /** mm to take off each, same order */
  readonly planeOff: readonly number[];
  /** after planing */
  readonly closesAt: number;
  /** widest stave allowed to be it; null when none is asked for */
  readonly bungStave: number | null;
  /** of all staves together, in hundredths of a millimetre */
  readonly planing: number;
  /** how far `closesAt` is from the spec's diameter, mm */
  readonly deviation: number;
}

/** Compared in this order; all but `sets` are better when lower. */
export interface Aims {
  readonly sets: number;
  /** total, in hundredths of a millimetre */
  readonly planing: number;
  /** of the closing diameters, summed, in whole hundredths of a millimetre */
  readonly deviation: number;
  /** largest count less smallest */
  readonly spread: number;
  /** mean distance of the widths left over from the middle of the rack's range, mm */
  readonly rest: number;
}

/** The set that these staves make, with the least planing; null when they make none that is allowed. */
export function closeSet(pool: Pool, staves: readonly number[]): ClosedSet | null {
  const { diameter, tolerance, measured, plane, count, bung } = pool.request;
  if (staves.length < count.min || staves.length > count.max) return null;
  const sorted = [...staves].sort((a, b) => a - b);
  const bungStave = bung === null ? null : (sorted.findLast((i) => pool.canBung[i] === 1) ?? -1);
  if (bungStave === -1) return null;
  const widths = sorted.map((i) => pool.width[i]!);
  const unplaned = closesAt(widths, measured);
  if (unplaned === null || unplaned < diameter - tolerance - ON_THE_LIMIT) return null;
  const shared = { staves: sorted, bungStave };
  if (unplaned <= diameter + tolerance + ON_THE_LIMIT) {
    const deviation = Math.abs(unplaned - diameter);
    return { ...shared, planeOff: widths.map(() => 0), closesAt: unplaned, planing: 0, deviation };
  }
  const keep = bungStave === null ? -1 : sorted.indexOf(bungStave);
  const planeOff = leastPlaning({
    widths,
    measured,
    diameter: diameter + tolerance,
    limit: plane,
    keep,
  });
  if (!planeOff) return null;
  const planed = closesAt(
    widths.map((width, i) => width - planeOff[i]!),
    measured,
  )!;
  const total = planeOff.reduce((sum, off) => sum + off, 0);
  return {
    ...shared,
    planeOff,
    closesAt: planed,
    planing: Math.round(total / COMPARED_TO),
    deviation: Math.abs(planed - diameter),
  };
}

/** The sets that these staves make; null when one of them is none. */
export function closeAll(
  pool: Pool,
  sets: readonly (readonly number[])[],
): readonly ClosedSet[] | null {
  const closed = sets.flatMap((staves) => closeSet(pool, staves) ?? []);
  return closed.length < sets.length ? null : closed;
}

/** What counts next to the number of sets, of all of them together. */
export function closenessOf(sets: readonly ClosedSet[]): Pick<Aims, 'planing' | 'deviation'> {
  return {
    planing: sum(sets.map((set) => set.planing)),
    deviation: hundredths(sum(sets.map((set) => set.deviation))),
  };
}

export function aimsOf(pool: Pool, sets: readonly ClosedSet[]): Aims {
  const counts = sets.map((set) => set.staves.length);
  const used = sets.flatMap((set) => set.staves);
  return {
    sets: sets.length,
    ...closenessOf(sets),
    spread: sets.length === 0 ? 0 : Math.max(...counts) - Math.min(...counts),
    rest: restOf(pool, used),
  };
}

/** Whole hundredths of a millimetre in a deviation. */
export function hundredths(deviation: number): number {
  return Math.floor(deviation / COMPARED_TO);
}

/** Mean distance from the middle of the range, of the widths that stay on the rack; 0 when none does. */
export function restOf(pool: Pool, used: readonly number[]): number {
  const left = pool.staves.length - used.length;
  if (left === 0) return 0;
  const all = pool.offMiddle.reduce((total, off) => total + off, 0);
  return (all - sum(used.map((i) => pool.offMiddle[i]!))) / left;
}

/** Negative when `a` is the better answer. */
export function compareAims(a: Aims, b: Aims): number {
  return (
    b.sets - a.sets ||
    a.planing - b.planing ||
    a.deviation - b.deviation ||
    a.spread - b.spread ||
    compareRest(a.rest, b.rest)
  );
}

/** Rests this near, mm, are equal: the difference is rounding. */
const SAME_REST = 1e-5;

function compareRest(a: number, b: number): number {
  return Math.abs(a - b) < SAME_REST ? 0 : a - b;
}
