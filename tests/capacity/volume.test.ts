import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  capacityLitres,
  holdingHeights,
  sectionArea,
  volumeBetween,
} from '../../src/capacity/volume.js';
import type { CaskProfile, Spec } from '../../src/spec/spec.js';
import { profileOf } from '../../src/vessel/profile.js';
import { ringOf } from '../../src/vessel/ring.js';
import type { Vessel } from '../../src/vessel/vessel.js';
import { wallOf } from '../../src/vessel/wall.js';
import { simpson } from '../vessel/numeric.js';
import { arbitraryVessel, bucket, changed, cylinder, solved, wineCask } from '../vessel/specs.js';

/** As much of a vessel as its volume needs, with walls too thin to be built: the outside is the inside. */
function film(spec: Spec): Vessel {
  const thin = changed(spec, { staves: { thickness: 1e-9, endThickness: 1e-9 } });
  const ring = ringOf(thin);
  return { spec: thin, ring, wall: wallOf(thin, profileOf(thin, 1)) } as Vessel;
}

const whole = (vessel: Vessel): number =>
  volumeBetween(vessel, -vessel.spec.height / 2, vessel.spec.height / 2);

describe('volume of known solids', () => {
  const [D, d, L] = [678, 572, 945];
  const cask = (profile: CaskProfile): number =>
    whole(film(changed(wineCask, { outside: { profile } as never })));

  it('a spheroid holds pi L / 12 (2 D^2 + d^2)', () => {
    const exact = (Math.PI * L * (2 * D * D + d * d)) / 12;
    expect(cask('ellipse') / exact).toBeCloseTo(1, 9);
  });

  it('a parabolic spindle holds pi L / 60 (8 D^2 + 4 D d + 3 d^2)', () => {
    const exact = (Math.PI * L * (8 * D * D + 4 * D * d + 3 * d * d)) / 60;
    expect(cask('parabola') / exact).toBeCloseTo(1, 9);
  });

  it('a circular spindle lies between them', () => {
    const rho = ((L / 2) ** 2 + 53 ** 2) / (2 * 53);
    const c = D / 2 - rho;
    const h = L / 2;
    const under = h * Math.sqrt(rho * rho - h * h) + rho * rho * Math.asin(h / rho);
    // the integral of (c + sqrt(rho^2 - z^2))^2
    const exact = Math.PI * (2 * h * (c * c + rho * rho) - (2 * h ** 3) / 3 + 2 * c * under);
    expect(cask('arc') / exact).toBeCloseTo(1, 9);
    expect(cask('arc')).toBeGreaterThan(cask('parabola'));
    expect(cask('arc')).toBeLessThan(cask('ellipse'));
  });

  it('a pail is a frustum of a cone', () => {
    const exact = (Math.PI * 300 * (320 ** 2 + 320 * 270 + 270 ** 2)) / 12;
    expect(whole(film(bucket)) / exact).toBeCloseTo(1, 9);
  });

  it('a straight tub is a cylinder, of flat staves a prism', () => {
    expect(whole(film(cylinder)) / (Math.PI * 150 ** 2 * 300)).toBeCloseTo(1, 9);
    const prism = whole(film(changed(cylinder, { staves: { inside: 'flat' } })));
    expect(prism / (16 * Math.tan(Math.PI / 16) * 150 ** 2 * 300)).toBeCloseTo(1, 9);
  });
});

describe('capacity', () => {
  it('of a straight tub runs from the bottom to the rim', () => {
    const vessel = solved(cylinder);
    expect(holdingHeights(vessel)).toEqual({ from: -150 + 30 + 8, to: 150 });
    expect(capacityLitres(vessel)).toBeCloseTo((Math.PI * 132 ** 2 * 262) / 1e6, 10);
  });

  it('of a cask runs from inside face to inside face', () => {
    expect(holdingHeights(solved(wineCask))).toEqual({ from: -400.5, to: 400.5 });
  });

  it('of any vessel is that of an independent integration of its inside', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const vessel = solved(spec);
        const { from, to } = holdingHeights(vessel);
        const perSquare =
          spec.staves.inside === 'flat'
            ? vessel.ring.alphas.reduce((sum, alpha) => sum + Math.tan(alpha), 0)
            : Math.PI;
        const area = (h: number): number => perSquare * vessel.wall.insideRadius(h) ** 2;
        expect(capacityLitres(vessel) / (simpson(area, from, to, 200) / 1e6)).toBeCloseTo(1, 7);
      }),
    );
  });

  it('of flat staves is what lies inside the circle of hollowed ones and a little more', () => {
    const flat = solved(changed(wineCask, { staves: { inside: 'flat' } }));
    const ratio = (28 * Math.tan(Math.PI / 28)) / Math.PI;
    expect(capacityLitres(flat) / capacityLitres(solved(wineCask))).toBeCloseTo(ratio, 10);
    expect(sectionArea(flat, 2) / sectionArea(solved(wineCask), 2)).toBeCloseTo(ratio, 12);
  });
});

describe('a mixed set with flat insides', () => {
  const widths = [92, 60, 100, 71, 84, 66, 90, 75, 78, 62, 88, 70];
  const D = 300;
  const scale = (D * Math.PI) / widths.reduce((sum, width) => sum + width, 0);
  const tub = changed(cylinder, {
    outside: { kind: 'tub', top: D, bottom: D },
    staves: { widths: widths.map((width) => width * scale), inside: 'flat', count: 12 },
  });

  it('holds a prism on the polygon of its inner faces, measured corner by corner', () => {
    const vessel = solved(tub);
    const inside = vessel.wall.insideRadius(0);
    let azimuth = 0;
    const corners = vessel.staves.flatMap(({ width }) => {
      const alpha = Math.atan(width / vessel.ring.closesAt);
      const reach = inside / Math.cos(alpha);
      const both = [azimuth, azimuth + 2 * alpha];
      azimuth += 2 * alpha;
      return both.map((angle) => [reach * Math.cos(angle), reach * Math.sin(angle)] as const);
    });
    expect(azimuth).toBeCloseTo(2 * Math.PI, 9);
    // the shoelace formula
    const twice = corners.reduce((sum, [x, y], i) => {
      const [u, v] = corners[(i + 1) % corners.length]!;
      return sum + x * v - u * y;
    }, 0);
    const { from, to } = holdingHeights(vessel);
    expect(capacityLitres(vessel)).toBeCloseTo(((twice / 2) * (to - from)) / 1e6, 9);
    expect(twice / 2).toBeGreaterThan(Math.PI * inside ** 2);
  });
});
