import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stationsOf, stationStep } from '../../src/vessel/stations.js';
import { arbitraryVessel, changed, solved, wineCask } from './specs.js';

describe('stations', () => {
  it('stand every 100 mm on a wine cask, or every 4 in, five to a half at most', () => {
    expect(stationStep(wineCask)).toBe(100);
    expect(stationStep({ ...wineCask, units: 'in' })).toBe(101.6);
    expect(stationStep({ ...wineCask, height: 200 })).toBe(25);
    expect(stationStep({ ...wineCask, height: 30_000 })).toBe(800);
  });

  it('run from end to end, with widths and bevels of their own sections', () => {
    const vessel = solved(wineCask);
    const stave = vessel.staves[0]!;
    const stations = stationsOf(vessel, stave);
    expect(stations.map(({ s }) => Math.round(s))).toEqual([
      -473, -400, -300, -200, -100, 0, 100, 200, 300, 400, 473,
    ]);
    const rho = (472.5 ** 2 + 53 ** 2) / (2 * 53);
    for (const { s, z, width, bevel, thickness } of stations) {
      // the arc's own way back from station to section
      const phi = s / (rho - 13.5);
      expect(z).toBeCloseTo(rho * Math.sin(phi), 8);
      const r = 339 - rho * (1 - Math.cos(phi));
      expect(width).toBeCloseTo(2 * r * Math.tan(Math.PI / 28), 8);
      expect(bevel).toBeCloseTo(Math.atan(Math.tan(Math.PI / 28) * Math.cos(phi)), 10);
      expect(thickness).toBe(stave.blankThickness);
    }
  });

  it('of any vessel grow, and none crowds an end', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const vessel = solved(spec);
        const stations = stationsOf(vessel, vessel.staves[0]!);
        const least = stationStep(spec) / 4;
        stations
          .slice(1)
          .forEach(({ s }, i) => expect(s - stations[i]!.s).toBeGreaterThan(least - 1e-9));
        expect(stations[0]!.z).toBe(-spec.height / 2);
        expect(stations.at(-1)!.z).toBe(spec.height / 2);
      }),
    );
  });

  it('of thinned staves give the thickness that the blank has there', () => {
    const vessel = solved(changed(wineCask, { staves: { endThickness: 21 } }));
    const stations = stationsOf(vessel, vessel.staves[0]!);
    const middle = stations[5]!.thickness;
    expect(stations.at(-1)!.thickness).toBeCloseTo(middle - 6, 10);
  });
});
