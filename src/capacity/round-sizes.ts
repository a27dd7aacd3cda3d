/** Round dimensions near a solved one, and how close each comes to the capacity that is wanted. */
import type { Spec, Units } from '../spec/spec.js';
import { solveVessel } from '../vessel/solve.js';
import { asItCloses, shapeLitres, shapeOf } from './shape.js';
import type { Settle } from './size-settle.js';
import {
  dimensionsOf,
  onStep,
  withDimensions,
  type DimensionName,
  type Dimensions,
} from './size-dimensions.js';

export interface NearbySize {
  readonly height: number;
  readonly outside: Spec['outside'];
  readonly litres: number;
  /** litres beyond what is wanted; negative below it */
  readonly off: number;
}

/** Whole 5 mm, whole quarters of an inch. */
const roundStep: Record<Units, number> = { mm: 5, in: 6.35 };
const mostShown = 6;

/**
 * The free dimensions on the two round values below and above each, the others settled as they were: the nearest to the wanted
 * capacity first. Only what can be built is named.
 */
export function nearbySizes(
  spec: Spec,
  free: readonly DimensionName[],
  settle: Settle,
  wanted: number,
): NearbySize[] {
  const ordered = roundDimensions(spec, free)
    .flatMap((size) => settle(size) ?? [])
    .map((size) => withDimensions(spec, size))
    .map((round) => ({ round, litres: shapeLitres(shapeOf(asItCloses(round))) }))
    .filter(({ litres }) => Number.isFinite(litres))
    .sort((a, b) => Math.abs(a.litres - wanted) - Math.abs(b.litres - wanted));
  const shown: NearbySize[] = [];
  for (const { round, litres } of ordered) {
    if (shown.length === mostShown) break;
    if ('issues' in solveVessel(round)) continue;
    shown.push({ height: round.height, outside: round.outside, litres, off: litres - wanted });
  }
  return shown;
}

function roundDimensions(spec: Spec, free: readonly DimensionName[]): Dimensions[] {
  const start = dimensionsOf(spec);
  const step = roundStep[spec.units];
  return free.reduce<Dimensions[]>(
    (all, name) =>
      all.flatMap((size) =>
        aroundOf(start[name], step).map((value) => ({ ...size, [name]: value })),
      ),
    [start],
  );
}

function aroundOf(value: number, step: number): number[] {
  const below = Math.floor(value / step + 1e-9);
  return [below - 1, below, below + 1, below + 2]
    .map((steps) => onStep(steps * step, step))
    .filter((each) => each > 0);
}
