/** Where the marks of a dip rod stand: amounts in even steps, no closer to each other than can be read. Lengths in mm. */
import { root } from '../geometry/quadrature.js';
import type { Vessel } from '../vessel/vessel.js';
import { lyingLitres } from './dip.js';
import { fullDip, type Posture } from './dip-table.js';
import {
  capacityLitres,
  cubicMillimetresPerLitre,
  holdingHeights,
  volumeBetween,
} from './volume.js';

/** US liquid gallon, 231 cubic inches; imperial gallon, 4.54609 l by definition. */
export const litresPer = { litre: 1, usGallon: 3.785411784, imperialGallon: 4.54609 } as const;
export type Measure = keyof typeof litresPer;

/** A mark before it has a place. */
export interface DipAmount {
  /** in the measure of the scale */
  readonly amount: number;
  readonly rank: 'short' | 'long' | 'numbered';
}

export interface DipMark extends DipAmount {
  readonly dip: number;
}

/** How close marks, and numbers, may come at most. */
export interface MarkRoom {
  readonly mark: number;
  readonly number: number;
}

/** Places of the table below: at 64 marks lie within a hundredth of a millimetre of the integral (measured). */
const places = 64;

/** A vessel as it fills, integrated once for all its scales. */
export interface Filling {
  /** litres of the full vessel */
  readonly capacity: number;
  dipAt(litres: number): number;
  /** the most litres that a millimetre holds */
  readonly steepest: number;
}

/** An amount for every step of a measure between empty and full. */
export function amountsOf(filling: Filling, measure: Measure, room: MarkRoom): DipAmount[] {
  const unit = litresPer[measure];
  const steps = stepsFor(filling.steepest / unit, room);
  const count = Math.ceil(filling.capacity / unit / steps.short - 1e-9) - 1;
  return Array.from({ length: Math.max(0, count) }, (_, i): DipAmount => {
    const amount = (i + 1) * steps.short;
    return { amount, rank: rankOf(amount, steps) };
  });
}

/** The same amounts where they stand. */
export function marksAt(
  filling: Filling,
  measure: Measure,
  amounts: readonly DipAmount[],
): DipMark[] {
  const unit = litresPer[measure];
  return amounts.map(({ amount, rank }) => ({ dip: filling.dipAt(amount * unit), amount, rank }));
}

/**
 * The dip is taken as `full (1 - cos u) / 2`: near empty and full a lying vessel's litres go with a power of 3/2 or 5/2 of the
 * depth, which is smooth in `u`. Between four neighbouring places a cubic stands for the integral.
 */
export function fillingOf(vessel: Vessel, posture: Posture): Filling {
  const full = fullDip(vessel, posture);
  const step = Math.PI / places;
  const dipOf = (u: number): number => (full * (1 - Math.cos(u))) / 2;
  const dips = Array.from({ length: places + 1 }, (_, i) => dipOf(i * step));
  const litres = posture === 'standing' ? addedUp(vessel, dips) : integrated(vessel, dips);
  const slopes = litres.slice(1).map((more, i) => (more - litres[i]!) / (dips[i + 1]! - dips[i]!));
  const cubics = Array.from({ length: places - 2 }, (_, first) => cubicThrough(litres, first));
  return {
    capacity: capacityLitres(vessel),
    steepest: Math.max(...slopes),
    dipAt: (wanted) => {
      const next = firstNotBelow(litres, wanted);
      if (next === 0) return 0;
      if (next > places) return full;
      const first = Math.min(Math.max(next - 2, 0), places - 3);
      const missing = (u: number): number => cubics[first]!(u / step - first) - wanted;
      return dipOf(root(missing, (next - 1) * step, next * step));
    },
  };
}

/** The first place of a rising list whose value isn't below `wanted`; its length where all are. */
function firstNotBelow(values: readonly number[], wanted: number): number {
  let [low, high] = [0, values.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Standing, what each place holds more than the one below it is integrated by itself. */
function addedUp(vessel: Vessel, dips: readonly number[]): number[] {
  const { from } = holdingHeights(vessel);
  const litres = [0];
  dips.slice(1).forEach((dip, i) => {
    const more = volumeBetween(vessel, from + dips[i]!, from + dip, 1);
    litres.push(litres[i]! + more / cubicMillimetresPerLitre);
  });
  return litres;
}

/** Below a level above the axis a round vessel holds what it doesn't hold below the opposite one, which is a place too. */
function integrated(vessel: Vessel, dips: readonly number[]): number[] {
  const litres = lyingLitres(withKnownRadii(vessel));
  if (vessel.spec.staves.inside !== 'hollowed') return dips.map(litres);
  const lower = dips.slice(0, places / 2 + 1).map(litres);
  const whole = litres(dips[places]!);
  const upper = lower.slice(0, -1).map((below) => whole - below);
  return [...lower, ...upper.reverse()];
}

/** The integral asks for the same heights at every level: each is worked out once. */
function withKnownRadii(vessel: Vessel): Vessel {
  const radii = new Map<number, number>();
  const insideRadius = (height: number): number => {
    const known = radii.get(height);
    if (known !== undefined) return known;
    const radius = vessel.wall.insideRadius(height);
    radii.set(height, radius);
    return radius;
  };
  return { ...vessel, wall: { ...vessel.wall, insideRadius } };
}

/** The cubic through `values[first]` to `values[first + 3]` at 0, 1, 2 and 3, by Newton's divided differences. */
function cubicThrough(values: readonly number[], first: number): (at: number) => number {
  const [a, b, c, d] = values.slice(first, first + 4) as [number, number, number, number];
  const one = b - a;
  const two = (c - 2 * b + a) / 2;
  const three = (d - 3 * c + 3 * b - a) / 6;
  return (at) => a + at * (one + (at - 1) * (two + (at - 2) * three));
}

interface Steps {
  readonly short: number;
  readonly long: number;
  readonly numbered: number;
}

/** Ones, twos and fives: the finest whose marks keep their room where the vessel is widest; numbers on multiples of those. */
function stepsFor(steepest: number, room: MarkRoom): Steps {
  const short = roundUp(steepest * room.mark);
  const candidates = [1, 2, 5, 10, 20, 50, 100].map((factor) => factor * leading(short));
  const least = steepest * room.number;
  const fits = (step: number): boolean =>
    step >= Math.max(least, short) - tiny * step && isWhole(step / short);
  const numbered = candidates.find(fits) ?? candidates.at(-1)!;
  const half = numbered / 2;
  return { short, long: isWhole(half / short) ? half : numbered, numbered };
}

const tiny = 1e-9;
const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-6;

const leading = (value: number): number => 10 ** Math.floor(Math.log10(value) + tiny);

function roundUp(value: number): number {
  const power = leading(value);
  const factor = [1, 2, 5, 10].find((each) => each * power >= value - tiny * power)!;
  return factor * power;
}

function rankOf(amount: number, { long, numbered }: Steps): DipMark['rank'] {
  if (isWhole(amount / numbered)) return 'numbered';
  return isWhole(amount / long) ? 'long' : 'short';
}
