/** Puts the staves of a set in order round the ring: the bung stave at the top, wide and narrow taking turns. */

import { measureRing, type RingFacts, type RingMeasure } from './ring-measure.js';
import type { Random } from './random.js';
import { RingSums } from './ring-swaps.js';

export interface RingQuestion {
  readonly facts: RingFacts;
  /** the stave at the top */
  readonly first: number;
  /** staves already standing side by side, in this order; it is kept, and they stay together */
  readonly run: readonly number[];
  /** how many times to begin anew; more gives a better order */
  readonly starts: number;
}

export interface OrderedRing {
  /** stave numbers, the one at the top first */
  readonly order: readonly number[];
  readonly measure: RingMeasure;
}

/** The best order found by exchanging places from several beginnings. */
export function orderRing(question: RingQuestion, random: Random): OrderedRing {
  let best: OrderedRing | null = null;
  for (let start = 0; start < question.starts; start++) {
    const seats = takeSeats(question, start, random);
    const found = exchangePlaces(question.facts, seats);
    if (!best || found.measure.measure < best.measure.measure) best = found;
  }
  return best!;
}

interface Seats {
  readonly order: number[];
  /** places whose staves may change */
  readonly free: readonly number[];
}

/** A beginning: fixed staves on their places, the others so that the joints stray as little as may be. */
function takeSeats({ facts, first, run }: RingQuestion, start: number, random: Random): Seats {
  const n = facts.widths.length;
  const order = new Array<number>(n).fill(-1);
  order[0] = first;
  const runStart = placeOfRun(n, run, first, start, random);
  for (const [k, stave] of run.entries()) order[(runStart + k) % n] = stave;
  const free = [...order.keys()].filter((place) => order[place] === -1);
  const seated = new Set(order);
  const waiting = facts.widths.map((_, stave) => stave).filter((stave) => !seated.has(stave));
  if (start === 0) alternate(facts, order, free, waiting);
  else for (const place of free) order[place] = draw(waiting, random.below(waiting.length));
  return { order, free };
}

/** Where the run begins: through the top when the top stave is in it, else anywhere it fits. */
function placeOfRun(
  n: number,
  run: readonly number[],
  first: number,
  start: number,
  random: Random,
): number {
  const within = run.indexOf(first);
  if (within >= 0) return (n - within) % n;
  const places = n - run.length;
  return start === 0 || places < 1 ? 1 : 1 + random.below(places);
}

function draw(waiting: number[], at: number): number {
  return waiting.splice(at, 1)[0]!;
}

/** Fills each free place with the stave whose far joint comes nearest to where an even joint would lie. */
function alternate(
  facts: RingFacts,
  order: number[],
  free: readonly number[],
  waiting: number[],
): void {
  const { widths, meanWidth } = facts;
  let ahead = widths[order[0]!]! - meanWidth;
  const places = new Set(free);
  for (let place = 1; place < order.length; place++) {
    if (places.has(place)) {
      const miss = (stave: number): number => Math.abs(ahead / 2 + widths[stave]! - meanWidth);
      let best = 0;
      for (const [k, stave] of waiting.entries()) if (miss(stave) < miss(waiting[best]!)) best = k;
      order[place] = draw(waiting, best);
    }
    ahead += widths[order[place]!]! - meanWidth;
  }
}

/** Exchanges two places at a time as long as that helps. */
function exchangePlaces(facts: RingFacts, { order, free }: Seats): OrderedRing {
  let measure = measureRing(facts, order);
  let sums = new RingSums(facts, order);
  for (let helped = true; helped;) {
    helped = false;
    for (const [k, a] of free.entries())
      for (let l = k + 1; l < free.length; l++) {
        const b = free[l]!;
        if (facts.widths[order[a]!] === facts.widths[order[b]!]) continue;
        const limit = measure.measure + ROUNDING;
        if (sums.measureAfter(a, b, limit) > limit) continue;
        swap(order, a, b);
        const next = measureRing(facts, order);
        if (next.measure < measure.measure - LEAST_GAIN) {
          measure = next;
          sums = new RingSums(facts, order);
          helped = true;
        } else swap(order, a, b);
      }
  }
  return { order: [...order], measure };
}

/** Running sums stray from the measure by less than this, mm. */
const ROUNDING = 1e-6;
/** Smaller gains than this are rounding, mm. */
const LEAST_GAIN = 1e-9;

function swap(order: number[], a: number, b: number): void {
  [order[a], order[b]] = [order[b]!, order[a]!];
}
