import { describe, expect, it } from 'vitest';
import { volumeBelow, type LyingInside } from '../../src/capacity/lying.js';
import { polygonSection, roundSection } from '../../src/capacity/section.js';
import { simpson, spread } from '../vessel/numeric.js';

const prism: LyingInside = { radius: () => 10, from: -3, to: 47, widest: 0 };

/** An old cask, inside, in inches: bilge 48, heads 42, length 60. */
const parabola = (z: number): number => 24 - 3 * (z / 30) ** 2;
const spheroid = (z: number): number => 24 * Math.sqrt(1 - (1 - (21 / 24) ** 2) * (z / 30) ** 2);
const oldCask = (radius: (z: number) => number): LyingInside => ({
  radius,
  from: -30,
  to: 30,
  widest: 0,
});

describe('lying', () => {
  it('a cylinder is its segment times its length', () => {
    for (const level of [-10, -4, 0, 7, 10]) {
      const u = level / 10;
      const segment = 100 * (Math.acos(-u) + u * Math.sqrt(1 - u * u));
      expect(volumeBelow(prism, roundSection, level)).toBeCloseTo(50 * segment, 8);
    }
  });

  it('a sphere is a cap: pi h^2 (3 R - h) / 3', () => {
    const R = 12;
    const sphere: LyingInside = {
      radius: (z) => Math.sqrt(Math.max(1e-12, R * R - z * z)),
      from: -R,
      to: R,
      widest: 0,
    };
    for (const h of [0.5, 3, 12, 20, 24]) {
      const cap = (Math.PI * h * h * (3 * R - h)) / 3;
      const whole = (4 / 3) * Math.PI * R ** 3;
      const found = volumeBelow(sphere, roundSection, h - R);
      // a sphere's ends are steeper than any cask's
      expect(Math.abs(found - cap)).toBeLessThan(1e-6 * whole);
    }
  });

  it('a cone is half full at its axis, and wherever the level is agrees with slow slices', () => {
    const cone: LyingInside = { radius: (z) => 20 + z / 5, from: 0, to: 50, widest: 50 };
    const whole = volumeBelow(cone, roundSection, 30);
    expect(whole).toBeCloseTo((Math.PI * 50 * (20 ** 2 + 20 * 30 + 30 ** 2)) / 3, 6);
    expect(volumeBelow(cone, roundSection, 0)).toBeCloseTo(whole / 2, 7);
    for (const level of [-29, -22, 15, 25]) {
      const slice = (z: number): number => {
        const r = 20 + z / 5;
        return r * r * roundSection.areaBelow(level / r);
      };
      const slow = simpson(slice, 0, 50, 200_000);
      expect(Math.abs(volumeBelow(cone, roundSection, level) - slow)).toBeLessThan(1e-7 * whole);
    }
  });

  // Set-up: J. T. Mayer, Praktische Geometrie (stereometry), p. 653, a lying cask of 48, 42 and 60 wet 40 at the bung, 37 at
  // the head (attribution from memory). The volumes are derived by an integration of ours elsewhere, not printed there.
  it.each([
    { name: 'parabolic', radius: parabola, wet: 90202.7, whole: 99864.9 },
    { name: 'spheroidal', radius: spheroid, wet: 90372.1, whole: 100091.1 },
  ])('the old $name cask, wet 40 of 48, holds $wet of $whole', ({ radius, wet, whole }) => {
    expect(Math.abs(volumeBelow(oldCask(radius), roundSection, 24) - whole)).toBeLessThan(0.06);
    expect(Math.abs(volumeBelow(oldCask(radius), roundSection, 40 - 24) - wet)).toBeLessThan(0.06);
    // the level is 37 above the lowest point of a head, whose radius is 21
    expect(40 - 24 + radius(30)).toBeCloseTo(37, 10);
  });

  it('is exact to 1e-6 of the whole at every level, also where the level just meets the heads', () => {
    const whole = volumeBelow(oldCask(parabola), roundSection, 24);
    for (const level of [...spread(-24, 24, 17), -21, 21, 20.999, 21.001, -20.999, -21.001, 23.9]) {
      const slice = (z: number): number => {
        const r = parabola(z);
        return r * r * roundSection.areaBelow(level / r);
      };
      const slow = simpson(slice, -30, 30, 100_000);
      const found = volumeBelow(oldCask(parabola), roundSection, level);
      expect(Math.abs(found - slow)).toBeLessThan(1e-7 * whole);
    }
  });

  it('holds for many-sided casks, too', () => {
    const section = polygonSection(new Array<number>(14).fill(Math.PI / 14), 0);
    const whole = volumeBelow(oldCask(parabola), section, 30);
    for (const level of [-23.9, -22, -21, -5, 0, 11, 20.9, 23]) {
      const slice = (z: number): number => {
        const r = parabola(z);
        return r * r * section.areaBelow(level / r);
      };
      const slow = simpson(slice, -30, 30, 100_000);
      expect(Math.abs(volumeBelow(oldCask(parabola), section, level) - slow)).toBeLessThan(
        1e-7 * whole,
      );
    }
  });

  it('takes a widest place at either limit', () => {
    for (const widest of [-3, 47])
      expect(volumeBelow({ ...prism, widest }, roundSection, 0)).toBeCloseTo(50 * 50 * Math.PI, 8);
  });
});
