import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CaskProfile } from '../../src/spec/spec.js';
import {
  arcProfile,
  ellipseProfile,
  greatestDiameter,
  lean,
  lineProfile,
  parabolaProfile,
  profileOf,
  widestHeight,
  type Profile,
} from '../../src/vessel/profile.js';
import { derivative, spread } from './numeric.js';
import { arbitraryCask, arbitraryVessel, bucket, changed, cylinder, wineCask } from './specs.js';

const makers = { arc: arcProfile, parabola: parabolaProfile, ellipse: ellipseProfile };
const names = Object.keys(makers) as CaskProfile[];

/** -r'' / (1 + r'^2)^(3/2) by differences. */
function curvatureByDifferences({ radius }: Profile, z: number): number {
  const h = 0.5;
  const second = (radius(z + h) - 2 * radius(z) + radius(z - h)) / (h * h);
  return -second / (1 + derivative(radius, z) ** 2) ** 1.5;
}

describe.each(names)('%s', (name) => {
  const profile = makers[name](339, 286, 945);

  it('passes through the bilge and both ends', () => {
    expect(profile.radius(0)).toBe(339);
    expect(profile.radius(472.5)).toBeCloseTo(286, 10);
    expect(profile.radius(-472.5)).toBeCloseTo(286, 10);
  });

  it('has the slope and curvature of its own line', () => {
    for (const z of [-500, -472.5, -200, 0, 1, 333, 472.5]) {
      expect(profile.slope(z)).toBeCloseTo(derivative(profile.radius, z), 7);
      expect(profile.curvature(z) * 1000).toBeCloseTo(curvatureByDifferences(profile, z) * 1000, 4);
    }
  });

  it('keeps its digits when the bilge is 0.01 mm wider in radius', () => {
    const barely = makers[name](300, 299.99, 600);
    // all three are the same parabola but for a share of rise / radius, 3e-5
    for (const z of [0, 75, 150, 300, 310]) {
      expect(300 - barely.radius(z)).toBeCloseTo(0.01 * (z / 300) ** 2, 6);
      expect(barely.slope(z)).toBeCloseTo((-0.02 * z) / 300 ** 2, 8);
      expect(barely.curvature(z)).toBeCloseTo(0.02 / 300 ** 2, 10);
    }
  });

  it('goes on beyond the ends as far as its reach', () => {
    expect(profile.reach).toBeGreaterThan(472.5 + 100);
    expect(Number.isFinite(profile.radius(profile.reach))).toBe(true);
    expect(Number.isFinite(profile.slope(profile.reach))).toBe(true);
  });

  it('bulges, is symmetric, and leans up in the upper half', () => {
    const caskOf = arbitraryCask.filter(
      ({ outside }) => 'profile' in outside && outside.profile === name,
    );
    fc.assert(
      fc.property(caskOf, (spec) => {
        const p = profileOf(spec, 1);
        for (const z of spread(0.05, 1, 6).map((share) => (share * spec.height) / 2)) {
          expect(p.radius(-z)).toBe(p.radius(z));
          expect(p.slope(-z)).toBe(-p.slope(z));
          expect(p.curvature(-z)).toBe(p.curvature(z));
          expect(p.curvature(z)).toBeGreaterThan(0);
          expect(lean(p, z)).toBeGreaterThan(0);
          expect(p.radius(z)).toBeLessThan(p.radius(z * 0.9));
        }
      }),
    );
  });
});

describe('the three casks differ between bilge and end', () => {
  it('an arc lies on its circle', () => {
    const { radius } = arcProfile(339, 286, 945);
    const rho = (472.5 ** 2 + 53 ** 2) / (2 * 53);
    for (const z of [0, 100, 300, 472.5])
      expect(Math.hypot(z, radius(z) - (339 - rho))).toBeCloseTo(rho, 9);
  });

  it('a parabola has lost a quarter of its rise half way up', () => {
    expect(parabolaProfile(339, 286, 945).radius(236.25)).toBeCloseTo(339 - 53 / 4, 12);
  });

  it('an ellipse satisfies its equation', () => {
    const { radius } = ellipseProfile(339, 286, 945);
    const a = 472.5 / Math.sqrt(1 - (286 / 339) ** 2);
    for (const z of [0, 100, 300, 472.5])
      expect((radius(z) / 339) ** 2 + (z / a) ** 2).toBeCloseTo(1, 12);
  });

  it('the parabola has the hollower middle: arc and ellipse are fuller there', () => {
    const [arc, parabola, ellipse] = names.map((name) =>
      makers[name](339, 286, 945).radius(236.25),
    );
    expect(arc!).toBeGreaterThan(parabola!);
    expect(ellipse!).toBeGreaterThan(arc!);
  });
});

describe('a tub', () => {
  it('is a straight line from bottom to top', () => {
    const profile = lineProfile(135, 160, 300);
    expect(profile.radius(-150)).toBeCloseTo(135, 12);
    expect(profile.radius(150)).toBeCloseTo(160, 12);
    expect(profile.curvature(70)).toBe(0);
    expect(lean(profile, 0)).toBeCloseTo(-Math.atan(25 / 300), 14);
  });

  it('reaches to the tip of its cone, and a cylinder without end', () => {
    const cone = lineProfile(100, 50, 100);
    expect(cone.reach).toBeLessThanOrEqual(150);
    expect(cone.reach).toBeGreaterThan(149);
    expect(lineProfile(100, 100, 100).reach).toBeGreaterThan(1e5);
    expect(lean(lineProfile(100, 100, 100), 10)).toBeCloseTo(0, 15);
  });
});

describe('profileOf', () => {
  it('scales every radius and no height', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const [plain, scaled] = [profileOf(spec, 1), profileOf(spec, 1.01)];
        for (const z of spread(-0.5, 0.5, 5).map((share) => share * spec.height)) {
          if (spec.outside.kind === 'tub')
            expect(scaled.radius(z) / plain.radius(z)).toBeCloseTo(1.01, 10);
        }
        const half = spec.height / 2;
        expect(scaled.radius(half) / plain.radius(half)).toBeCloseTo(1.01, 9);
        expect(scaled.radius(-half) / plain.radius(-half)).toBeCloseTo(1.01, 9);
      }),
    );
  });

  it('makes the profile that the spec names', () => {
    for (const profile of names) {
      const spec = changed(wineCask, { outside: { profile } as never });
      expect(profileOf(spec, 1).radius(300)).toBe(makers[profile](339, 286, 945).radius(300));
    }
    expect(profileOf(bucket, 1).radius(150)).toBeCloseTo(160, 12);
    expect(profileOf(bucket, 1).radius(-150)).toBeCloseTo(135, 12);
  });
});

describe('the widest place', () => {
  it('is the middle of a cask and the wider end of a tub', () => {
    const upsideDown = changed(bucket, { outside: { top: 270, bottom: 320 } as never });
    expect(widestHeight(wineCask)).toBe(0);
    expect(widestHeight(bucket)).toBe(150);
    expect(widestHeight(upsideDown)).toBe(-150);
    expect(widestHeight(cylinder)).toBe(150);
    expect(greatestDiameter(wineCask)).toBe(678);
    expect(greatestDiameter(bucket)).toBe(320);
    expect(greatestDiameter(upsideDown)).toBe(320);
  });
});
