/**
 * The best choice of two sets that leave few staves on the rack: the ways to leave some are few, where those to choose sets
 * are many. What a way to leave some promises is known before the others are parted into sets; ways are gone through
 * from the one that promises most, until none promises more than the best sets found.
 */

import { compareAims, type Aims, type ClosedSet } from './aims.js';
import { Parter } from './best-parting.js';
import { stavesOf, type StaveClass } from './classes.js';
import { Doubt } from './doubt.js';
import { Effort } from './effort.js';
import type { Outcome } from './exact-unions.js';
import { eachPattern } from './patterns.js';
import type { Pool } from './pool.js';
import { bungsNeeded } from './plan.js';
import { seeded } from './random.js';
import { sum } from './sum.js';
import { takeBest } from './take-best.js';
import { GirthBounds, isPlanedOnOne, planedPromise, type Closeness } from './union-promise.js';
import { coarseGrid } from './union-grid.js';
import { closingWindows } from './window.js';

/** More ways to leave staves than this aren't few. */
const FEW = 3000;
/** Work allowed for listing them, and for parting what they leave. */
const STEPS_FOR_LISTING = 500_000;
const STEPS_FOR_PARTING = 12_000_000;

/** What is taken and how it is to be parted. */
interface Job {
  readonly union: Union;
  readonly counts: readonly [number, number];
  readonly closeness: Closeness;
  readonly promised: Aims;
  /** whether the promise is as good as it gets before parting */
  readonly isRefined: boolean;
}

interface Union {
  /** in ascending order */
  readonly staves: readonly number[];
  readonly girth: number;
  readonly rest: number;
}

/** Null when the question stays open or ways are many, 'none' when there are no two sets. Yields now and then. */
export function* bestOfFewLeft(
  pool: Pool,
  classes: readonly StaveClass[],
): Generator<null, Outcome> {
  if (pool.standing.length > 0) return null;
  const parter = new Parter(
    pool,
    coarseGrid(classes),
    seeded(pool.request.seed ?? 1),
    new Effort(STEPS_FOR_PARTING),
  );
  for (const isPlaned of pool.request.plane > 0 ? [false, true] : [false]) {
    if (isPlaned && !isPlanedOnOne(pool)) return null;
    const unions = listUnions(pool, classes, isPlaned);
    if (!unions) return null;
    const outcome = yield* new Leavings(pool, unions, isPlaned, parter).best();
    if (outcome !== 'none') return outcome;
  }
  return 'none';
}

/** What staves two sets may be of; null when that is much. */
function listUnions(
  pool: Pool,
  classes: readonly StaveClass[],
  isPlaned: boolean,
): readonly Union[] | null {
  const { count, tolerance, plane } = pool.request;
  const all = pool.staves.length;
  const each = closingWindows(pool, tolerance, isPlaned ? plane : 0).outer;
  const girth = sum([...pool.girth]);
  const question = {
    classes,
    count: { min: Math.max(0, all - 2 * count.max), max: all - 2 * count.min },
    window: { low: girth - 2 * each.high, high: girth - 2 * each.low },
    bungs: 0,
    withStanding: false,
  };
  if (question.count.max < 0) return [];
  const effort = new Effort(STEPS_FOR_LISTING);
  const bungs = bungsNeeded(pool, 2);
  const unions: Union[] = [];
  const areAll = eachPattern(question, effort, (left, many, ofLeft) => {
    const taken = classes.map(({ staves }, k) => staves.length - left[k]!);
    const canBung = sum(classes.map((c, k) => (c.canBung ? taken[k]! : 0)));
    if (canBung < bungs) return;
    if (unions.length === FEW) return effort.end();
    const ofRest = sum(classes.map(({ offMiddle }, k) => offMiddle * left[k]!));
    const staves = stavesOf(classes, taken).sort((a, b) => a - b);
    unions.push({ staves, girth: girth - ofLeft, rest: many === 0 ? 0 : ofRest / many });
  });
  return areAll ? unions : null;
}

class Leavings {
  private readonly bounds: GirthBounds;
  private found: { sets: readonly ClosedSet[]; aims: Aims } | null = null;
  private readonly doubt = new Doubt();

  constructor(
    private readonly pool: Pool,
    private readonly unions: readonly Union[],
    private readonly isPlaned: boolean,
    private readonly parter: Parter,
  ) {
    this.bounds = new GirthBounds(pool);
  }

  *best(): Generator<null, Outcome> {
    const jobs = this.unions.flatMap((union) => this.jobsOf(union));
    const isBetter = (a: Job, b: Job): boolean => compareAims(a.promised, b.promised) < 0;
    for (let job = takeBest(jobs, isBetter); job; job = takeBest(jobs, isBetter)) {
      const best = this.found;
      if (best && compareAims(best.aims, job.promised) <= 0) break;
      yield null;
      if (this.parter.isSpent) {
        this.doubt.passOver(job.promised);
        break;
      }
      if (job.isRefined) this.part(job);
      else jobs.push(...this.refined(job));
    }
    const { found: best, doubt } = this;
    if (!best) return doubt.isNone ? 'none' : null;
    return { sets: best.sets, provenBest: doubt.spares(best.aims) };
  }

  private jobsOf(union: Union): Job[] {
    const { min, max } = this.pool.request.count;
    const closeness = this.isPlaned
      ? planedPromise(this.pool, union.staves)
      : this.bounds.unplanedTogether(union.girth);
    const jobs: Job[] = [];
    for (let small = min; 2 * small <= union.staves.length; small++) {
      const large = union.staves.length - small;
      if (large > max) continue;
      const counts = [large, small] as const;
      const promised = this.aims(union, counts, closeness);
      jobs.push({ union, counts, closeness, promised, isRefined: this.isPlaned });
    }
    return jobs;
  }

  private refined(job: Job): Job[] {
    const { union, counts } = job;
    const closeness = this.parter.promise(union.staves, counts, job.closeness);
    if (!closeness) return [];
    return [{ ...job, closeness, promised: this.aims(union, counts, closeness), isRefined: true }];
  }

  private part({ union, counts, closeness, promised }: Job): void {
    const { found: best, isPlaned } = this;
    // of the same closeness, it is better only by counts and rest
    const limit = best && this.limitOf(best.aims, promised);
    const question = { staves: union.staves, counts, isPlaned, promised: closeness, limit };
    const answer = this.parter.best(question);
    if (answer.best) {
      const aims = this.aims(union, counts, answer.best.closeness);
      this.found = { sets: answer.best.sets, aims };
    }
    if (!answer.isSure) this.doubt.passOver(promised);
  }

  /** What the closeness of sets must be better than. */
  private limitOf({ planing, deviation, ...best }: Aims, promised: Aims): Closeness {
    const isBetter =
      compareAims({ ...promised, planing, deviation }, { ...best, planing, deviation }) < 0;
    return { planing, deviation: isBetter ? deviation + 1 : deviation };
  }

  private aims(
    union: Union,
    [large, small]: readonly [number, number],
    closeness: Closeness,
  ): Aims {
    return { sets: 2, ...closeness, spread: large - small, rest: union.rest };
  }
}
