/** Straps: the strips of steel that hoops are bent from, what they weigh, and what to buy. Lengths in mm, masses in kg. */
import type { HoopSpec } from '../spec/spec.js';
import type { Hoop } from './hoop.js';

/** kg per mm3: 7,850 kg/m3 */
const steelDensity = 7.85e-6;

/** Share added to what is bought, for squaring the ends and for what is left of a coil (common practice, no source). */
export const strapWaste = 0.05;

/** Lengths nearer than this are cut as one. */
const sameCut = 0.01;

/** Hoops of one kind that are cut alike, such as the pair of a cask. */
export interface Strap {
  /** from 1, from the top of the vessel downwards */
  readonly number: number;
  readonly spec: HoopSpec;
  /** the first of them stands for all */
  readonly hoop: Hoop;
  readonly hoops: readonly Hoop[];
}

export function strapsOf(hoops: readonly Hoop[]): Strap[] {
  const kinds: Hoop[][] = [];
  for (const hoop of hoops) {
    const kind = kinds.find(([first]) => isCutAlike(first!, hoop));
    if (kind) kind.push(hoop);
    else kinds.push([hoop]);
  }
  return kinds.map((alike, i) => {
    const hoop = alike[0]!;
    return { number: i + 1, spec: hoop.spec, hoop, hoops: alike };
  });
}

function isCutAlike(a: Hoop, b: Hoop): boolean {
  return (
    a.spec === b.spec &&
    Math.abs(a.cutLength - b.cutLength) < sameCut &&
    Math.abs(a.splay - b.splay) < sameCut
  );
}

/** The strap of one hoop as it is cut, rivets and their holes left out. */
export function hoopMass({ cutLength, spec }: Hoop): number {
  return steelMass(cutLength, spec);
}

const steelMass = (
  length: number,
  { width, thickness }: Pick<HoopSpec, 'width' | 'thickness'>,
): number => length * width * thickness * steelDensity;

/** One line of the shopping list. */
export interface StrapToBuy {
  readonly width: number;
  readonly thickness: number;
  readonly pieces: number;
  /** of all pieces together */
  readonly cutLength: number;
  /** the same with what is wasted */
  readonly length: number;
  /** of `length` */
  readonly mass: number;
}

/** What to buy for all hoops, by width and thickness, the heaviest section first. */
export function strapsToBuy(hoops: readonly Hoop[]): StrapToBuy[] {
  const sections = new Map<string, Hoop[]>();
  for (const hoop of hoops) {
    const key = `${hoop.spec.width} x ${hoop.spec.thickness}`;
    sections.set(key, [...(sections.get(key) ?? []), hoop]);
  }
  const area = ({ width, thickness }: StrapToBuy): number => width * thickness;
  return [...sections.values()].map(toBuy).sort((a, b) => area(b) - area(a));
}

function toBuy(hoops: readonly Hoop[]): StrapToBuy {
  const { width, thickness } = hoops[0]!.spec;
  const cutLength = hoops.reduce((sum, hoop) => sum + hoop.cutLength, 0);
  const length = cutLength * (1 + strapWaste);
  const mass = steelMass(length, { width, thickness });
  return { width, thickness, pieces: hoops.length, cutLength, length, mass };
}
