/** Runs a search step by step, letting the caller's signals in between, until it ends or is asked to stop. */

import type { MatchHooks, MatchProgress } from './request.js';

export interface Driven<State, Result> {
  /** null when the search was stopped */
  readonly result: Result | null;
  /** where the search stood last; null when it ended at once */
  readonly state: State | null;
}

/** Steps between two breaths when there is no clock. */
const STEPS_AT_A_BREATH = 256;
/** Seconds between two breaths. */
const BREATH = 0.05;

/** Runs steps under a caller's hooks. One for a whole request, so that a stop once asked for lasts. */
export class Driver {
  stopped = false;
  private steps = 0;
  private breathedAt = -Infinity;

  constructor(private readonly hooks: MatchHooks) {}

  async run<State, Result>(
    search: Generator<State, Result>,
    progress: (state: State) => MatchProgress,
  ): Promise<Driven<State, Result>> {
    let last: State | null = null;
    for (let step = search.next(); ; step = search.next()) {
      if (step.done) return { result: step.value, state: last };
      last = step.value;
      if (!this.isTimeToBreathe()) continue;
      this.hooks.onProgress?.(progress(last));
      await this.hooks.breathe?.();
      this.stopped ||= this.hooks.shouldStop?.() ?? false;
      if (this.stopped) return { result: null, state: last };
    }
  }

  private isTimeToBreathe(): boolean {
    this.steps++;
    const { now } = this.hooks;
    if (!now) return this.steps % STEPS_AT_A_BREATH === 0;
    const time = now();
    if (time - this.breathedAt < BREATH) return false;
    this.breathedAt = time;
    return true;
  }
}
