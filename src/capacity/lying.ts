/** Volume below a level in a round or many-sided vessel that lies on its side. Heights run along its axis, which is level. */
import { integrate, root } from '../geometry/quadrature.js';
import type { Section } from './section.js';

/** The inside along the axis: its radius, and the height between the limits at which it is widest. */
export interface LyingInside {
  readonly radius: (height: number) => number;
  readonly from: number;
  readonly to: number;
  readonly widest: number;
}

/** `level` is measured upwards from the axis; mm3 for mm. */
export function volumeBelow(inside: LyingInside, section: Section, level: number): number {
  const { radius, from, to, widest } = inside;
  const wet = (height: number): number => {
    const r = radius(height);
    return r * r * section.areaBelow(level / r);
  };
  // where the vessel's lowest line meets the level is one of the stops: between two of them all is dry or nothing is
  const isDry = (height: number): boolean => level <= -section.below * radius(height);
  const halves = [
    [from, widest],
    [widest, to],
  ] as const;
  return halves.reduce(
    (sum, [a, b]) => sum + integrateSmooth(wet, isDry, stopsOf(radius, a, b, section, level)),
    0,
  );
}

/** The limits, and the places between them where the level passes a kink of the section, which grows and shrinks with `r`. */
function stopsOf(
  radius: LyingInside['radius'],
  from: number,
  to: number,
  section: Section,
  level: number,
): number[] {
  const sizes = [radius(from), radius(to)];
  const [least, most] = [Math.min(...sizes), Math.max(...sizes)];
  const stops = section.kinks
    .map((kink) => level / kink)
    .filter((r) => r > least && r < most)
    .map((r) => root((height) => radius(height) - r, from, to));
  return [from, ...stops, to].sort((a, b) => a - b);
}

/** Eight panels hold the law of a circle's crown, a power of 3/2, to 1e-8 of the whole; the many spans of a polygon share them. */
function integrateSmooth(
  f: (height: number) => number,
  isNothing: (height: number) => boolean,
  stops: readonly number[],
): number {
  const panels = Math.ceil(8 / (stops.length - 1));
  let sum = 0;
  for (let i = 0; i + 1 < stops.length; i++) {
    const [from, to] = [stops[i]!, stops[i + 1]!];
    if (!isNothing((from + to) / 2)) sum += integrate(f, from, to, panels);
  }
  return sum;
}
