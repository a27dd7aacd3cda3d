import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lean, profileOf } from '../../src/vessel/profile.js';
import { wallOf } from '../../src/vessel/wall.js';
import { bisect, spread } from './numeric.js';
import {
  arbitraryVessel,
  between,
  bucket,
  changed,
  cylinder,
  radians,
  wallWithLean,
  wineCask,
} from './specs.js';

const wallFor = (spec: typeof wineCask) => wallOf(spec, profileOf(spec, 1));
const heightsOf = ({ height }: { height: number }): number[] =>
  spread(-0.5, 0.5, 9).map((share) => share * height);

describe('inside radius', () => {
  it('of a cylinder is less by the thickness', () => {
    for (const height of [-150, -3, 0, 150])
      expect(wallFor(cylinder).insideRadius(height)).toBeCloseTo(150 - 18, 12);
  });

  it('of a cone is less by t / cos(phi) at every height', () => {
    for (const leanDegrees of [-20, -5, 5, 25, 44]) {
      const spec = changed(bucket, { outside: wallWithLean(100, 400, leanDegrees), height: 100 });
      const profile = profileOf(spec, 1);
      for (const height of [-50, 0, 30, 50]) {
        const expected = profile.radius(height) - 18 / Math.cos(radians(leanDegrees));
        expect(wallFor(spec).insideRadius(height)).toBeCloseTo(expected, 10);
      }
    }
  });

  it('of an arc lies on the concentric circle', () => {
    const rho = (472.5 ** 2 + 53 ** 2) / (2 * 53);
    const wall = wallFor(wineCask);
    for (const height of [-472.5, -250, 0, 1, 400, 472.5]) {
      const expected = 339 - rho + Math.sqrt((rho - 27) ** 2 - height ** 2);
      expect(wall.insideRadius(height)).toBeCloseTo(expected, 10);
    }
  });

  it('of any vessel lies one thickness inside the outside: no nearer, and that near', () => {
    fc.assert(
      fc.property(arbitraryVessel, (drawn) => {
        const spec = changed(drawn, { staves: { endThickness: drawn.staves.thickness } });
        const profile = profileOf(spec, 1);
        const wall = wallFor(spec);
        for (const height of heightsOf(spec)) {
          const r = wall.insideRadius(height);
          const distance = (z: number): number => Math.hypot(z - height, profile.radius(z) - r);
          // where the outside turns its back on the point: the foot of the perpendicular
          const away = (z: number): number =>
            z - height + (profile.radius(z) - r) * profile.slope(z);
          const t = spec.staves.thickness;
          const foot = bisect(away, height - t, height + t);
          expect(distance(foot)).toBeCloseTo(t, 7);
        }
      }),
    );
  });
});

describe('thickness', () => {
  it('is the same everywhere unless the ends differ', () => {
    expect(wallFor(wineCask).thickness(0)).toBe(27);
    expect(wallFor(wineCask).thickness(472.5)).toBe(27);
  });

  it('of thinned staves falls with the square of the height', () => {
    const { thickness } = wallFor(changed(wineCask, { staves: { endThickness: 21 } }));
    expect(thickness(0)).toBe(27);
    expect(thickness(472.5)).toBeCloseTo(21, 12);
    expect(thickness(-472.5)).toBeCloseTo(21, 12);
    expect(thickness(472.5 / 2)).toBeCloseTo(27 - 6 / 4, 12);
  });
});

describe('fibre', () => {
  it('lies its depth from the outer face, square to it', () => {
    fc.assert(
      fc.property(arbitraryVessel, between(-0.5, 0.5), (spec, share) => {
        const profile = profileOf(spec, 1);
        const z = share * spec.height;
        const depth = 0.7 * spec.staves.thickness;
        const { radius, height } = wallFor(spec).fibre(z, depth);
        const [dr, dz] = [radius - profile.radius(z), height - z];
        expect(Math.hypot(dr, dz)).toBeCloseTo(depth, 9);
        expect(dr * profile.slope(z) + dz).toBeCloseTo(0, 9);
        expect(dr).toBeLessThan(0);
        // the outward normal leans upwards where the vessel narrows upwards
        expect(height).toBeCloseTo(z - depth * Math.sin(lean(profile, z)), 9);
      }),
    );
  });
});

describe('sectionAt', () => {
  it('finds the section whose fibre lies at the height, to 1e-9', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const wall = wallFor(spec);
        const depth = (z: number): number => 1.2 * wall.thickness(z);
        for (const height of heightsOf(spec)) {
          const z = wall.sectionAt(height, depth);
          expect(Math.abs(wall.fibre(z, depth(z)).height - height)).toBeLessThan(1e-9);
        }
      }),
    );
  });

  it('stands still at depth 0, at the bilge and on a cylinder', () => {
    expect(wallFor(wineCask).sectionAt(333, () => 0)).toBe(333);
    expect(wallFor(wineCask).sectionAt(0, () => 27)).toBe(0);
    expect(wallFor(cylinder).sectionAt(77, () => 18)).toBe(77);
  });

  it('works for walls that lean 45 degrees and for staves thinned to half', () => {
    const steep = changed(bucket, {
      height: 100,
      outside: wallWithLean(100, 500, 45),
      staves: { endThickness: 9 },
    });
    const wall = wallFor(steep);
    for (const height of [-50, 0, 50]) {
      const z = wall.sectionAt(height, wall.thickness);
      expect(wall.fibre(z, wall.thickness(z)).height).toBeCloseTo(height, 9);
    }
  });

  it('is NaN beyond the reach of the profile', () => {
    expect(wallFor(wineCask).sectionAt(2200, () => 27)).toBeNaN();
  });
});
