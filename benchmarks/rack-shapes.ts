/** Racks of several shapes, seeded: invented widths in mm. */
import { seeded } from '../src/rack/random.js';

type Draw = (unit: () => number) => number;

const between =
  (from: number, to: number): Draw =>
  (unit) =>
    from + (to - from) * unit();

export const shapes = {
  /** as cut from logs of all sizes */
  ordinary: between(60, 100),
  /** most near the middle */
  gathered: (unit) => 60 + (40 * (unit() + unit() + unit())) / 3,
  /** from two sources */
  clusters: (unit) => (unit() < 0.5 ? between(60.5, 63.5)(unit) : between(94.5, 97.5)(unit)),
  /** one in thirty for the bung, the others narrow */
  fewWide: (unit) => (unit() < 1 / 30 ? between(120, 140)(unit) : between(62, 76)(unit)),
  /** 30 of them hardly make a ring */
  narrow: between(66, 77),
} satisfies Record<string, Draw>;

export function widthsOf(shape: Draw, count: number, step: number, seed: number): number[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => Math.round(shape(random.unit) / step) * step);
}
