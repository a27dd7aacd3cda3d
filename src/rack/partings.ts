/**
 * Every way to part staves into two sets. The classes are parted into two halves; the ways of each to take so many staves
 * are listed by their girth, and pairs of ways are met whose girths together fall into a window: the number of ways in a
 * half is about the root of the number of partings.
 */

import type { StaveClass } from './classes.js';
import type { Effort } from './effort.js';
import type { Window } from './window.js';

/** Of half of the classes: by how many staves are taken, girths in ascending order, and what each takes of each class. */
interface Half {
  readonly classes: readonly number[];
  readonly radix: readonly number[];
  readonly ways: readonly Ways[];
}

interface Ways {
  readonly girth: Float64Array;
  /** how many of each class: digits, of which the first class's counts least */
  readonly code: Uint32Array;
}

/** More ways of a half than this aren't listed. */
const MOST_WAYS = 80_000;

/** `numbers` says how many of each class. Return value: what the window is from now on; null: as it was; 'enough' was seen. */
export type PartingVisitor = (
  girth: number,
  numbers: () => Uint16Array,
) => Window | null | 'enough';

export class Partings {
  private constructor(
    private readonly many: number,
    private readonly halves: readonly [Half, Half],
  ) {}

  /** Null when there are too many ways, or the effort ended. */
  static of(classes: readonly StaveClass[], effort: Effort): Partings | null {
    const parts: [number[], number[]] = [[], []];
    const sizes: [number, number] = [1, 1];
    const byStaves = [...classes.keys()].sort(
      (a, b) => classes[b]!.staves.length - classes[a]!.staves.length,
    );
    for (const k of byStaves) {
      const side = sizes[0] <= sizes[1] ? 0 : 1;
      parts[side].push(k);
      sizes[side] *= classes[k]!.staves.length + 1;
    }
    if (Math.max(...sizes) > MOST_WAYS || !effort.step(sizes[0] + sizes[1])) return null;
    return new Partings(classes.length, [listHalf(classes, parts[0]), listHalf(classes, parts[1])]);
  }

  /** Calls `visit` for every choice of so many staves with a girth in the window; false when the effort ended first. */
  each(count: number, window: Window, effort: Effort, visit: PartingVisitor): boolean {
    const [first, second] = this.halves;
    let within = window;
    for (const [taken, ways] of first.ways.entries()) {
      const others = second.ways[count - taken];
      if (!others) continue;
      if (!effort.step(ways.girth.length)) return false;
      // as the girth of one half grows, that of the other must shrink
      let top = others.girth.length;
      for (let i = 0; i < ways.girth.length; i++) {
        const girth = ways.girth[i]!;
        while (top > 0 && girth + others.girth[top - 1]! > within.high) top--;
        for (let j = top - 1; j >= 0; j--) {
          const both = girth + others.girth[j]!;
          if (both < within.low) break;
          if (both > within.high) continue;
          if (!effort.step()) return false;
          const next = visit(both, () => this.numbers(ways.code[i]!, others.code[j]!));
          if (next === 'enough') return true;
          within = next ?? within;
        }
      }
    }
    return true;
  }

  private numbers(...codes: readonly [number, number]): Uint16Array {
    const numbers = new Uint16Array(this.many);
    for (const [side, { classes, radix }] of this.halves.entries()) {
      let code = codes[side]!;
      for (let k = classes.length - 1; k >= 0; k--) {
        numbers[classes[k]!] = Math.floor(code / radix[k]!);
        code %= radix[k]!;
      }
    }
    return numbers;
  }
}

function listHalf(all: readonly StaveClass[], classes: readonly number[]): Half {
  let ways: Ways[] = [{ girth: new Float64Array(1), code: new Uint32Array(1) }];
  const radix: number[] = [];
  let next = 1;
  for (const k of classes) {
    const { staves, girth } = all[k]!;
    radix.push(next);
    ways = withClass(ways, staves.length, girth, next);
    next *= staves.length + 1;
  }
  return { classes, radix, ways };
}

/** The ways with none to `most` of another class beside. */
function withClass(ways: readonly Ways[], most: number, girth: number, radix: number): Ways[] {
  return Array.from({ length: ways.length + most }, (_, count) => {
    let all: Ways | null = null;
    for (let k = 0; k <= most; k++) {
      const before = ways[count - k];
      if (!before) continue;
      const more = {
        girth: before.girth.map((of) => of + k * girth),
        code: before.code.map((of) => of + k * radix),
      };
      all = all ? merged(all, more) : more;
    }
    return all!;
  });
}

function merged(a: Ways, b: Ways): Ways {
  const length = a.girth.length + b.girth.length;
  const both = { girth: new Float64Array(length), code: new Uint32Array(length) };
  for (let i = 0, j = 0; i + j < length;) {
    const isFirst = j === b.girth.length || (i < a.girth.length && a.girth[i]! <= b.girth[j]!);
    const [from, at] = isFirst ? [a, i] : [b, j];
    both.girth[i + j] = from.girth[at]!;
    both.code[i + j] = from.code[at]!;
    if (isFirst) i++;
    else j++;
  }
  return both;
}
