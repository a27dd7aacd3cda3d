/** The places along a stave at which its numbers are given: even steps from mid-height, and both finished ends. */
import type { Spec } from '../spec/spec.js';
import type { Stave } from './stave.js';
import type { Vessel } from './vessel.js';

export interface Station {
  /** place on the flat blank, mm from the section at mid-height */
  readonly s: number;
  /** height of the outer face in that section */
  readonly z: number;
  /** across the flat outer face */
  readonly width: number;
  readonly bevel: number;
  /** of the blank */
  readonly thickness: number;
}

const steps = { mm: [25, 50, 100, 200, 400, 800], in: [25.4, 50.8, 101.6, 203.2, 406.4, 812.8] };
const mostPerHalf = 5;

/** The step between stations: the smallest that gives at most five to each half. */
export function stationStep(spec: Spec): number {
  const choices = steps[spec.units];
  return choices.find((step) => spec.height / 2 / step <= mostPerHalf) ?? choices.at(-1)!;
}

/** From the bottom end's outer station to the top's. */
export function stationsOf({ spec, bend }: Pick<Vessel, 'spec' | 'bend'>, stave: Stave): Station[] {
  const [low, high] = [stave.ends.bottom.outerStation, stave.ends.top.outerStation];
  const step = stationStep(spec);
  const inner: number[] = [];
  for (let k = Math.ceil(low / step); k * step < high; k++) {
    // a station too near an end would repeat that end's numbers
    if (k * step - low > step / 4 && high - k * step > step / 4) inner.push(k * step);
  }
  const at = (s: number, z: number): Station => ({
    s,
    z,
    width: 2 * stave.halfWidth(z, 0),
    bevel: stave.bevel(z),
    thickness: stave.blankThicknessAt(z),
  });
  return [
    at(low, -spec.height / 2),
    ...inner.map((s) => at(s, bend.sectionAtStation(s))),
    at(high, spec.height / 2),
  ];
}
