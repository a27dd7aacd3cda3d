/** The rivets of a hoop's lap: how many, how thick, where. All of it is common practice, no source. Lengths in mm. */
import type { HoopSpec, Units } from '../spec/spec.js';

export interface Rivets {
  /** 0 where the lap or the strap has no room for any: such a hoop is welded */
  readonly count: number;
  readonly diameter: number;
  readonly holeDiameter: number;
  /** from each end of the strap, along its middle */
  readonly places: readonly number[];
}

/** What the trade sells, in each system of units. */
const stockDiameters: Readonly<Record<Units, readonly number[]>> = {
  mm: [3, 4, 5, 6, 8, 10],
  in: [1 / 8, 5 / 32, 3 / 16, 1 / 4, 5 / 16, 3 / 8].map((inches) => inches * 25.4),
};

/** A rivet is this many times as thick as the strap, taken up to a stock size. */
const perThickness = 2.5;
/** A strap is at least this many rivets wide, and a lap this many long for each rivet in it: 1.5 of them to the edge. */
const roomPerRivet = 3;
/** Straps wider than this get three rivets, others two. */
const widestForTwo = 45;
/** A hole is this much wider than its rivet. */
export const holePlay = 0.2;

const none: Rivets = { count: 0, diameter: 0, holeDiameter: 0, places: [] };

export function rivetsOf({ width, thickness, lap }: HoopSpec, units: Units): Rivets {
  const narrowEnough = stockDiameters[units].filter((size) => roomPerRivet * size <= width);
  const diameter =
    narrowEnough.find((size) => size >= perThickness * thickness) ?? narrowEnough.at(-1);
  if (diameter === undefined) return none;
  const wanted = width > widestForTwo ? 3 : 2;
  const count = Math.min(wanted, Math.floor(lap / (roomPerRivet * diameter)));
  if (count === 0) return none;
  const places = Array.from({ length: count }, (_, i) => (lap * (i + 0.5)) / count);
  return { count, diameter, holeDiameter: diameter + holePlay, places };
}

/** A round head as rivets are sold with, from memory of DIN 660: 1.75 times as wide as the shank, and 0.6 times as high. */
export function rivetHead(diameter: number): { diameter: number; height: number } {
  return { diameter: 1.75 * diameter, height: 0.6 * diameter };
}
