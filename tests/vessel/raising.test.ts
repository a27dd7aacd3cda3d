import { describe, expect, it } from 'vitest';
import { integrate } from '../../src/geometry/quadrature.js';
import { raisingOf } from '../../src/vessel/raising.js';
import { everyVessel, vesselOf, wideTub, wineCask } from '../pieces/vessels.js';

/** Corners of a stave's outer face in space, its middle at an azimuth: `[x, y]` in the level plane. */
function corners(radius: number, half: number, azimuth: number): [number, number][] {
  const [cos, sin] = [Math.cos(azimuth), Math.sin(azimuth)];
  return [-half, half].map((h) => [radius * cos - h * sin, radius * sin + h * cos]);
}

describe.each(everyVessel)('the ring before bending: %s', (_name, text) => {
  const vessel = vesselOf(text);
  const raising = raisingOf(vessel);
  const stations = Array.from(
    { length: 41 },
    (_, i) => raising.freeStation + (i / 40) * (raising.raisedStation - raising.freeStation),
  );

  it('is closed at the raising hoop and lets no stave run into its neighbour anywhere', () => {
    const hoop = raising.place(raising.hoopStation);
    expect(hoop.gap).toBeCloseTo(0, 9);
    expect(hoop.girth).toBeCloseTo(raising.hoop.flatGirth, 6);
    for (const station of stations) expect(raising.place(station).gap).toBeGreaterThan(-1e-6);
  });

  it('has straight staves as long as the flat ones', () => {
    const [raised, free] = [raising.raisedStation, raising.freeStation].map(raising.place);
    const run = Math.hypot(free!.depth - raised!.depth, free!.radius - raised!.radius);
    expect(run).toBeCloseTo(raising.raisedStation - raising.freeStation, 6);
    expect(raising.height).toBeCloseTo(free!.depth, 9);
  });

  it('has gaps and girths as measured between corners in space', () => {
    if (vessel.spec.staves.widths) return; // corners of unlike neighbours stand at unlike distances
    const { alpha } = vessel.meanStave;
    for (const station of stations.filter((_, i) => i % 10 === 0)) {
      const place = raising.place(station);
      const half = vessel.meanStave.halfWidth(vessel.bend.sectionAtStation(station), 0);
      const [, right] = corners(place.radius, half, 0);
      const [left] = corners(place.radius, half, 2 * alpha);
      const apart = Math.hypot(left![0] - right![0], left![1] - right![1]);
      expect(place.gap).toBeCloseTo(apart, 6);
      expect(place.girth).toBeCloseTo(vessel.staves.length * (2 * half + apart), 5);
    }
  });
});

describe('the ring before bending', () => {
  it('touches the finished outside at the hoop and lies outside it elsewhere, by the profile alone', () => {
    // an independent line: lengths on the stave by quadrature of the arc profile, its slope by a difference
    const vessel = vesselOf(wineCask);
    const { profile, wall, spec } = vessel;
    const raising = raisingOf(vessel);
    const rate = (z: number): number =>
      (1 - spec.staves.neutral * wall.thickness(z) * profile.curvature(z)) *
      Math.hypot(1, profile.slope(z));
    const z = raising.hoop.height;
    const step = 1e-3;
    const slope =
      (profile.radius(z - step) - profile.radius(z + step)) / integrate(rate, z - step, z + step);
    expect(Math.sin(raising.lean)).toBeCloseTo(slope, 7);
    // the free end stands out by the lean over the whole length
    const length = integrate(rate, -spec.height / 2, z);
    expect(raising.place(vessel.meanStave.ends.bottom.outerStation).radius).toBeCloseTo(
      profile.radius(z) + length * slope,
      3,
    );
  });

  it('is the finished wall of a tub: nothing to bend', () => {
    const vessel = vesselOf(wideTub);
    const raising = raisingOf(vessel);
    const { bottom } = vessel.meanStave.ends;
    const free = raising.place(bottom.outerStation);
    expect(free.radius).toBeCloseTo(260, 6);
    expect(free.gap).toBeCloseTo(0, 9);
  });
});
