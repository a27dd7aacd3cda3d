/** The radii of backing and hollowing against a section that is cut through the surface by numbers alone. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { root } from '../../src/geometry/quadrature.js';
import { backingRadius, hollowingRadius, jointGaugeRadius } from '../../src/vessel/stave-round.js';
import type { Vessel } from '../../src/vessel/vessel.js';
import { arbitraryVessel, between, changed, cylinder, solved, wineCask } from './specs.js';

/**
 * How deep the surface lies below the plane that touches it, `across` mm to the side, in the plane square to the wall
 * at `z`: there a point `h` below has the radius `hypot(r - h cos phi, across)` and the height `z - h sin phi`.
 */
function depthAcross({ profile }: Vessel, z: number, across: number): number {
  const phi = Math.atan(-profile.slope(z));
  const off = (h: number): number =>
    Math.hypot(profile.radius(z) - h * Math.cos(phi), across) -
    profile.radius(z - h * Math.sin(phi));
  return root(off, 0, across);
}

describe('the backing radius', () => {
  it('is the curvature of the real section: depth is across squared by twice the radius', () => {
    fc.assert(
      fc.property(arbitraryVessel, between(-0.45, 0.45), (spec, share) => {
        const vessel = solved(spec);
        const z = share * spec.height;
        const radius = backingRadius(vessel, z);
        const across = radius / 100;
        expect(depthAcross(vessel, z, across) / (across ** 2 / (2 * radius))).toBeCloseTo(1, 3);
      }),
    );
  });

  it('of a wine cask: the bilge’s own at the bilge, flatter than the circle at the ends', () => {
    const vessel = solved(wineCask);
    expect(backingRadius(vessel, 0)).toBe(339);
    const rho = (472.5 ** 2 + 53 ** 2) / 106;
    expect(backingRadius(vessel, 472.5)).toBeCloseTo(286 / Math.sqrt(1 - (472.5 / rho) ** 2), 8);
    expect(backingRadius(vessel, 472.5)).toBeGreaterThan(286);
  });

  it('of a cylinder is its radius everywhere', () => {
    expect(backingRadius(solved(cylinder), 77)).toBe(150);
  });
});

describe('the hollowing radius', () => {
  it('is less by the thickness at that place', () => {
    const thin = solved(changed(wineCask, { staves: { endThickness: 22 } }));
    expect(hollowingRadius(thin, 0)).toBeCloseTo(339 - 27, 9);
    expect(hollowingRadius(thin, 472.5)).toBeCloseTo(backingRadius(thin, 472.5) - 22, 9);
  });
});

describe('the joint gauge', () => {
  it('goes through the corners: of a backed face its own circle, of a flat one a little wider', () => {
    expect(jointGaugeRadius(solved(wineCask), 0)).toBe(339);
    const flat = solved(changed(wineCask, { staves: { outside: 'flat' } }));
    expect(jointGaugeRadius(flat, 0)).toBeCloseTo(339 / Math.cos(Math.PI / 28), 9);
  });
});
