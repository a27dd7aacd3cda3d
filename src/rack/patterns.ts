/** Every way to take so many staves of each class that their girth shares fall into a window. */

import type { StaveClass } from './classes.js';
import type { Effort } from './effort.js';
import type { Window } from './window.js';

export interface PatternQuestion {
  readonly classes: readonly StaveClass[];
  /** staves altogether */
  readonly count: { readonly min: number; readonly max: number };
  readonly window: Window;
  /** at least so many that can be bung staves */
  readonly bungs: number;
  /** whether standing staves must all be taken */
  readonly withStanding: boolean;
}

/** `numbers` holds how many of each class; it is reused between calls. */
export type PatternVisitor = (numbers: Uint16Array, count: number, girth: number) => void;

/** Calls `visit` for each pattern; false when the effort ended before all were seen. */
export function eachPattern(
  question: PatternQuestion,
  effort: Effort,
  visit: PatternVisitor,
): boolean {
  const { classes, count, window } = question;
  const suffix = new Suffix(classes);
  const numbers = new Uint16Array(classes.length);

  // from the widest class down, so that what is left over is always the narrowest
  const descend = (left: number, taken: number, girth: number, bungs: number): void => {
    if (!effort.step()) return;
    if (left === 0) {
      const inside = girth >= window.low && girth <= window.high;
      if (taken >= count.min && inside && bungs >= question.bungs) visit(numbers, taken, girth);
      return;
    }
    if (!suffix.canFinish(left, count.min - taken, count.max - taken, girth, window)) return;
    const { staves, girth: share, canBung, standing } = classes[left - 1]!;
    const least = question.withStanding ? standing : 0;
    for (let k = Math.min(staves.length, count.max - taken); k >= least; k--) {
      numbers[left - 1] = k;
      descend(left - 1, taken + k, girth + k * share, bungs + (canBung ? k : 0));
      if (effort.exhausted) return;
    }
  };
  descend(classes.length, 0, 0, 0);
  return !effort.exhausted;
}

/** What the narrowest classes can still add. */
class Suffix {
  /** running sums of single staves, narrowest first */
  private readonly sums: number[] = [0];
  /** how many staves the first so many classes hold */
  private readonly sizes: number[] = [0];

  constructor(classes: readonly StaveClass[]) {
    for (const { staves, girth } of classes) {
      for (let i = 0; i < staves.length; i++) this.sums.push(this.sums.at(-1)! + girth);
      this.sizes.push(this.sizes.at(-1)! + staves.length);
    }
  }

  /** Whether `least` to `most` staves out of the first `classes` classes can bring `girth` into the window. */
  canFinish(classes: number, least: number, most: number, girth: number, window: Window): boolean {
    const size = this.sizes[classes]!;
    if (size < least) return false;
    const widest = this.sums[size]! - this.sums[size - Math.min(most, size)]!;
    if (girth + widest < window.low) return false;
    return girth + this.sums[Math.max(0, least)]! <= window.high;
  }
}
