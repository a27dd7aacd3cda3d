/** From the staves of each set to what a cooper is told: order round the ring, planing, spares and sureness. */

import type { ClosedSet } from './aims.js';
import { halfAngle } from './closing.js';
import type { Driver } from './drive.js';
import type { Pool } from './pool.js';
import { seeded, type Random } from './random.js';
import type { MatchedSet } from './request.js';
import { orderRing, type OrderedRing } from './ring.js';
import { ringFacts } from './ring-measure.js';
import { sparesFor } from './spares.js';
import { closingDeviation } from './step.js';

/** Beginnings tried for each ring, and for all rings together where there are many. */
const STARTS = 12;
const STARTS_ALTOGETHER = 600;

export async function finishSets(
  pool: Pool,
  sets: readonly ClosedSet[],
  step: number,
  driver: Driver,
): Promise<readonly MatchedSet[]> {
  const finished: MatchedSet[] = [];
  const run = finishing(pool, sets, step, finished);
  await driver.run(run, (done) => ({ stage: 'ordering', done, of: sets.length }));
  // stopped: the other sets go out in their first order, so that none is lost
  for (const set of sets.slice(finished.length)) finished.push(finishSet(pool, set, [], step, 1));
  return finished;
}

function* finishing(
  pool: Pool,
  sets: readonly ClosedSet[],
  step: number,
  finished: MatchedSet[],
): Generator<number, void> {
  const used = new Set(sets.flatMap(({ staves }) => staves));
  const rest = [...pool.staves.keys()].filter((stave) => !used.has(stave));
  const starts = Math.max(1, Math.min(STARTS, Math.floor(STARTS_ALTOGETHER / sets.length)));
  for (const set of sets) {
    finished.push(finishSet(pool, set, rest, step, starts));
    yield finished.length;
  }
}

function finishSet(
  pool: Pool,
  set: ClosedSet,
  rest: readonly number[],
  step: number,
  starts: number,
): MatchedSet {
  const { staves, planeOff, closesAt } = set;
  const widths = staves.map((stave, i) => pool.width[stave]! - planeOff[i]!);
  const random = seeded(pool.request.seed ?? 1);
  const { order, measure } = orderOf(pool, set, widths, starts, random);
  const standardDeviation = closingDeviation(step, staves.length);
  return {
    staves: order.map((i) => {
      const { mark, width } = pool.staves[staves[i]!]!;
      return { mark, width, planeOff: planeOff[i]! };
    }),
    closesAt,
    count: staves.length,
    bungStave: set.bungStave === null ? null : pool.staves[set.bungStave]!.mark,
    ringMeasure: measure.measure,
    ring: measure,
    laidWidth: widths.reduce((sum, width) => sum + width, 0),
    standardDeviation,
    cures: sparesFor(pool, set, widths, rest, 2 * standardDeviation),
  };
}

function orderOf(
  pool: Pool,
  { staves, closesAt, bungStave }: ClosedSet,
  widths: readonly number[],
  starts: number,
  random: Random,
): OrderedRing {
  const { measured, headJoints } = pool.request;
  const angles = widths.map((width) => halfAngle(width, closesAt, measured));
  const facts = ringFacts(widths, angles, closesAt, headJoints ?? []);
  const first = bungStave === null ? staves.length - 1 : staves.indexOf(bungStave);
  const run = pool.standing.map((stave) => staves.indexOf(stave)).filter((place) => place >= 0);
  return orderRing({ facts, first, run, starts }, random);
}
