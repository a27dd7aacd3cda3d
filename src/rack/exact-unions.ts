/**
 * The best choice of one or two sets where choices are many: by the staves of all sets together, and the rest they leave.
 *
 * Sums of deviations are gone through hundredth by hundredth, from none on. In each, planing and deviation are settled,
 * counts are chosen by those who ask, and the rest is known from the choice of staves before it is parted: choices are
 * listed by growing rest, and the first that can be parted into sets is the best of its counts.
 */

import { COMPARED_TO, compareAims, type Aims, type ClosedSet } from './aims.js';
import { stavesOf, type StaveClass } from './classes.js';
import { Effort } from './effort.js';
import { priceJointly } from './joint-prices.js';
import { leastDeviation } from './least-deviation.js';
import type { Pool } from './pool.js';
import { seeded, type Random } from './random.js';
import { split } from './split.js';
import { sum } from './sum.js';
import { coarseGrid, pricingOf } from './union-grid.js';
import { questionsFor, windowsFor, type SharedQuestion, type Windows } from './union-jobs.js';
import { largestLoss, unionsWithin, type Union } from './union-list.js';
import type { Pricing } from './union.js';
import { ROUNDING } from './window.js';

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
  const most = Math.min(MOST_HUNDREDTHS, Math.ceil((sets * pool.request.tolerance) / COMPARED_TO));
  const effort = { listing: new Effort(STEPS_FOR_HARD), parting: new Effort(STEPS_FOR_PARTING) };
  for (let deviation = 0; deviation < most; deviation++) {
    const unions = new Unions(pool, classes, sets, deviation, effort);
    const outcome = yield* unions.best();
    if (outcome !== 'none') return outcome;
  }
  return null;
}

/** Racks whose best sets stray further are left to others. */
const MOST_HUNDREDTHS = 60;
/** Losses of worth are looked at in these steps, from none but rounding. */
const NO_LOSS = 1e-4;
const FIRST_LOSS = 0.02;
const LOSS_GROWTH = 1.5;
/** Work allowed for one question, and for all that were put off. */
const STEPS_FOR_ONE = 300_000;
const STEPS_FOR_HARD = 8_000_000;
/** Work allowed for parting choices into sets, all together. */
const STEPS_FOR_PARTING = 15_000_000;

type Outcome = ProvenSets | null | 'none';

interface Parted {
  readonly sets: readonly ClosedSet[];
  readonly aims: Aims;
}

interface Answer {
  readonly found: Parted | null;
  readonly left: Job | null;
}

/** A question on its way to an answer. */
interface Job extends SharedQuestion {
  /** no answer is better */
  readonly promised: Aims;
  readonly pricing: Pricing | null;
  /** all that lose no more have been seen */
  readonly seenTo: number;
  readonly seen: number;
}

class Unions {
  private readonly random: Random;
  private readonly offMiddle: number;
  private readonly windows: Windows;
  /** the best aims of what may have been passed over */
  private doubt: Aims | null = null;

  constructor(
    private readonly pool: Pool,
    private readonly classes: readonly StaveClass[],
    private readonly sets: number,
    /** whole hundredths of a millimetre; that less is impossible is known */
    private readonly deviation: number,
    private readonly effort: { readonly listing: Effort; readonly parting: Effort },
  ) {
    this.windows = windowsFor(pool, (deviation + 1) * COMPARED_TO);
    this.random = seeded(pool.request.seed ?? 1);
    this.offMiddle = pool.offMiddle.reduce((all, off) => all + off, 0);
  }

  /** Hard questions are put off until a good answer is known. */
  *best(): Generator<null, Outcome> {
    let best: Parted | null = null;
    let jobs = this.jobs();
    for (const effort of [() => new Effort(STEPS_FOR_ONE), () => this.effort.listing]) {
      const putOff: Job[] = [];
      for (let job = takeBest(jobs); job; job = takeBest(jobs)) {
        if (best && compareAims(best.aims, job.promised) <= 0) break;
        yield null;
        if (!job.pricing || job.kinds.length > 0) {
          jobs.push(...this.priced(job));
          continue;
        }
        const answer: Answer = yield* this.answer({ ...job, pricing: job.pricing }, best, effort());
        best = answer.found ?? best;
        if (answer.left) putOff.push(answer.left);
      }
      jobs = putOff;
    }
    for (const { promised } of jobs) this.passOver(promised);
    if (!best) return this.doubt ? null : 'none';
    const provenBest = !this.doubt || compareAims(best.aims, this.doubt) <= 0;
    return { sets: best.sets, provenBest };
  }

  private jobs(): Job[] {
    const { pool, classes, sets } = this;
    const questions = questionsFor(pool, classes, sets, this.windows);
    return questions.map((shared) => {
      const promised = this.aims(shared.counts, this.offMiddle);
      return { ...shared, promised, pricing: null, seenTo: -1, seen: 0 };
    });
  }

  /** With prices, or with better ones: one job for each way that the kinds may be. */
  private priced(job: Job): Job[] {
    if (!job.pricing) {
      const pricing = pricingOf(job.question);
      return pricing ? [{ ...job, pricing, promised: this.aims(job.counts, pricing.most) }] : [];
    }
    const grid = coarseGrid(this.classes)!;
    return job.kinds.flatMap((kinds) => {
      const pricing = priceJointly(job.question, grid, kinds);
      if (!pricing) return [];
      const promised = this.aims(job.counts, Math.min(pricing.most, job.pricing!.most));
      return [
        { ...job, pricing: { ...pricing, limits: job.pricing!.limits }, promised, kinds: [] },
      ];
    });
  }

  /** The best that can be parted and betters `limit`, by growing loss; and what is left of a job when the effort ends. */
  private *answer(
    job: Job & { readonly pricing: Pricing },
    limit: Parted | null,
    effort: Effort,
  ): Generator<null, Answer> {
    const { pricing, counts } = job;
    const largest = largestLoss(pricing);
    let { seen, seenTo } = job;
    let found: Parted | null = null;
    for (;;) {
      const loss = Math.min(nextLoss(seenTo), largest, this.lossUpTo(limit, job));
      yield null;
      const list = unionsWithin(pricing, loss, effort);
      const better: Parted | null =
        list && this.bestThatParts(list.unions.slice(seen), counts, found ?? limit);
      found = better ?? found;
      const end = Math.min(largest, this.lossUpTo(found ?? limit, job));
      // choices without a loss are all alike
      const isDone = found !== null && end <= NO_LOSS;
      if (!isDone && (!list?.areAll || this.effort.parting.exhausted)) {
        const promised = this.aims(counts, pricing.most - Math.max(0, seenTo));
        return { found, left: { ...job, promised, seen, seenTo } };
      }
      if (isDone || loss >= end) return { found, left: null };
      seen = list!.unions.length;
      seenTo = loss;
    }
  }

  /** The loss beyond which a choice no longer betters `limit` by its rest. */
  private lossUpTo(limit: Parted | null, job: Job & { readonly pricing: Pricing }): number {
    const { spread } = job.promised;
    if (!limit || limit.aims.spread !== spread) return Infinity;
    const left = this.pool.staves.length - job.question.count;
    return Math.max(0, job.pricing.most - this.offMiddle + limit.aims.rest * left);
  }

  private bestThatParts(
    unions: readonly Union[],
    counts: readonly number[],
    limit: Parted | null,
  ): Parted | null {
    const { pool, random, effort } = this;
    const within = { deviation: this.deviation, apart: this.windows.together.apart };
    for (const { numbers, offMiddle } of [...unions].sort((a, b) => b.offMiddle - a.offMiddle)) {
      const aims = this.aims(counts, offMiddle);
      if (limit && compareAims(limit.aims, aims) <= 0) return null;
      const staves = stavesOf(this.classes, numbers);
      if (this.straysTooFar(staves, counts)) continue;
      const sets = split(pool, staves, counts, within, random, effort.parting);
      if (sets && sets !== 'unknown') return { sets, aims };
      if (sets === 'unknown') this.passOver(aims);
      // the others are left with the job
      if (effort.parting.exhausted) return null;
    }
    return null;
  }

  private straysTooFar(staves: readonly number[], counts: readonly number[]): boolean {
    if (counts.length === 1) return false;
    const most = (this.deviation + 1) * COMPARED_TO;
    return leastDeviation(this.pool, staves, counts, most) > most + ROUNDING;
  }

  private passOver(aims: Aims): void {
    if (!this.doubt || compareAims(aims, this.doubt) < 0) this.doubt = aims;
  }

  private aims(counts: readonly number[], offMiddle: number): Aims {
    const { pool, sets, deviation } = this;
    const left = pool.staves.length - sum(counts);
    const rest = left === 0 ? 0 : (this.offMiddle - offMiddle) / left;
    return { sets, planing: 0, deviation, spread: counts[0]! - counts.at(-1)!, rest };
  }
}

function nextLoss(seenTo: number): number {
  return seenTo < 0 ? NO_LOSS : Math.max(FIRST_LOSS, seenTo * LOSS_GROWTH);
}

/** Takes out the job that promises most. */
function takeBest(jobs: Job[]): Job | undefined {
  let best = 0;
  for (const [i, { promised }] of jobs.entries())
    if (compareAims(promised, jobs[best]!.promised) < 0) best = i;
  return jobs.splice(best, 1)[0];
}
