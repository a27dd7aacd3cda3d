import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Spec } from '../../src/spec/spec.js';
import { landBeyondGroove, type Head } from '../../src/vessel/head.js';
import { arbitraryVessel, bucket, changed, cylinder, solved, wineCask } from './specs.js';

const bottomOf = (spec: Spec): Head => solved(spec).heads.bottom;

describe('diameter', () => {
  it('is twice the groove radius less the clearance, which may be negative', () => {
    expect(bottomOf(cylinder).diameter).toBeCloseTo(2 * (132 + 1.5 + 4), 10);
    for (const clearance of [1.2, -1.2]) {
      const head = bottomOf(changed(cylinder, { both: { clearance } }));
      expect(head.diameter).toBeCloseTo(275 - clearance, 10);
      expect(head.groove.radius).toBeCloseTo(137.5, 10);
    }
  });

  it('of the wine cask is 556.4', () => {
    const rho = (472.5 ** 2 + 53 ** 2) / (2 * 53);
    const inside = 339 - rho + Math.sqrt((rho - 27) ** 2 - 412.5 ** 2);
    expect(bottomOf(wineCask).diameter).toBeCloseTo(2 * (inside + 7), 9);
    expect(bottomOf(wineCask).diameter).toBeCloseTo(556.4, 1);
  });

  it('across the boards takes the allowance, along them none', () => {
    const { rim, diameter } = bottomOf(changed(wineCask, { both: { crossGrain: -3 } }));
    expect(rim.along).toBe(diameter / 2);
    expect(2 * rim.across).toBeCloseTo(diameter - 3, 10);
  });

  it('steps six times round its own groove with a compass; 1 % wide overruns by 3.98 degrees', () => {
    const { radius } = bottomOf(wineCask).groove;
    const stepAngle = (compass: number): number => 2 * Math.asin(compass / (2 * radius));
    expect((6 * stepAngle(radius) * 180) / Math.PI).toBeCloseTo(360, 10);
    expect((6 * stepAngle(1.01 * radius) * 180) / Math.PI - 360).toBeCloseTo(3.98, 2);
  });
});

describe('place', () => {
  it('has the land in the middle of the groove', () => {
    const { top, bottom } = solved(wineCask).heads;
    expect(bottom.insideFace).toBe(-472.5 + 60 + 12);
    expect(bottom.outsideFace).toBe(-472.5 + 60 + 12 - 27);
    expect(top!.insideFace).toBe(-bottom.insideFace);
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const { section, insideFace, groove } = bottomOf(spec);
        const [low, high] = [section[2]!.y, section[3]!.y];
        const middle = insideFace + (groove.towardsEnd * (low + high)) / 2;
        expect(middle).toBeCloseTo(groove.middle, 9);
        expect(high - low).toBeLessThanOrEqual(groove.width + 1e-9);
      }),
    );
  });

  it('lets top and bottom differ', () => {
    const { top, bottom } = solved(
      changed(wineCask, { top: { thickness: 24, croze: { inset: 50 } } }),
    ).heads;
    expect(top!.groove.middle).toBe(472.5 - 50);
    expect(top!.section.at(-1)!.y).toBe(24);
    expect(bottom.groove.middle).toBe(-412.5);
    expect(top!.diameter).toBeLessThan(bottom.diameter);
  });

  it('leaves a tub without a top', () => {
    expect(solved(bucket).heads.top).toBeNull();
  });
});

describe('edge', () => {
  it('runs from the inside face over bevel, land and bevel to the outside face', () => {
    const { section, landDepth } = bottomOf(cylinder);
    const rim = 137.5;
    expect(landDepth).toBeCloseTo(4 + landBeyondGroove, 10);
    expect(section.map(({ x, y }) => [x, y])).toEqual(
      [
        [rim - 10, 0],
        [rim - 4.5, 8 - 2.25],
        [rim, 8 - 2.25],
        [rim, 8 + 2.25],
        [rim - 4.5, 8 + 2.25],
        [rim - 20, 18],
      ].map((point) => point.map((value) => expect.closeTo(value, 9) as number)),
    );
  });

  it('has a land that is deeper than the groove everywhere, so that the rim comes home first', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const { groove, landDepth } = bottomOf(spec);
        for (const lip of [groove.outerLip, groove.innerLip])
          expect(landDepth).toBeGreaterThan(groove.radius - groove.howelRadius(lip));
      }),
    );
  });

  it('of the wine cask has a land of 5.6 + 0.5', () => {
    expect(bottomOf(wineCask).landDepth).toBeCloseTo(6.1, 2);
  });
});
