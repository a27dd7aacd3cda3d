/**
 * Partings of staves on a grid (see `kinds.ts`), by dynamic programming on the measuring step: for each number of staves and
 * of steps, between what bounds what they have beside their steps lies is known for the first class, the first two, and so on.
 * It shows which girths the first of two sets can have, and a walk that keeps within those bounds hardly ever goes astray.
 *
 * Staves fit for the bung make a table of their own: how many of them the first set takes is then known.
 */

import type { Effort } from './effort.js';
import type { Grid } from './kinds.js';
import { sum } from './sum.js';
import { ROUNDING, type Window } from './window.js';

/** Bounds by count and steps, of the first so many classes. */
interface Table {
  readonly counts: number;
  readonly steps: number;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** So many cells of a table cost a step of a walk. */
const CELLS_A_STEP = 8;

/** `numbers` holds how many of each class and is reused between calls. True: enough was seen. */
export type PartingVisitor = (numbers: Uint16Array) => boolean;

export class GridPartings {
  /** of each class: whether it is in the first table */
  readonly isFirst: readonly boolean[];
  private readonly halves: readonly [Half, Half];
  /** of one stave, beside its steps */
  private readonly beside: Window;
  private readonly numbers: Uint16Array;

  private constructor(
    private readonly grid: Grid,
    most: number,
    private readonly bungs: number,
    effort: Effort,
  ) {
    const all = [...grid.classes.keys()];
    const apart = (isFirst: (k: number) => boolean): [number[], number[]] => [
      all.filter(isFirst),
      all.filter((k) => !isFirst(k)),
    ];
    this.numbers = new Uint16Array(all.length);
    this.beside = { low: Math.min(...grid.beside), high: Math.max(...grid.beside) };
    const parts =
      bungs > 0 ? apart((k) => grid.classes[k]!.canBung) : apart((k) => 2 * k >= all.length);
    this.isFirst = all.map((k) => parts[0].includes(k));
    this.halves = [new Half(grid, parts[0], most, effort), new Half(grid, parts[1], most, effort)];
  }

  /**
   * `most`: no set has more staves. `bungs`: how many bung staves each set needs, none or one. Null when the effort ended
   * first.
   */
  static of(grid: Grid, most: number, bungs: number, effort: Effort): GridPartings | null {
    const isEach = grid.classes.every(({ canBung }) => canBung);
    const partings = new GridPartings(grid, most, isEach ? 0 : bungs, effort);
    return effort.exhausted ? null : partings;
  }

  /**
   * What first sets of so many staves (and steps, if told), with a girth in the window, can be; until `visit` says that it's
   * enough.
   */
  eachLot(
    { count, steps }: { readonly count: number; readonly steps?: number },
    window: Window,
    visit: (lot: Lot) => boolean,
  ): void {
    const [first, second] = this.halves;
    const { step } = this.grid;
    // a set's steps, when its girth is in the window
    const fewest = steps ?? Math.ceil((window.low - count * this.beside.high - ROUNDING) / step);
    const most = steps ?? Math.floor((window.high - count * this.beside.low + ROUNDING) / step);
    const leastTaken = Math.max(this.bungs, count - second.staves);
    for (let taken = leastTaken; taken <= Math.min(count, first.staves - this.bungs); taken++) {
      const [ofFirst, ofSecond] = [first.stepsOf(taken), second.stepsOf(count - taken)];
      for (let a = ofFirst.low; a <= ofFirst.high; a++) {
        const one = { count: taken, steps: a };
        if (!first.has(one)) continue;
        const last = Math.min(ofSecond.high, most - a);
        for (let b = Math.max(ofSecond.low, fewest - a); b <= last; b++) {
          const other = { count: count - taken, steps: b };
          if (!second.has(other)) continue;
          const done = (a + b) * step;
          const low = done + first.low(one) + second.low(other) - ROUNDING;
          const high = done + first.high(one) + second.high(other) + ROUNDING;
          if (low > window.high || high < window.low) continue;
          if (visit({ cells: [one, other], steps: a + b, girth: { low, high } })) return;
        }
      }
    }
  }

  /** Every first set of a lot with a girth in the window; true as soon as `visit` says so, or when the effort ended. */
  each({ cells, steps }: Lot, window: Window, effort: Effort, visit: PartingVisitor): boolean {
    const [first, second] = this.halves;
    const [a, b] = cells;
    const low = window.low - steps * this.grid.step - ROUNDING;
    const high = window.high - steps * this.grid.step + ROUNDING;
    const ofFirst = { low: low - second.high(b), high: high - second.low(b) };
    return first.each(a, ofFirst, this.numbers, effort, (beside) =>
      second.each(b, { low: low - beside, high: high - beside }, this.numbers, effort, () =>
        visit(this.numbers),
      ),
    );
  }
}

/** First sets of so many steps, of which so many staves and steps are from each of both tables. */
export interface Lot {
  readonly cells: readonly [Cell, Cell];
  readonly steps: number;
  /** between what it lies */
  readonly girth: Window;
}

interface Cell {
  readonly count: number;
  readonly steps: number;
}

class Half {
  readonly staves: number;
  private readonly tables: Table[] = [
    { counts: 0, steps: 0, low: Float64Array.of(0), high: Float64Array.of(0) },
  ];
  /** steps of the narrowest; tables count from it */
  private readonly from: number;

  constructor(
    private readonly grid: Grid,
    private readonly classes: readonly number[],
    most: number,
    effort: Effort,
  ) {
    this.staves = sum(classes.map((k) => grid.classes[k]!.staves.length));
    this.from = classes.length > 0 ? grid.steps[classes[0]!]! : 0;
    const steps: number[] = [];
    for (const k of classes) {
      const { staves } = grid.classes[k]!;
      const beyond = grid.steps[k]! - this.from;
      for (const _ of staves) steps.push(beyond);
      const counts = Math.min(most, steps.length);
      const last = this.tables.at(-1)!;
      const size = { counts, steps: sum(steps.slice(-counts)) };
      if (!effort.step(Math.ceil((size.counts * size.steps * staves.length) / CELLS_A_STEP)))
        return;
      this.tables.push(withClass(last, size, staves.length, beyond, grid.beside[k]!));
    }
  }

  /** Between what steps so many staves may have, counted from the grid's origin. */
  stepsOf(count: number): Window {
    const { steps, counts } = this.tables.at(-1)!;
    if (count > counts) return { low: 1, high: 0 };
    return { low: count * this.from, high: count * this.from + steps };
  }

  has(cell: Cell): boolean {
    return this.low(cell) < Infinity;
  }

  low({ count, steps }: Cell): number {
    const table = this.tables.at(-1)!;
    return table.low[count * (table.steps + 1) + steps - count * this.from]!;
  }

  high({ count, steps }: Cell): number {
    const table = this.tables.at(-1)!;
    return table.high[count * (table.steps + 1) + steps - count * this.from]!;
  }

  /** Every way to make a cell with so much beside; true as soon as `visit` says so. */
  each(
    { count, steps }: Cell,
    window: Window,
    numbers: Uint16Array,
    effort: Effort,
    visit: (beside: number) => boolean,
  ): boolean {
    const { grid, classes, tables, from } = this;
    const descend = (left: number, staves: number, beyond: number, beside: number): boolean => {
      if (!effort.step()) return true;
      if (left === 0) return visit(beside);
      const k = classes[left - 1]!;
      const each = grid.steps[k]! - from;
      const table = tables[left - 1]!;
      const most = Math.min(staves, grid.classes[k]!.staves.length);
      for (let taken = 0; taken <= most; taken++) {
        const rest = beyond - taken * each;
        if (rest < 0) break;
        if (staves - taken > table.counts || rest > table.steps) continue;
        const at = (staves - taken) * (table.steps + 1) + rest;
        const so = beside + taken * grid.beside[k]!;
        if (so + table.low[at]! > window.high || so + table.high[at]! < window.low) continue;
        numbers[k] = taken;
        if (descend(left - 1, staves - taken, rest, so)) return true;
      }
      return false;
    };
    return descend(classes.length, count, steps - count * from, 0);
  }
}

function withClass(
  { counts, steps, low, high }: Table,
  size: { readonly counts: number; readonly steps: number },
  staves: number,
  each: number,
  beside: number,
): Table {
  const row = size.steps + 1;
  const cells = (size.counts + 1) * row;
  const table = {
    ...size,
    low: new Float64Array(cells).fill(Infinity),
    high: new Float64Array(cells).fill(-Infinity),
  };
  for (let count = 0; count <= counts; count++) {
    for (let at = 0; at <= steps; at++) {
      const from = count * (steps + 1) + at;
      const [least, most] = [low[from]!, high[from]!];
      if (least === Infinity) continue;
      for (let k = 0; k <= staves && count + k <= size.counts; k++) {
        const to = (count + k) * row + at + k * each;
        const [less, more] = [least + k * beside, most + k * beside];
        if (less < table.low[to]!) table.low[to] = less;
        if (more > table.high[to]!) table.high[to] = more;
      }
    }
  }
  return table;
}
