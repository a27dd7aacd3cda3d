/**
 * Sets made one after the other from widths on a coarse grid, each of about the mixture of widths that is left, so that
 * what is left stays a mixture. Where hardly any kind of set closes, dealing out all sets at once and mending them leaves
 * most of them open; this closes every set it makes.
 */

import { closeSet, type ClosedSet } from './aims.js';
import { stavesOf, type StaveClass } from './classes.js';
import { Effort } from './effort.js';
import { eachWayOnGrid } from './grid-walk.js';
import { gridOf, kindsOf, type Grid, type Kind } from './kinds.js';
import { bungsNeeded } from './plan.js';
import type { Pool } from './pool.js';
import { sum } from './sum.js';
import { closingWindows } from './window.js';

/** How far from the mixture a set may be: this share less or more of each class, and one stave. The last: any set. */
const LEEWAYS = [0.5, 1, Infinity];
/** Bung staves that a set may have, fewest first. */
const MOST_BUNGS = 4;
/** Work allowed for one set of one kind. */
const STEPS_FOR_ONE = 3000;
/** Work allowed altogether. */
const STEPS_FOR_ALL = 4_000_000;

/** Null when widths lie on no coarse grid. Staves that stand are not asked for. Yields after every set. */
export function* oneByOne(
  pool: Pool,
  classes: readonly StaveClass[],
  most: number,
): Generator<readonly ClosedSet[], readonly ClosedSet[] | null> {
  const { tolerance, count } = pool.request;
  const window = closingWindows(pool, tolerance, 0).inner;
  const grid = gridOf(classes, window);
  if (!grid || pool.standing.length > 0) return null;
  const kinds = kindsOf(grid, window, count, bungsNeeded(pool, 1));
  const maker = new Maker(pool, grid, kinds);
  const sets: ClosedSet[] = [];
  for (let set = maker.next(); set && sets.length < most; set = maker.next()) {
    sets.push(set);
    yield sets;
  }
  return sets;
}

class Maker {
  private readonly taken: number[];
  private readonly effort = new Effort(STEPS_FOR_ALL);
  /** the wish that was last met, which the next set begins with */
  private from = 0;
  private readonly wishes: readonly { leeway: number; bungs: number; kind: Kind }[];

  constructor(
    private readonly pool: Pool,
    private readonly grid: Grid,
    kinds: readonly Kind[],
  ) {
    this.taken = grid.classes.map(() => 0);
    const all = grid.classes.every(({ canBung }) => canBung);
    const bungs = all ? [Infinity] : Array.from({ length: MOST_BUNGS }, (_, k) => k + 1);
    this.wishes = LEEWAYS.flatMap((leeway) =>
      bungs.flatMap((most) => kinds.map((kind) => ({ leeway, bungs: most, kind }))),
    );
  }

  /** Null when no more are found. */
  next(): ClosedSet | null {
    for (; this.from < this.wishes.length; this.from++) {
      const numbers = this.meet(this.wishes[this.from]!);
      const staves = numbers && stavesOf(this.grid.classes, numbers, this.taken);
      const set = staves && closeSet(this.pool, staves);
      if (!set) continue;
      for (const [k, many] of numbers.entries()) this.taken[k]! += many;
      return set;
    }
    return null;
  }

  private meet({ leeway, bungs, kind }: (typeof this.wishes)[number]): Uint16Array | null {
    const { classes, steps, beside } = this.grid;
    const left = classes.map(({ staves }, k) => staves.length - this.taken[k]!);
    const all = sum(left);
    const question = {
      classes: classes.map((c, k) => {
        const share = (kind.count * left[k]!) / all;
        const away = c.canBung ? Infinity : leeway * share + 1;
        return {
          worth: 0,
          girth: beside[k]!,
          steps: steps[k]!,
          offMiddle: c.offMiddle,
          least: Math.min(left[k]!, Math.max(0, Math.ceil(share - away))),
          most: Math.min(left[k]!, Math.floor(share + away)),
          canBung: c.canBung,
        };
      }),
      count: kind.count,
      steps: kind.steps,
      window: kind.beside,
      bungs: { least: bungsNeeded(this.pool, 1), most: bungs },
      leastOff: -Infinity,
      mostLoss: Infinity,
    };
    let found: Uint16Array | null = null;
    eachWayOnGrid(question, this.effort.portion(STEPS_FOR_ONE), (numbers) => {
      found = numbers.slice();
      return false;
    });
    return found;
  }
}
