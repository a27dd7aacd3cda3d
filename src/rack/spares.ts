/** Staves to keep at hand: one swap that cures a ring that closes large, one for a ring that closes small. */

import type { ClosedSet } from './aims.js';
import { closesAt } from './closing.js';
import type { Pool } from './pool.js';
import type { Cure } from './request.js';

/** A spare helps when its swap does between this share of the change wanted and this many times it. */
const ENOUGH = { least: 0.5, most: 1.75 };

/**
 * Swaps of one stave of a set with one on the rack that change the closing diameter by about `wanted` mm, down
 * for a ring that closes large and up for one that closes small. The bung stave, planed and standing ones stay.
 * `widths` are those after planing; `rest` is sorted by width.
 */
export function sparesFor(
  pool: Pool,
  set: ClosedSet,
  widths: readonly number[],
  rest: readonly number[],
  wanted: number,
): readonly Cure[] {
  if (!(wanted > 0) || rest.length === 0) return [];
  const cures: Cure[] = [];
  const spare = (closes: Cure['closes']): void => {
    const cure = cureFor(pool, set, widths, rest, closes === 'large' ? -wanted : wanted);
    if (cure) cures.push({ closes, ...cure });
  };
  spare('large');
  spare('small');
  return cures;
}

function cureFor(
  pool: Pool,
  set: ClosedSet,
  widths: readonly number[],
  rest: readonly number[],
  wanted: number,
): Omit<Cure, 'closes'> | null {
  let best: { place: number; stave: number; miss: number } | null = null;
  for (const [place, stave] of set.staves.entries()) {
    const stays = stave === set.bungStave || set.planeOff[place]! > 0;
    if (stays || pool.standing.includes(stave)) continue;
    // in a ring of many staves the girth changes by the change of one width
    const width = widths[place]! + wanted * Math.PI;
    const into = nearestByWidth(pool, rest, width);
    const miss = Math.abs(pool.width[into]! - width);
    if (miss < (best?.miss ?? Infinity)) best = { place, stave: into, miss };
  }
  if (!best) return null;
  const { place, stave } = best;
  const after = closesAt(widths.with(place, pool.width[stave]!), pool.request.measured);
  const changesBy = after === null ? 0 : after - set.closesAt;
  const share = changesBy / wanted;
  if (share < ENOUGH.least || share > ENOUGH.most) return null;
  const takeOut = pool.staves[set.staves[place]!]!.mark;
  return { takeOut, putIn: pool.staves[stave]!.mark, changesBy };
}

/** The stave of a list sorted by width that comes nearest to a width. */
export function nearestByWidth(pool: Pool, sorted: readonly number[], width: number): number {
  let [low, high] = [0, sorted.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (pool.width[sorted[middle]!]! < width) low = middle + 1;
    else high = middle;
  }
  const [before, at] = [sorted[Math.max(0, low - 1)]!, sorted[low]!];
  return Math.abs(pool.width[before]! - width) <= Math.abs(pool.width[at]! - width) ? before : at;
}
