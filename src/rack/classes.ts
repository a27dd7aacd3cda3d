/** Staves of one width are alike: the exact methods count them instead of telling them apart. */

import type { Pool } from './pool.js';

/** Staves of the same width and the same fitness for the bung. */
export interface StaveClass {
  /** pool indices, standing ones first */
  readonly staves: readonly number[];
  readonly width: number;
  readonly girth: number;
  readonly offMiddle: number;
  readonly canBung: boolean;
  /** how many of them are standing and so belong to the first set */
  readonly standing: number;
}

/** Classes of the whole pool, or of some of its staves in ascending order; narrowest first. */
export function classesOf(
  pool: Pool,
  staves: Iterable<number> = pool.staves.keys(),
): readonly StaveClass[] {
  const standing = new Set(pool.standing);
  const groups = new Map<string, number[]>();
  for (const index of staves) {
    const key = `${pool.width[index]} ${pool.canBung[index]}`;
    const group = groups.get(key);
    if (group) group.push(index);
    else groups.set(key, [index]);
  }
  return [...groups.values()].map((group) => {
    const first = group[0]!;
    const already = group.filter((index) => standing.has(index));
    return {
      staves: [...already, ...group.filter((index) => !standing.has(index))],
      width: pool.width[first]!,
      girth: pool.girth[first]!,
      offMiddle: pool.offMiddle[first]!,
      canBung: pool.canBung[first] === 1,
      standing: already.length,
    };
  });
}

/** The staves meant by a number from each class; `skip` of each class are already taken. */
export function stavesOf(
  classes: readonly StaveClass[],
  numbers: ArrayLike<number>,
  skip?: ArrayLike<number>,
): number[] {
  return classes.flatMap(({ staves }, c) => {
    const from = skip?.[c] ?? 0;
    return staves.slice(from, from + (numbers[c] ?? 0));
  });
}
