/**
 * The best choice of one or two sets where choices are many: by the staves of all sets together, and the rest they leave.
 *
 * Sums of deviations are gone through hundredth by hundredth, from none on. In each, planing and deviation are settled,
 * counts are chosen by those who ask, and the rest is known from the choice of staves before it is parted: choices are
 * listed by growing rest, and the first that can be parted into sets is the best of its counts.
 */

import { COMPARED_TO, compareAims, type Aims, type ClosedSet } from './aims.js';
import { stavesOf, type StaveClass } from './classes.js';
import { Divider, sharesOf } from './divider.js';
import { Doubt } from './doubt.js';
import { Effort } from './effort.js';
import { priceJointly } from './joint-prices.js';
import type { GridPartings } from './grid-partings.js';
import type { Grid, Kind } from './kinds.js';
import type { Pool } from './pool.js';
import { seeded } from './random.js';
import { bestWithRare } from './rare-kind.js';
import { sum } from './sum.js';
import { takeBest } from './take-best.js';
import { offLattice, pricingOf } from './union-grid.js';
import {
  questionFor,
  questionsFor,
  windowsFor,
  type SharedQuestion,
  type Windows,
} from './union-jobs.js';
import { largestLoss, unionsBetween, unionsWithin, type Union } from './union-list.js';
import type { Pricing } from './union.js';

export interface ProvenSets {
  readonly sets: readonly ClosedSet[];
  readonly provenBest: boolean;
}

/** Losses of worth are looked at in these steps, from none but rounding. */
const NO_LOSS = 1e-4;
const FIRST_LOSS = 0.02;
const LOSS_GROWTH = 1.5;
/** Work allowed for one question before it is put off. */
const STEPS_FOR_ONE = 300_000;
/** Pricing two sets together takes some times as long as pricing them as one. */
const PRICING_JOINTLY = 3;

/** Sums this part of a step short of a place on a grid lie on it: rounding. */
const ON_LATTICE = 1e-4;

/** Null when the question stays open, 'none' when there are no such sets. */
export type Outcome = ProvenSets | null | 'none';

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
  /** what kinds the sets are to be of; null: whatever they come to */
  readonly pair: readonly [Kind, Kind] | null;
  /** all that lose no more have been seen */
  readonly seenTo: number;
}

type PricedJob = Job & { readonly pricing: Pricing };

/** The job that promises more comes first. */
const isBetter = (a: Job, b: Job): boolean => compareAims(a.promised, b.promised) < 0;

/** Whether the prices of a job are as good as they get. */
function isPriced(job: Job): job is PricedJob {
  return job.pricing !== null && job.kinds.length === 0;
}

/** Work allowed for pricings, for questions that were put off, and for parting choices into sets. */
export type Efforts = Record<'pricing' | 'listing' | 'parting', Effort>;

export interface OnGrid {
  /** null when widths lie on none, or a fine one */
  readonly grid: Grid | null;
  /** of two sets; null when they would be large */
  readonly tables: GridPartings | null;
}

/** Choices for sets whose deviations sum to so many hundredths. */
export class Unions {
  private readonly grid: Grid | null;
  private readonly tables: GridPartings | null;
  private readonly divider: Divider;
  private readonly offMiddle: number;
  private readonly windows: Windows;
  private readonly doubt = new Doubt();

  constructor(
    private readonly pool: Pool,
    private readonly classes: readonly StaveClass[],
    { grid, tables }: OnGrid,
    private readonly sets: number,
    /** whole hundredths of a millimetre; that less is impossible is known */
    private readonly deviation: number,
    private readonly effort: Efforts,
  ) {
    this.grid = grid;
    this.tables = tables;
    this.windows = windowsFor(pool, (deviation + 1) * COMPARED_TO);
    const random = seeded(pool.request.seed ?? 1);
    const within = { deviation, apart: this.windows.together.apart };
    this.divider = new Divider(pool, grid, within, random, effort.parting);
    this.offMiddle = pool.offMiddle.reduce((all, off) => all + off, 0);
  }

  /** False when prices alone say that there are no such sets. */
  isOpen(): boolean {
    for (let jobs = this.jobs(); jobs.length > 0;) {
      const job = jobs.pop()!;
      if (isPriced(job)) return true;
      jobs.push(...this.priced(job));
      if (!this.doubt.isNone) return true;
    }
    return false;
  }

  /** Hard questions are put off until a good answer is known. */
  *best(): Generator<null, Outcome> {
    let best: Parted | null = null;
    let jobs = this.jobs();
    for (const isHard of [false, true]) {
      const putOff: Job[] = [];
      for (let job = takeBest(jobs, isBetter); job; job = takeBest(jobs, isBetter)) {
        if (best && compareAims(best.aims, job.promised) <= 0) break;
        yield null;
        if (!isPriced(job)) {
          jobs.push(...this.priced(job));
          continue;
        }
        const effort = isHard ? this.effort.listing : new Effort(STEPS_FOR_ONE);
        const rare: Answer | null = isHard ? this.withRare(job, best, effort) : null;
        const answer: Answer = rare ?? (yield* this.answer(job, best, effort));
        best = answer.found ?? best;
        if (answer.left) putOff.push(answer.left);
      }
      jobs = putOff;
    }
    for (const { promised } of jobs) this.doubt.passOver(promised);
    if (!best) return this.doubt.isNone ? 'none' : null;
    return { sets: best.sets, provenBest: this.doubt.spares(best.aims) };
  }

  private jobs(): Job[] {
    const { pool, classes, grid, sets, tables } = this;
    const questions = questionsFor(pool, classes, grid, sets, this.windows, tables);
    return questions.map((shared) => {
      const promised = this.aims(shared.counts, this.offMiddle);
      return { ...shared, promised, pricing: null, pair: null, seenTo: -1 };
    });
  }

  /** With prices, or with better ones: one job for each way that the kinds may be. */
  private priced(job: Job): Job[] {
    if (!this.effort.pricing.step(job.pricing ? PRICING_JOINTLY * job.kinds.length : 1)) {
      this.doubt.passOver(job.promised);
      return [];
    }
    if (!job.pricing) {
      const pricing = pricingOf(job.question);
      return pricing ? [{ ...job, pricing, promised: this.promise(job, pricing.most) }] : [];
    }
    return job.kinds.flatMap((pair) => {
      const { pool, grid, windows } = this;
      const ofPair = questionFor(job.question, pool, grid!, pair, windows.deviation);
      const joint = ofPair && priceJointly(ofPair.question, grid!, pair, ofPair.apart);
      if (!joint) return [];
      const promised = this.promise(job, Math.min(joint.most, job.pricing!.most));
      const pricing = { ...joint, limits: job.pricing!.limits };
      return [{ ...job, question: ofPair.question, pricing, promised, pair, kinds: [] }];
    });
  }

  /** The best that can be parted and betters `limit`, by growing loss; and what is left of a job when the effort ends. */
  private *answer(job: PricedJob, limit: Parted | null, effort: Effort): Generator<null, Answer> {
    const { pricing } = job;
    const largest = largestLoss(pricing);
    let { seenTo } = job;
    let found: Parted | null = null;
    let most = Infinity;
    for (;;) {
      const loss = Math.min(nextLoss(seenTo), largest, this.lossUpTo(limit, job), most);
      yield null;
      const list = unionsWithin(pricing, loss, effort);
      const better: Parted | null =
        list &&
        this.bestThatParts(
          unionsBetween(list, pricing, { above: seenTo, upTo: loss }),
          job,
          found ?? limit,
        );
      found = better ?? found;
      const end = Math.min(largest, this.lossUpTo(found ?? limit, job));
      // choices without a loss are all alike
      const isDone = found !== null && end <= NO_LOSS;
      // too many to be listed at once
      const half = (Math.max(0, seenTo) + loss) / 2;
      if (!isDone && list && !list.areAll && loss - half > FIRST_LOSS) {
        most = half;
        continue;
      }
      most = Infinity;
      if (!isDone && (!list?.areAll || this.effort.parting.exhausted)) {
        const promised = this.promise(job, pricing.most - Math.max(0, seenTo));
        return { found, left: { ...job, promised, seenTo } };
      }
      if (isDone || loss >= end) return { found, left: null };
      seenTo = loss;
    }
  }

  /** The answer by way of the kind that few choices make; null when neither is such a kind. */
  private withRare(job: PricedJob, limit: Parted | null, effort: Effort): Answer | null {
    const { pool, grid, deviation } = this;
    if (!job.pair || pool.standing.length > 0) return null;
    const above = job.pricing.most - this.lossUpTo(limit, job) - ON_LATTICE * grid!.step;
    const question = { grid: grid!, kinds: job.pair, deviation, above };
    const best = bestWithRare(pool, question, effort);
    if (!best?.sets) return best && { found: null, left: null };
    const found = { sets: best.sets, aims: this.aims(job.counts, best.offMiddle) };
    return { found: limit && compareAims(limit.aims, found.aims) <= 0 ? null : found, left: null };
  }

  /** The loss beyond which a choice no longer betters `limit` by its rest. */
  private lossUpTo(limit: Parted | null, job: PricedJob): number {
    const { spread } = job.promised;
    if (!limit || limit.aims.spread !== spread) return Infinity;
    const left = this.pool.staves.length - job.question.count;
    const reached = this.offMiddle - limit.aims.rest * left;
    return Math.max(0, job.pricing.most - this.nextOff(job, reached));
  }

  /** The best aims when distances from the middle sum to so much at most. */
  private promise(job: Job, most: number): Aims {
    if (!this.grid) return this.aims(job.counts, most);
    const { base, step } = offLattice(this.grid, job.question);
    return this.aims(job.counts, base + Math.floor((most - base) / step + ON_LATTICE) * step);
  }

  /** The least that betters what distances from the middle sum to. */
  private nextOff(job: Job, reached: number): number {
    if (!this.grid) return reached;
    const { base, step } = offLattice(this.grid, job.question);
    return base + (Math.floor((reached - base) / step + ON_LATTICE) + 1) * step;
  }

  private bestThatParts(
    unions: readonly Union[],
    { counts, pair }: Job,
    limit: Parted | null,
  ): Parted | null {
    const { effort } = this;
    const canBe = sharesOf(pair, this.tables);
    for (const { numbers, offMiddle } of unions) {
      const aims = this.aims(counts, offMiddle);
      if (limit && compareAims(limit.aims, aims) <= 0) return null;
      if (!canBe(numbers)) continue;
      const staves = stavesOf(this.classes, numbers);
      const sets = this.divider.part(staves, counts, pair);
      if (sets && sets !== 'unknown') return { sets, aims };
      if (sets === 'unknown') this.doubt.passOver(aims);
      // the others are left with the job
      if (effort.parting.exhausted) return null;
    }
    return null;
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
