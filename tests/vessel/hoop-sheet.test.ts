/** A hoop cut from sheet: rolled up again, the sector must be the hoop. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shortEdge } from '../../src/vessel/hoop.js';
import { sheetHoopOf } from '../../src/vessel/hoop-sheet.js';
import { arbitraryCask, bucket, changed, cylinder, solved, wineCask } from './specs.js';

describe('the ring sector', () => {
  it('has the radii and the sweep of the unrolled cone', () => {
    for (const hoop of solved(wineCask).hoops) {
      const sheet = sheetHoopOf(hoop)!;
      const psi = Math.abs(hoop.slope);
      const { thickness, lap } = hoop.spec;
      const radius = (r: number): number => (r + (thickness * Math.cos(psi)) / 2) / Math.sin(psi);
      const [small, large] = [hoop.nearRadius, hoop.farRadius];
      expect(sheet.shortRadius).toBeCloseTo(radius(small), 6);
      expect(sheet.longRadius).toBeCloseTo(radius(large), 6);
      const mean = (radius(small) + radius(large)) / 2;
      expect(sheet.sweep).toBeCloseTo(2 * Math.PI * Math.sin(psi) + lap / mean, 9);
    }
  });

  it('rolled to its cone comes round once, with the two girths as edges', () => {
    fc.assert(
      fc.property(arbitraryCask, (drawn) => {
        const width = 0.03 * drawn.height;
        const one = { name: 'one', end: 'top', offset: 0, width, thickness: 1.5, lap: 60 } as const;
        const hoop = solved({ ...drawn, hoops: [one] }).hoops[0]!;
        const sheet = sheetHoopOf(hoop);
        if (!sheet) return expect(hoop.splay).toBeLessThan(0.1);
        const halfThickness = Math.PI * 1.5 * Math.cos(hoop.slope);
        const near = hoop.nearGirth + halfThickness;
        const far = hoop.farGirth + halfThickness;
        const [short, long] = [Math.min(near, far), Math.max(near, far)];
        expect((sheet.shortRadius * sheet.roundSweep) / short).toBeCloseTo(1, 10);
        expect((sheet.longRadius * sheet.roundSweep) / long).toBeCloseTo(1, 10);
      }),
    );
  });

  it('is a plain strip on a cylinder, and where its bow would not be seen', () => {
    expect(solved(cylinder).hoops.map(sheetHoopOf)).toEqual([null, null]);
    const barely = changed(wineCask, {
      outside: { kind: 'cask', bilge: 678, ends: 677.9999, profile: 'arc' },
    });
    expect(sheetHoopOf(solved(barely).hoops[0]!)).toBeNull();
  });

  it('on a flat outside unrolls the polygon’s girths', () => {
    const flat = solved(changed(bucket, { staves: { outside: 'flat' } })).hoops[0]!;
    const sheet = sheetHoopOf(flat)!;
    const corners = 16 * Math.tan(Math.PI / 16);
    const short = 2 * Math.min(flat.nearRadius, flat.farRadius) * corners;
    const bent = Math.PI * flat.spec.thickness * Math.cos(flat.slope);
    expect(sheet.shortRadius * sheet.roundSweep).toBeCloseTo(short + bent, 8);
  });

  it('overlaps by lap and driving, so that it closes as tight as a strap', () => {
    const hoop = solved(wineCask).hoops[0]!;
    const { roundSweep, drivingSweep, shortRadius } = sheetHoopOf(hoop)!;
    const closed = shortRadius * (roundSweep - drivingSweep);
    expect(closed).toBeCloseTo(hoop.cutLength - hoop.spec.lap, 8);
    expect(closed).toBeCloseTo(shortEdge(hoop) - hoop.driving, 8);
  });
});
