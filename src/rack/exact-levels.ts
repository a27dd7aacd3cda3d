/**
 * The best choice of one or two sets where choices are many: sums of deviations are gone through hundredth by hundredth,
 * from the first that isn't known to be too little; see `exact-unions.ts`.
 */

import { COMPARED_TO, hundredths } from './aims.js';
import type { StaveClass } from './classes.js';
import { Effort } from './effort.js';
import { Unions, type Outcome } from './exact-unions.js';
import { GridPartings } from './grid-partings.js';
import type { Grid } from './kinds.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import { gridForKinds } from './union-grid.js';
import { windowsFor } from './union-jobs.js';

/** Null when the question stays open, 'none' when there are no such sets. Yields now and then. */
export function* bestUnion(
  pool: Pool,
  classes: readonly StaveClass[],
  sets: number,
): Generator<null, Outcome> {
  const { tolerance, plane, count } = pool.request;
  const { each } = windowsFor(pool, COMPARED_TO);
  const grid = gridForKinds(classes, each, count);
  const effort = {
    pricing: new Effort(STEPS_FOR_PRICING),
    listing: new Effort(STEPS_FOR_HARD),
    parting: new Effort(STEPS_FOR_PARTING),
  };
  const all = hundredths(sets * tolerance + ROUNDING_OF_SETS) + 1;
  const levels = Math.min(MOST_HUNDREDTHS, all);
  const tables = grid && sets === 2 ? tablesOf(pool, grid) : null;
  const at = (deviation: number): Unions =>
    new Unions(pool, classes, { grid, tables }, sets, deviation, effort);
  for (let deviation = firstOpen(levels, (d) => at(d).isOpen()); deviation < levels; deviation++) {
    const outcome = yield* at(deviation).best();
    if (outcome !== 'none') return outcome;
  }
  return levels === all && plane === 0 ? 'none' : null;
}

/** Of the whole rack; null when they would be large. */
function tablesOf(pool: Pool, grid: Grid): GridPartings | null {
  const { count } = pool.request;
  return GridPartings.of(grid, count.max, bungsNeeded(pool, 1), new Effort(STEPS_FOR_TABLES));
}

/**
 * The first of so many levels that isn't known to be closed. A level lets in whatever a lower one does: where one is
 * closed, so are all below.
 */
function firstOpen(levels: number, isOpen: (level: number) => boolean): number {
  let [closed, open] = [-1, levels];
  for (let probe = 0; closed + 1 < open;) {
    if (isOpen(probe)) open = probe;
    else closed = probe;
    probe = open < levels ? (closed + open) >> 1 : Math.min(levels - 1, 2 * probe + 1);
  }
  return open;
}

/** Racks whose best sets stray further are left to others. */
const MOST_HUNDREDTHS = 400;
/** Closing diameters of both sets may be over the limit by rounding, mm. */
const ROUNDING_OF_SETS = 1e-6;
/** Work allowed for tables of the whole rack. */
const STEPS_FOR_TABLES = 2_500_000;
/** Pricings allowed, steps for questions that were put off, and for parting choices into sets; for all levels together. */
const STEPS_FOR_PRICING = 1500;
const STEPS_FOR_HARD = 8_000_000;
const STEPS_FOR_PARTING = 15_000_000;
