/** How many sets a rack can give at most, whatever the method: counted on the whole rack at once. */

import { FEWEST_STAVES } from './check-request.js';
import { halfAngle } from './closing.js';
import type { Pool } from './pool.js';
import type { Shortfall } from './request.js';
import { ROUNDING } from './window.js';

export interface Bound {
  /** no more sets than this, of the number asked for */
  readonly sets: number;
  /** what stands in the way of one more; null when all that were asked for are within the bound */
  readonly shortfall: Shortfall | null;
}

/**
 * Suppose m sets exist. They use n staves, m * min <= n <= m * max, at least m of which can be bung staves.
 * Their half-angles at D - tolerance sum to m pi or more, so the n widest such staves reach m pi there; at
 * D + tolerance they sum to m pi plus what planing takes off, or less, so the n narrowest such staves don't
 * exceed that. If no n passes, m sets don't exist, nor do more (from m + 1 sets leave out one).
 */
export function upperBound(pool: Pool): Bound {
  const { vessels } = pool.request;
  const wanted = vessels === 'max' ? Infinity : vessels;
  const rack = new RackSums(pool);
  let sets = 0;
  while (sets < wanted && rack.allows(sets + 1)) sets++;
  return { sets, shortfall: sets < wanted ? rack.shortfall(sets + 1) : null };
}

class RackSums {
  private readonly widest: Extreme;
  private readonly narrowest: Extreme;
  private readonly mostPerSet: number;
  private readonly slack: number;

  constructor(private readonly pool: Pool) {
    const { diameter, tolerance, measured, plane } = pool.request;
    const angles = (at: number): Float64Array =>
      pool.width.map((width) => halfAngle(width, at, measured));
    const [tight, loose] = [diameter - tolerance, diameter + tolerance];
    this.widest = new Extreme(angles(tight).reverse(), pool.canBung.slice().reverse());
    this.narrowest = new Extreme(angles(loose), pool.canBung);
    const widestWidth = pool.width.at(-1) ?? 0;
    const steepest = measured === 'blank' ? loose : Math.sqrt(loose ** 2 - widestWidth ** 2);
    this.mostPerSet = Math.PI + plane / steepest;
    this.slack = ROUNDING / diameter;
  }

  allows(sets: number, { min, max } = this.pool.request.count): boolean {
    const most = Math.min(this.pool.staves.length, sets * max);
    for (let n = sets * min; n <= most; n++) {
      const enough = this.widest.sum(n, sets) >= sets * Math.PI - this.slack;
      if (enough && this.narrowest.sum(n, sets) <= sets * this.mostPerSet + this.slack) return true;
    }
    return false;
  }

  shortfall(sets: number): Shortfall {
    const missing = sets * Math.PI - this.widest.total;
    if (missing > 0) return { reason: 'wood', girthMissing: missing * this.pool.request.diameter };
    const bungStaves = this.pool.canBung.reduce((count, can) => count + can, 0);
    if (bungStaves === 0) return { reason: 'noBung', girthMissing: 0 };
    if (bungStaves < sets) return { reason: 'bung', girthMissing: 0 };
    const anyCount = this.allows(sets, { min: FEWEST_STAVES, max: Infinity });
    return { reason: anyCount ? 'counts' : 'widths', girthMissing: 0 };
  }
}

/** Sums of the first n of a sorted list, at least so many of which can be bung staves. */
class Extreme {
  readonly total: number;
  private readonly all: Float64Array;
  private readonly bungs: Float64Array;
  private readonly others: Float64Array;
  private readonly bungsAmong: Uint32Array;

  constructor(angles: Float64Array, canBung: Uint8Array) {
    this.all = runningSums(angles);
    this.bungs = runningSums(angles.filter((_, i) => canBung[i] === 1));
    this.others = runningSums(angles.filter((_, i) => canBung[i] !== 1));
    this.bungsAmong = new Uint32Array(angles.length + 1);
    for (const [i, can] of canBung.entries()) this.bungsAmong[i + 1] = this.bungsAmong[i]! + can;
    this.total = this.all.at(-1)!;
  }

  /** NaN, which passes no comparison, when there aren't that many. */
  sum(count: number, bungs: number): number {
    if ((this.bungsAmong[count] ?? 0) >= bungs) return this.all[count]!;
    return (this.bungs[bungs] ?? NaN) + (this.others[count - bungs] ?? NaN);
  }
}

function runningSums(values: Float64Array): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (const [i, value] of values.entries()) sums[i + 1] = sums[i]! + value;
  return sums;
}
