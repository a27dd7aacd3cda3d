import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dipLying, dipStanding, fullDipLying, fullDipStanding } from '../../src/capacity/dip.js';
import { capacityLitres } from '../../src/capacity/volume.js';
import { spread } from '../vessel/numeric.js';
import { arbitraryVessel, bucket, changed, cylinder, solved, wineCask } from '../vessel/specs.js';

const postures = [
  { posture: 'standing', dip: dipStanding, full: fullDipStanding },
  { posture: 'lying', dip: dipLying, full: fullDipLying },
] as const;

describe.each(postures)('dip, $posture', ({ dip, full }) => {
  it('is nothing when dry, the capacity when full, and grows between', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const vessel = solved(changed(spec, { staves: { endThickness: spec.staves.thickness } }));
        const capacity = capacityLitres(vessel);
        const rows = spread(0, full(vessel), 12).map((depth) => dip(vessel, depth));
        expect(rows[0]).toBe(0);
        expect(rows.at(-1)! / capacity).toBeCloseTo(1, 9);
        rows.slice(1).forEach((litres, i) => expect(litres).toBeGreaterThan(rows[i]!));
      }),
    );
  });

  it('outside the vessel counts as empty or full', () => {
    const vessel = solved(wineCask);
    expect(dip(vessel, -5)).toBe(0);
    expect(dip(vessel, full(vessel) + 100)).toBeCloseTo(capacityLitres(vessel), 9);
  });

  it('half way up a cask is half of it', () => {
    const vessel = solved(wineCask);
    expect(dip(vessel, full(vessel) / 2) / capacityLitres(vessel)).toBeCloseTo(0.5, 10);
    const even = solved(changed(wineCask, { staves: { inside: 'flat' } }));
    expect(dip(even, full(even) / 2) / capacityLitres(even)).toBeCloseTo(0.5, 10);
  });

  it('mirrors: what is wet at a depth is dry at the same depth from the top', () => {
    const vessel = solved(wineCask);
    for (const share of [0.1, 0.3, 0.45]) {
      const wet = dip(vessel, share * full(vessel));
      const dry = capacityLitres(vessel) - dip(vessel, (1 - share) * full(vessel));
      expect(wet).toBeCloseTo(dry, 6);
    }
  });
});

describe('standing', () => {
  it('starts at the inside face of the bottom head', () => {
    expect(fullDipStanding(solved(wineCask))).toBeCloseTo(801, 10);
    expect(fullDipStanding(solved(bucket))).toBeCloseTo(300 - 38, 10);
  });

  it('in a straight tub grows evenly', () => {
    const vessel = solved(cylinder);
    for (const depth of [1, 100, 262])
      expect(dipStanding(vessel, depth)).toBeCloseTo((Math.PI * 132 ** 2 * depth) / 1e6, 10);
  });

  it('in a pail that widens upwards is less than its share', () => {
    const vessel = solved(bucket);
    expect(dipStanding(vessel, 131)).toBeLessThan(capacityLitres(vessel) / 2);
  });
});

describe('lying', () => {
  it('is measured from the lowest inside point at the bilge', () => {
    expect(fullDipLying(solved(wineCask))).toBeCloseTo(2 * (339 - 27), 10);
    // an even number of flat staves stands face to face, an odd one on a corner
    const flat = (count: number) =>
      solved(changed(wineCask, { staves: { inside: 'flat', count }, bung: null }));
    expect(fullDipLying(flat(28))).toBeCloseTo(2 * 312, 10);
    expect(fullDipLying(flat(27))).toBeCloseTo(312 + 312 / Math.cos(Math.PI / 27), 10);
  });

  it('of flat staves has the widest at the top', () => {
    const widths = Array.from(
      { length: 28 },
      (_, i) => 678 * Math.tan((i === 5 ? 1.54 : 0.98) * (Math.PI / 28)),
    );
    const vessel = solved(changed(wineCask, { staves: { widths, inside: 'flat' } }));
    // the last millimetre at the bilge spreads over the bung stave's inner face
    const last = (dipLying(vessel, 1000) - dipLying(vessel, fullDipLying(vessel) - 1)) * 1e6;
    const turned = solved(
      changed(wineCask, {
        staves: { widths: [...widths.slice(5), ...widths.slice(0, 5)], inside: 'flat' },
      }),
    );
    const sameLast = (dipLying(turned, 1000) - dipLying(turned, fullDipLying(turned) - 1)) * 1e6;
    expect(last).toBeCloseTo(sameLast, 5);
    expect(dipLying(vessel, 200)).toBeCloseTo(dipLying(turned, 200), 8);
  });

  it('of a straight tub counts as if a lid lay on it: segments of a circle', () => {
    const vessel = solved(cylinder);
    // a gauger's table of segments, diameter 1: height .35, area .244980
    const litres = (0.24498 * 264 ** 2 * 262) / 1e6;
    expect(dipLying(vessel, 0.35 * 264) / litres).toBeCloseTo(1, 5);
  });

  it('of a pail is measured at its wider end', () => {
    const vessel = solved(bucket);
    expect(fullDipLying(vessel)).toBeCloseTo(2 * vessel.wall.insideRadius(150), 9);
    expect(dipLying(vessel, fullDipLying(vessel) / 2) / capacityLitres(vessel)).toBeCloseTo(0.5, 9);
    // what is wet at first is a wedge at the rim
    expect(dipLying(vessel, 1)).toBeLessThan(0.01);
  });

  it('of a cask that is wider inside at its ends cannot be filled to the last through the bung', () => {
    const spec = changed(wineCask, {
      outside: { kind: 'cask', bilge: 678, ends: 676, profile: 'arc' },
      staves: { endThickness: 22 },
      both: { croze: { depth: 3 } },
    });
    const vessel = solved(spec);
    expect(dipLying(vessel, 0)).toBeGreaterThan(0);
    expect(dipLying(vessel, 1e4)).toBeLessThan(capacityLitres(vessel));
  });
});
