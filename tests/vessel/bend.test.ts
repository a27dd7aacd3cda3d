import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lean } from '../../src/vessel/profile.js';
import { simpson, spread } from './numeric.js';
import {
  arbitraryCask,
  arbitraryTub,
  arbitraryVessel,
  bucket,
  changed,
  cylinder,
  solved,
  wineCask,
} from './specs.js';

const rho = (472.5 ** 2 + 53 ** 2) / (2 * 53);
const withNeutral = (neutral: number) => changed(wineCask, { staves: { neutral } });

describe('station', () => {
  it('is the height on a cylinder, and the slant length on a cone', () => {
    const straight = solved(cylinder).bend;
    const slanted = solved(bucket).bend;
    for (const z of [-150, -20, 0, 75, 150]) {
      expect(straight.station(z)).toBeCloseTo(z, 11);
      expect(slanted.station(z)).toBeCloseTo(z * Math.hypot(1, 25 / 300), 11);
    }
  });

  it.each([0, 0.3, 0.5, 1])('on an arc is (rho - nu t) asin(z / rho), nu = %d', (neutral) => {
    const { bend } = solved(withNeutral(neutral));
    for (const z of [-472.5, -300, -1, 0, 0.01, 250, 472.5, 490])
      expect(bend.station(z)).toBeCloseTo((rho - neutral * 27) * Math.asin(z / rho), 10);
  });

  it('on a parabola is its arc length less nu t times the lean (both in closed form)', () => {
    const spec = changed(withNeutral(0.4), { outside: { profile: 'parabola' } as never });
    const { bend } = solved(spec);
    const a = 53 / 472.5 ** 2;
    for (const z of [-472.5, 100, 472.5]) {
      const u = 2 * a * z;
      const arcLength = (u * Math.sqrt(1 + u * u) + Math.asinh(u)) / (4 * a);
      expect(bend.station(z)).toBeCloseTo(arcLength - 0.4 * 27 * Math.atan(u), 10);
    }
  });

  it('on any cask of even thickness is arc length less nu t times the angle turned', () => {
    fc.assert(
      fc.property(arbitraryCask, (drawn) => {
        const spec = changed(drawn, { staves: { endThickness: drawn.staves.thickness } });
        const { bend, profile } = solved(spec);
        const { neutral, thickness } = spec.staves;
        for (const z of [spec.height / 2, -spec.height / 2, spec.height / 5]) {
          const length = simpson((x) => Math.hypot(1, profile.slope(x)), 0, z, 400);
          const expected = length - neutral * thickness * lean(profile, z);
          expect(Math.abs(bend.station(z) - expected)).toBeLessThan(1e-8 * spec.height);
        }
      }),
    );
  });

  it('on thinned staves agrees with the integral done another way', () => {
    const spec = changed(wineCask, { staves: { endThickness: 20, neutral: 0.8 } });
    const { bend } = solved(spec);
    const rate = (z: number): number => {
      const t = 27 - 7 * (z / 472.5) ** 2;
      return (1 - (0.8 * t) / rho) / Math.sqrt(1 - (z / rho) ** 2);
    };
    expect(bend.station(472.5)).toBeCloseTo(simpson(rate, 0, 472.5), 9);
  });

  it('keeps its accuracy to walls that lean 44 degrees at the ends', () => {
    // rise for a lean of 44 degrees at the end of an arc: (H/2) tan(22 degrees)
    const rise = 200 * Math.tan((22 * Math.PI) / 180);
    const outside = { kind: 'cask', bilge: 800, ends: 800 - 2 * rise, profile: 'arc' } as const;
    const small = { inset: 30, depth: 3, width: 5 };
    const spec = changed(wineCask, {
      height: 400,
      outside,
      staves: { thickness: 20, endThickness: 20, trim: 5, count: 40 },
      both: { thickness: 20, croze: small, edge: { thickness: 4, fromInside: 9, innerBevel: 20 } },
      hoops: [],
    });
    const { bend } = solved(spec);
    const radius = (200 ** 2 + rise ** 2) / (2 * rise);
    for (const z of [100, 200, 210])
      expect(bend.station(z)).toBeCloseTo((radius - 10) * Math.asin(z / radius), 9);
  });

  it('grows with the height, is odd, and shrinks with nu', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const { bend } = solved(spec);
        const stations = spread(-0.5, 0.5, 11).map((share) => bend.station(share * spec.height));
        stations.slice(1).forEach((s, i) => expect(s).toBeGreaterThan(stations[i]!));
        stations.forEach((s, i) => expect(s).toBeCloseTo(-stations[10 - i]!, 8));
        const stiffer = solved(changed(spec, { staves: { neutral: spec.staves.neutral * 0.9 } }));
        expect(stiffer.bend.station(spec.height / 2)).toBeGreaterThanOrEqual(stations[10]! - 1e-9);
      }),
    );
  });
});

describe('sectionAtStation', () => {
  it('turns a station back into its section, out to the ends of the blank', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const { bend, staves } = solved(spec);
        const { top, bottom } = staves[0]!.blankEnds;
        for (const s of spread(bottom.outer, top.outer, 7)) {
          const z = bend.sectionAtStation(s);
          expect(Math.abs(bend.station(z) - s)).toBeLessThan(1e-8);
        }
      }),
    );
  });

  it('of 0 is mid-height', () => {
    expect(solved(wineCask).bend.sectionAtStation(0)).toBeCloseTo(0, 13);
  });
});

describe('stretch of the outer face', () => {
  it('is none where nothing bends', () => {
    fc.assert(fc.property(arbitraryTub, (spec) => solved(spec).bend.outerStretch === 0));
  });

  it('is none when the outer face itself keeps its length', () => {
    expect(solved(withNeutral(0)).bend.outerStretch).toBe(0);
  });

  it('on an arc is nu t / (rho - nu t): 0.64 % for the wine cask', () => {
    expect(solved(wineCask).bend.outerStretch).toBeCloseTo(13.5 / (rho - 13.5), 12);
    // the design's 0.63 % is nu t / rho, the strain referred to the bent length
    expect(13.5 / rho).toBeCloseTo(0.0063, 4);
  });

  it('is what the outer fibre gains: its bent length over its flat length', () => {
    const { bend } = solved(wineCask);
    const bent = rho * (Math.asin(101 / rho) - Math.asin(100 / rho));
    const flat = bend.station(101) - bend.station(100);
    expect(bent / flat - 1).toBeCloseTo(bend.outerStretch, 10);
  });

  it('is found where the curve is tightest: at the middle of a parabola, at the end of an ellipse', () => {
    const parabola = solved(changed(wineCask, { outside: { profile: 'parabola' } as never }));
    const middle = 13.5 * parabola.profile.curvature(0);
    expect(parabola.bend.outerStretch).toBeCloseTo(middle / (1 - middle), 12);
    const ellipse = solved(changed(wineCask, { outside: { profile: 'ellipse' } as never }));
    const end = 13.5 * ellipse.profile.curvature(472.5);
    expect(ellipse.profile.curvature(472.5)).toBeGreaterThan(ellipse.profile.curvature(0));
    expect(ellipse.bend.outerStretch).toBeCloseTo(end / (1 - end), 12);
  });
});
