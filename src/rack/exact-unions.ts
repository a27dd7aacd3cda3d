/**
 * The best choice of one or two sets where choices are many: by the staves of all sets together, and the rest they leave.
 *
 * Without planing, sets that share n staves stray from the spec's diameter by at least as much, in sum, as the n staves
 * stray together (closing diameters average out), and where choices are many they can be parted so that they stray no
 * more. So all aims are known from the choice of staves before it is parted: choices are listed in order of the aims,
 * and the first that can be parted is the best.
 */

import { compareAims, hundredths, type Aims, type ClosedSet } from './aims.js';
import { stavesOf, type StaveClass } from './classes.js';
import { closesAt } from './closing.js';
import { Effort } from './effort.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import { seeded, type Random } from './random.js';
import { evenCounts } from './search.js';
import { split } from './split.js';
import { largestLoss, unionsWithin, type Union } from './union-list.js';
import { pricingsOf } from './union-grid.js';
import type { Pricing } from './union.js';
import { closingWindows } from './window.js';

export interface ProvenSets {
  readonly sets: readonly ClosedSet[];
  readonly provenBest: boolean;
}

/** Null when the question stays open. Yields now and then. */
export function* bestUnion(
  pool: Pool,
  classes: readonly StaveClass[],
  sets: number,
): Generator<null, ProvenSets | null> {
  const unions = new Unions(pool, classes, sets);
  const closest = yield* unions.closest();
  if (closest !== 'none') return closest;
  for (const deviation of DEVIATIONS.filter((limit) => limit < sets * pool.request.tolerance)) {
    const next = yield* unions.within(deviation);
    if (next !== 'none') return next;
  }
  return null;
}

/** Deviations within one hundredth are alike to the aims. */
const CLOSEST = 0.01;
/** Beyond them, sums of deviations are looked at in these steps, mm. */
const DEVIATIONS = [0.03, 0.1, 0.3, 1, 3];
/** How far closing diameters of parts may average from that of the whole, mm: what is left out is of second order. */
const SECOND_ORDER = 1e-4;
/** Losses of worth are looked at in these steps, from none but rounding. */
const NO_LOSS = 1e-4;
const FIRST_LOSS = 0.02;
const LOSS_GROWTH = 1.5;
/** Work allowed for one count and sum of steps, and for all that were put off. */
const STEPS_FOR_ONE = 300_000;
const STEPS_FOR_HARD = 4_000_000;
/** Work allowed for parting choices into sets, all together. */
const STEPS_FOR_PARTING = 2_000_000;
/** Choices that are tried to be parted, of those listed at once. */
const PARTED = 60;

type Outcome = ProvenSets | null | 'none';

interface Candidate {
  readonly staves: readonly number[];
  readonly counts: readonly number[];
  /** at best */
  readonly aims: Aims;
}

interface Parted {
  readonly sets: readonly ClosedSet[];
  readonly aims: Aims;
}

class Unions {
  private readonly random: Random;
  private readonly offMiddle: number;
  /** for parting choices; that of listing them is limited one by one */
  private readonly effort = new Effort(STEPS_FOR_PARTING);
  /** the best aims of what may have been passed over */
  private doubt: Aims | null = null;

  constructor(
    private readonly pool: Pool,
    private readonly classes: readonly StaveClass[],
    private readonly sets: number,
  ) {
    this.random = seeded(pool.request.seed ?? 1);
    this.offMiddle = pool.offMiddle.reduce((sum, off) => sum + off, 0);
  }

  /** The best of those that stray by less than a hundredth. Hard questions are put off until a good answer is known. */
  *closest(): Generator<null, Outcome> {
    let best: Parted | null = null;
    let jobs = this.pricings(CLOSEST)
      .map((pricing) => ({ pricing, promised: this.aims(pricing.question.count, pricing.most, 0) }))
      .sort((a, b) => compareAims(a.promised, b.promised));
    const more = new Effort(STEPS_FOR_HARD);
    for (const effort of [() => new Effort(STEPS_FOR_ONE), () => more]) {
      const putOff: typeof jobs = [];
      for (const job of jobs) {
        if (best && compareAims(best.aims, job.promised) <= 0) break;
        const found: Parted | null | 'open' = yield* this.byLoss(job.pricing, best, effort());
        if (found === 'open') putOff.push(job);
        else best = found ?? best;
      }
      jobs = putOff;
    }
    for (const { promised } of jobs) this.passOver(promised);
    return this.outcome(best);
  }

  /** The first that can be parted and betters `limit`, by growing loss. */
  private *byLoss(pricing: Pricing, limit: Parted | null, effort: Effort) {
    const end = Math.min(largestLoss(pricing), this.lossUpTo(limit?.aims ?? null, pricing));
    let seen = 0;
    for (let loss = NO_LOSS; ; loss = Math.min(end, Math.max(FIRST_LOSS, loss * LOSS_GROWTH))) {
      yield null;
      const list = unionsWithin(pricing, loss, effort);
      if (!list) return 'open';
      const candidates = list.unions.slice(seen).map((union) => this.candidate(union));
      const found = this.firstThatParts(candidates.filter(({ aims }) => aims.deviation === 0));
      // choices without a loss are all alike
      if (!list.areAll && !(found && loss === NO_LOSS)) return 'open';
      if (found) return limit && compareAims(limit.aims, found.aims) <= 0 ? null : found;
      seen = list.unions.length;
      if (loss >= end) return null;
    }
  }

  private passOver(aims: Aims): void {
    if (!this.doubt || compareAims(aims, this.doubt) < 0) this.doubt = aims;
  }

  private outcome(best: Parted | null): Outcome {
    if (!best) return this.doubt ? null : 'none';
    const provenBest = !this.doubt || compareAims(best.aims, this.doubt) <= 0;
    return { sets: best.sets, provenBest };
  }

  /** The loss beyond which a choice no longer betters `limit` by its rest. */
  private lossUpTo(limit: Aims | null, { most, question }: Pricing): number {
    const spread = question.count % this.sets === 0 ? 0 : 1;
    if (!limit || limit.spread !== spread) return Infinity;
    const left = this.pool.staves.length - question.count;
    return Math.max(0, most - this.offMiddle + limit.rest * left);
  }

  /** The best of all whose deviations sum to less than so much; for racks with few such choices. */
  *within(deviation: number): Generator<null, Outcome> {
    const candidates: Candidate[] = [];
    for (const pricing of this.pricings(deviation)) {
      yield null;
      const effort = new Effort(STEPS_FOR_ONE);
      const list = unionsWithin(pricing, largestLoss(pricing), effort);
      if (!list?.areAll) return null;
      candidates.push(...list.unions.map((union) => this.candidate(union)));
    }
    candidates.sort((a, b) => compareAims(a.aims, b.aims));
    return this.outcome(this.firstThatParts(candidates));
  }

  private pricings(deviation: number): Pricing[] {
    const { pool, classes, sets } = this;
    const { min, max } = pool.request.count;
    const each = closingWindows(pool, deviation / sets, 0).outer;
    const window = { low: sets * each.low - SECOND_ORDER, high: sets * each.high + SECOND_ORDER };
    const bungs = bungsNeeded(pool, sets);
    const most = Math.min(pool.staves.length, sets * max);
    const counts = Array.from(
      { length: Math.max(0, most - sets * min + 1) },
      (_, k) => sets * min + k,
    );
    return counts.flatMap((count) => pricingsOf({ classes, count, window, bungs }));
  }

  private candidate({ numbers, offMiddle }: Union): Candidate {
    const { pool, sets } = this;
    const staves = stavesOf(this.classes, numbers);
    const widths = staves.map((i) => pool.width[i]!);
    const together = closesAt(widths, pool.request.measured, sets)!;
    const strays = sets * Math.abs(together - pool.request.diameter);
    const deviation = hundredths(Math.max(0, strays - SECOND_ORDER));
    const counts = evenCounts(staves.length, sets);
    return { staves, counts, aims: this.aims(staves.length, offMiddle, deviation) };
  }

  private aims(count: number, offMiddle: number, deviation: number): Aims {
    const { pool, sets } = this;
    const left = pool.staves.length - count;
    const rest = left === 0 ? 0 : (this.offMiddle - offMiddle) / left;
    return { sets, planing: 0, deviation, spread: count % sets === 0 ? 0 : 1, rest };
  }

  private firstThatParts(candidates: readonly Candidate[]): Parted | null {
    for (const { staves, counts, aims } of candidates.slice(0, PARTED)) {
      const sets = split(this.pool, staves, counts, aims.deviation, this.random, this.effort);
      if (sets && sets !== 'unknown') return { sets, aims };
      if (sets === 'unknown') this.passOver(aims);
      // counts further apart, or deviations that don't add up as well, aren't tried: they might still do
      else if (counts.length > 1) this.passOver({ ...aims, spread: aims.spread + 2 });
    }
    const next = candidates[PARTED];
    if (next) this.passOver(next.aims);
    return null;
  }
}
