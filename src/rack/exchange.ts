/** Finds the exchange of one to three staves between two groups that changes a girth by the amount wanted. */

/** How many staves one side of an exchange takes part with. */
export type Size = 1 | 2 | 3;

/** Puts `into` in the place of `out`. */
export interface FoundExchange {
  readonly out: readonly number[];
  readonly into: readonly number[];
  /** girth given away less girth received, mm */
  readonly lowersBy: number;
}

/** The girths of all single staves, pairs or threes of a group, in ascending order, and who makes them up. */
export interface SortedSums {
  readonly staves: readonly number[];
  readonly size: Size;
  readonly packed: Float64Array;
}

/** Groups larger than this are looked at in part: every so many-th stave. */
const LOOK_AT: Record<Size, number> = { 1: 127, 2: 90, 3: 32 };

/**
 * Sums and who makes them up, in one sortable number below 2^53: whole millionths of a millimetre, then the
 * places of three staves.
 */
const PER_MM = 1e6;
const PLACES = 128;
const PLACES_OF_THREE = PLACES ** 3;

export function sortedSums(girth: Float64Array, group: readonly number[], size: Size): SortedSums {
  const staves = sample(group, LOOK_AT[size]);
  const shares = staves.map((stave) => girth[stave]!);
  const n = staves.length;
  const packed = new Float64Array(ways(n, size));
  let at = 0;
  for (let i = 0; i < n; i++) {
    if (size === 1) packed[at++] = pack(shares[i]!, i, 0, 0);
    for (let j = i + 1; j < n && size > 1; j++) {
      const pair = shares[i]! + shares[j]!;
      if (size === 2) packed[at++] = pack(pair, i, j, 0);
      else for (let k = j + 1; k < n; k++) packed[at++] = pack(pair + shares[k]!, i, j, k);
    }
  }
  return { staves, size, packed: packed.sort() };
}

function sample(group: readonly number[], most: number): readonly number[] {
  if (group.length <= most) return group;
  return Array.from({ length: most }, (_, k) => group[Math.floor((k * group.length) / most)]!);
}

/**
 * The exchange of one of `give` against one of `take` whose fall in girth is nearest `wanted`; null when a group
 * is too small.
 */
export function nearestExchange(
  { packed: give, ...from }: SortedSums,
  { packed: take, ...other }: SortedSums,
  wanted: number,
): FoundExchange | null {
  if (give.length === 0 || take.length === 0) return null;
  const target = Math.round(wanted * PER_MM);
  let best = Infinity;
  let [bestGive, bestTake] = [0, 0];
  // as what is given grows, so does what must be taken: one pass with two fingers
  for (let i = 0, j = 0; i < give.length; i++) {
    const aim = amount(give[i]!) - target;
    while (j + 1 < take.length && amount(take[j]!) < aim) j++;
    for (let near = Math.max(0, j - 1); near <= j; near++) {
      const miss = Math.abs(amount(take[near]!) - aim);
      if (miss < best) [best, bestGive, bestTake] = [miss, give[i]!, take[near]!];
    }
  }
  const lowersBy = (amount(bestGive) - amount(bestTake)) / PER_MM;
  return { out: members(bestGive, from), into: members(bestTake, other), lowersBy };
}

/** How many ways there are to take so many out of n. */
function ways(n: number, size: Size): number {
  if (size === 1) return n;
  return size === 2 ? (n * (n - 1)) / 2 : (n * (n - 1) * (n - 2)) / 6;
}

function pack(sum: number, i: number, j: number, k: number): number {
  return ((Math.round(sum * PER_MM) * PLACES + i) * PLACES + j) * PLACES + k;
}

function amount(packed: number): number {
  return Math.floor(packed / PLACES_OF_THREE);
}

function members(packed: number, { staves, size }: Omit<SortedSums, 'packed'>): number[] {
  const places = packed % PLACES_OF_THREE;
  const three = [places / PLACES ** 2, places / PLACES, places].map((p) => Math.floor(p) % PLACES);
  return three.slice(0, size).map((place) => staves[place]!);
}
