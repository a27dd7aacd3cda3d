/** Where each hoop is due to lie, from the spec and the outside surface alone. Lengths in mm. */
import type { End, HoopSpec } from '../spec/spec.js';
import { widestHeight } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';
import { towards } from './due.js';

export interface HoopPlace {
  readonly spec: HoopSpec;
  readonly end: End;
  /** heights of the edges; `near` is the one towards the end that the offset counts from */
  readonly near: number;
  readonly far: number;
  /** a hoop across the greatest girth is a cylinder that touches only there */
  readonly straddles: boolean;
}

/** In the order of the vessel's hoops. */
export function hoopPlaces({ spec, hoops, profile }: Vessel): HoopPlace[] {
  return hoops.map(({ spec: hoop, end }) => {
    const sign = towards(end);
    const near = sign * (spec.height / 2 - hoop.offset);
    const straight = near - sign * hoop.width;
    const widest = widestHeight(spec);
    const straddles = (near - widest) * (straight - widest) < 0;
    const chord = (far: number): number =>
      Math.hypot(far - near, profile.radius(far) - profile.radius(near));
    return {
      spec: hoop,
      end,
      near,
      far: straddles ? straight : halved(near, straight, (far) => chord(far) < hoop.width),
      straddles,
    };
  });
}

/** The place between two where a condition that holds at the first ceases to hold. */
function halved(from: number, to: number, holds: (x: number) => boolean): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
