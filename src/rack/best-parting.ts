/** The best way to part staves into two sets that close. */

import { closeAll, closenessOf, COMPARED_TO, hundredths, type ClosedSet } from './aims.js';
import { classesOf, stavesOf, type StaveClass } from './classes.js';
import type { Effort } from './effort.js';
import { GridPartings, type Lot } from './grid-partings.js';
import { gridFrom, type Grid } from './kinds.js';
import { Partings } from './partings.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import type { Random } from './random.js';
import { closedWithin, split } from './split.js';
import { StrayBound } from './stray-bound.js';
import { sum } from './sum.js';
import { compareCloseness, GirthBounds, unplanedPromise, type Closeness } from './union-promise.js';
import { closingWindows, ROUNDING, sharedWindow, type Window } from './window.js';

export interface PartingQuestion {
  /** in ascending order */
  readonly staves: readonly number[];
  readonly counts: readonly [number, number];
  readonly isPlaned: boolean;
  /** no parting is better */
  readonly promised: Closeness;
  /** only better ones are wanted; null: any */
  readonly limit: Closeness | null;
}

export interface Parting {
  readonly sets: readonly ClosedSet[];
  readonly closeness: Closeness;
}

export interface PartingAnswer {
  /** the best that was found */
  readonly best: Parting | null;
  /** false when there may be a better one */
  readonly isSure: boolean;
}

/** What judging a parting costs, in steps. */
const JUDGING = 250;
/** Sets that stray so many hundredths further than promised are tried. */
const LEVELS_TRIED = 6;
/** Work allowed for one lot. */
const STEPS_FOR_LOT = 300_000;
/** Where the least that a lot strays is this much below what is asked for, mm, hardly any set of it strays further. */
const ROOM = 5e-4;
/** Others are looked through piece by piece. */
const PIECES = 32;

export class Parter {
  private readonly bounds: GirthBounds;
  private last: Parts | null = null;

  constructor(
    private readonly pool: Pool,
    /** on which the widths lie; null when on none, or a fine one */
    private readonly grid: Grid | null,
    private readonly random: Random,
    private readonly effort: Effort,
  ) {
    this.bounds = new GirthBounds(pool);
  }

  /** The least that unplaned sets of such counts stray, of which so much is known; null when there are none. */
  promise(
    staves: readonly number[],
    counts: readonly [number, number],
    known: Closeness,
  ): Closeness | null {
    const most = Math.ceil((2 * this.pool.request.tolerance) / COMPARED_TO);
    const together = unplanedPromise(this.pool, staves, counts, known.deviation, most);
    if (!together) return null;
    const parts = this.parts(staves);
    if (!parts.onGrid) return together;
    let least = Infinity;
    parts.onGrid.eachLot({ count: counts[0] }, this.unplanedWindow(parts.girth), (lot) => {
      least = Math.min(least, this.strayOf(lot, parts, counts));
      // no more is learnt
      return hundredths(least) <= together.deviation;
    });
    if (least === Infinity) return null;
    const deviation = hundredths(Math.max(0, least - ROUNDING));
    return { planing: 0, deviation: Math.max(together.deviation, deviation) };
  }

  /** Whether the effort has ended. */
  get isSpent(): boolean {
    return this.effort.exhausted;
  }

  best(question: PartingQuestion): PartingAnswer {
    const { staves, isPlaned } = question;
    if (!isPlaned && this.parts(staves).onGrid) return this.byLevels(question);
    const partings = Partings.of(this.parts(staves).classes, this.effort);
    if (partings) return this.amongAll(partings, question);
    return isPlaned ? { best: null, isSure: false } : this.byLevels(question);
  }

  private parts(staves: readonly number[]): Parts {
    if (this.last?.staves === staves) return this.last;
    const { pool, grid, effort } = this;
    const classes = classesOf(pool, staves);
    const own = grid && gridFrom(classes, grid.origin, grid.step);
    const onGrid =
      own && GridPartings.of(own, pool.request.count.max, bungsNeeded(pool, 1), effort);
    const girth = sum(staves.map((i) => pool.girth[i]!));
    const width = sum(staves.map((i) => pool.width[i]!));
    this.last = { staves, classes, girth, width, onGrid, strays: new StrayBound(pool, staves) };
    return this.last;
  }

  /** The girth of the first of two sets that close unplaned. */
  private unplanedWindow(girth: number): Window {
    const { low, high } = closingWindows(this.pool, this.pool.request.tolerance, 0).outer;
    return { low: Math.max(low, girth - high), high: Math.min(high, girth - low) };
  }

  /** Two sets of which the first is of a lot stray by so much or more together, mm. */
  private strayOf(
    { steps, girth: range }: Lot,
    { strays, girth, width }: Parts,
    [large, small]: readonly [number, number],
  ): number {
    const first = { count: large, width: large * this.grid!.origin + steps * this.grid!.step };
    return strays.ofPair(first, { count: small, width: width - first.width }, girth, range);
  }

  /** Looks for unplaned sets that stray by what is promised, then a little further. */
  private byLevels(question: PartingQuestion): PartingAnswer {
    const { promised, limit } = question;
    const from = promised.deviation;
    const end = Math.min(limit?.deviation ?? Infinity, from + LEVELS_TRIED);
    for (let deviation = from; deviation < end; deviation++) {
      const found = this.within(question, deviation);
      if (found === 'unknown') return { best: null, isSure: false };
      if (!found) continue;
      return { best: { sets: found, closeness: { planing: 0, deviation } }, isSure: true };
    }
    return { best: null, isSure: end === limit?.deviation };
  }

  /** Unplaned sets that stray by so many hundredths together; `steps`: those of the first set, if they are known. */
  within(
    { staves, counts }: Pick<PartingQuestion, 'staves' | 'counts'>,
    deviation: number,
    steps?: number,
  ): readonly ClosedSet[] | null | 'unknown' {
    const { pool, random, effort } = this;
    const parts = this.parts(staves);
    const { onGrid } = parts;
    if (!onGrid) {
      const { apart } = sharedWindow(pool, (deviation + 1) * COMPARED_TO);
      return split(pool, staves, counts, { deviation, apart, kinds: null }, random, effort);
    }
    let found: readonly ClosedSet[] | null = null;
    let isSure = true;
    for (const { lot, window } of this.lotsWithin(parts, onGrid, counts, deviation, steps)) {
      const portion = effort.portion(STEPS_FOR_LOT);
      onGrid.each(lot, window, portion, (numbers) => {
        if (!portion.step(JUDGING)) return true;
        found = closedWithin(pool, bothSets(parts, numbers), deviation);
        return found !== null;
      });
      if (found) return found;
      isSure &&= !portion.exhausted;
    }
    return isSure ? null : 'unknown';
  }

  /** What may have sets that stray so little: where there is room, sets alike in girth first. */
  private lotsWithin(
    parts: Parts,
    onGrid: GridPartings,
    counts: readonly [number, number],
    deviation: number,
    steps?: number,
  ): readonly { readonly lot: Lot; readonly window: Window }[] {
    const { girth } = parts;
    const window = this.windowWithin(girth, { planing: 0, deviation });
    const most = (deviation + 1) * COMPARED_TO;
    const roomy: { lot: Lot; window: Window; apart: number }[] = [];
    const tight: { lot: Lot; window: Window; strays: number }[] = [];
    onGrid.eachLot({ count: counts[0], ...(steps !== undefined && { steps }) }, window, (lot) => {
      const strays = this.strayOf(lot, parts, counts);
      const apart = Math.abs(lot.girth.low + lot.girth.high - girth);
      if (strays <= most - ROOM) roomy.push({ lot, window, apart });
      else if (strays <= most + ROUNDING)
        for (const piece of pieces(intersection(lot.girth, window))) {
          const ofPiece = this.strayOf({ ...lot, girth: piece }, parts, counts);
          if (ofPiece <= most + ROUNDING) tight.push({ lot, window: piece, strays: ofPiece });
        }
      return false;
    });
    roomy.sort((a, b) => a.apart - b.apart);
    tight.sort((a, b) => a.strays - b.strays);
    return [...roomy, ...tight];
  }

  /** Goes through all partings, in a window that narrows as better ones are found. */
  private amongAll(partings: Partings, question: PartingQuestion): PartingAnswer {
    const { pool, bounds, effort } = this;
    const { staves, counts, promised, isPlaned } = question;
    const parts = this.parts(staves);
    const { girth } = parts;
    const windowFor = (most: Closeness | null): Window =>
      isPlaned ? this.planedWindow(girth, most) : this.windowWithin(girth, most);
    let { limit } = question;
    let best: Parting | null = null;
    const areAll = partings.each(counts[0], windowFor(limit), effort, (first, numbers) => {
      if (isPlaned && limit && bounds.leastPlaning(first, girth - first) > limit.planing)
        return null;
      if (!effort.step(JUDGING)) return 'enough';
      const found = closed(pool, bothSets(parts, numbers()));
      if (!found || (limit && compareCloseness(found.closeness, limit) >= 0)) return null;
      if (!isPlaned && found.closeness.planing > 0) return null;
      best = found;
      limit = found.closeness;
      return compareCloseness(limit, promised) <= 0 ? 'enough' : windowFor(limit);
    });
    return { best, isSure: areAll && !effort.exhausted };
  }

  /** The girth of the first of two sets that close unplaned, and stray by no more than the limit's. */
  private windowWithin(girth: number, limit: Closeness | null): Window {
    const closes = this.unplanedWindow(girth);
    if (!limit) return closes;
    const { apart } = sharedWindow(this.pool, (limit.deviation + 1) * COMPARED_TO);
    return intersection(closes, { low: (girth - apart) / 2, high: (girth + apart) / 2 });
  }

  /** The girth of the first of two sets that close with no more planing than the limit's. */
  private planedWindow(girth: number, limit: Closeness | null): Window {
    const { low } = closingWindows(this.pool, this.pool.request.tolerance, 0).outer;
    const high = this.bounds.largestPlaned(limit?.planing ?? Infinity);
    return { low: Math.max(low, girth - high), high: Math.min(high, girth - low) };
  }
}

function intersection(a: Window, b: Window): Window {
  return { low: Math.max(a.low, b.low), high: Math.min(a.high, b.high) };
}

/** Of a range, little longer than it. */
function pieces({ low, high }: Window): Window[] {
  const step = (high - low) / PIECES;
  return Array.from({ length: PIECES }, (_, k) => {
    return { low: low + k * step - ROUNDING, high: low + (k + 1) * step + ROUNDING };
  });
}

/** The first set, of so many of each class, and the others. */
function bothSets(
  { staves, classes }: Parts,
  numbers: Uint16Array,
): readonly [readonly number[], readonly number[]] {
  const first = stavesOf(classes, numbers);
  const taken = new Set(first);
  return [first, staves.filter((i) => !taken.has(i))];
}

function closed(pool: Pool, sets: readonly (readonly number[])[]): Parting | null {
  const closed = closeAll(pool, sets);
  return closed && { sets: closed, closeness: closenessOf(closed) };
}

interface Parts {
  readonly staves: readonly number[];
  readonly classes: readonly StaveClass[];
  readonly girth: number;
  readonly width: number;
  readonly strays: StrayBound;
  readonly onGrid: GridPartings | null;
}
