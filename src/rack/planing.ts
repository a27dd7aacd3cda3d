/** What to plane off a set that closes too large: the least that will do, on as few staves as will take it. */

import { halfAngle, widthAt, type Measured } from './closing.js';

/** Planing is asked for in whole steps of this, in mm. */
export const PLANE_STEP = 0.01;
/** No stave gives up more than this share of its width. */
export const MOST_OF_A_STAVE = 1 / 3;

interface Job {
  readonly widths: readonly number[];
  readonly measured: Measured;
  /** the set must close at this diameter or below */
  readonly diameter: number;
  /** the most to take off all widths together */
  readonly limit: number;
  /** this stave (the bung stave) isn't planed; -1: any may be */
  readonly keep: number;
}

/** How much to take off each stave, in the order of `widths`; null when `limit` isn't enough. */
export function leastPlaning(job: Job): readonly number[] | null {
  const off = new Array<number>(job.widths.length).fill(0);
  let excess = -Math.PI;
  for (const width of job.widths) excess += halfAngle(width, job.diameter, job.measured);
  let spent = 0;
  while (excess > 0) {
    const last = cheapest(job, off, excess);
    const cut = last ?? deepest(job, off);
    if (!cut) return null;
    off[cut.index] = last ? stepUp(cut.depth, job.limit - spent) : cut.depth;
    spent += off[cut.index]!;
    if (spent > job.limit) return null;
    if (last) break;
    excess -= angleOff(job, cut.index, cut.depth);
  }
  return off;
}

interface Cut {
  readonly index: number;
  readonly depth: number;
}

/** The one stave that takes up the whole excess for the least width. */
function cheapest(job: Job, off: readonly number[], excess: number): Cut | null {
  let best: Cut | null = null;
  for (const [index, width] of job.widths.entries()) {
    if (index === job.keep || off[index] !== 0) continue;
    const left = halfAngle(width, job.diameter, job.measured) - excess;
    const depth = left > 0 ? width - widthAt(left, job.diameter, job.measured) : Infinity;
    if (depth <= width * MOST_OF_A_STAVE && depth < (best?.depth ?? Infinity))
      best = { index, depth };
  }
  return best;
}

/** The stave that gives up the largest angle, when no single one can take up the excess. */
function deepest(job: Job, off: readonly number[]): Cut | null {
  let best: Cut | null = null;
  let most = 0;
  for (const [index, width] of job.widths.entries()) {
    const depth = width * MOST_OF_A_STAVE;
    const angle = angleOff(job, index, depth);
    if (index === job.keep || off[index] !== 0 || angle <= most) continue;
    best = { index, depth };
    most = angle;
  }
  return best;
}

function angleOff({ widths, diameter, measured }: Job, index: number, depth: number): number {
  const width = widths[index]!;
  return halfAngle(width, diameter, measured) - halfAngle(width - depth, diameter, measured);
}

/** Rounds up to whole steps, but never past the limit that the exact depth keeps to. */
function stepUp(depth: number, limit: number): number {
  const stepped = Math.ceil(depth / PLANE_STEP - 1e-9) * PLANE_STEP;
  return depth <= limit ? Math.min(stepped, limit) : stepped;
}
