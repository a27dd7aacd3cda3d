import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dipTable, fullDip, postures, usualPosture } from '../../src/capacity/dip-table.js';
import { capacityLitres } from '../../src/capacity/volume.js';
import { arbitraryVessel, bucket, cylinder, solved, wineCask } from '../vessel/specs.js';

const cask = solved(wineCask);

describe('a table of dips', () => {
  it('goes from nothing in even steps to full', () => {
    const { rows, full } = dipTable(cask, 'lying', 10);
    expect(full).toBeCloseTo(624, 9);
    expect(rows.map(({ dip }) => dip)).toEqual([
      ...Array.from({ length: 63 }, (_, i) => 10 * i),
      full,
    ]);
    expect(rows[0]!.litres).toBeCloseTo(0, 9);
    expect(rows.at(-1)!.litres).toBeCloseTo(capacityLitres(cask), 6);
  });

  it('has no second last row when the steps end at full', () => {
    const { rows } = dipTable(solved(cylinder), 'standing', 131);
    expect(rows.map(({ dip }) => dip)).toEqual([0, 131, 262]);
    // a cylinder of radius 132
    expect(rows[1]!.litres).toBeCloseTo((Math.PI * 132 ** 2 * 131) / 1e6, 9);
  });

  it('grows with every step, in either posture, up to the capacity', () => {
    fc.assert(
      fc.property(arbitraryVessel, fc.constantFrom(...postures), (spec, posture) => {
        const vessel = solved(spec);
        const { rows } = dipTable(vessel, posture, fullDip(vessel, posture) / 17.3);
        rows.slice(1).forEach(({ litres }, i) => expect(litres).toBeGreaterThan(rows[i]!.litres));
        expect(rows.at(-1)!.litres / capacityLitres(vessel)).toBeCloseTo(1, 6);
      }),
      { numRuns: 20 },
    );
  });

  it('refuses steps that make no table', () => {
    for (const step of [0, -1, NaN, 0.1]) expect(() => dipTable(cask, 'lying', step)).toThrow();
  });
});

describe('the old rule beside it', () => {
  // Rules and tables for gauging, The Builder-Mechanic: 54.759375 of 118.80 gallons at 15 of 32 in
  it('is the gauger’s at 15 of 32', () => {
    const { rows } = dipTable(cask, 'lying', (fullDip(cask, 'lying') * 15) / 32);
    const { litres, oldRule, oldRuleError } = rows[1]!;
    expect(oldRule! / capacityLitres(cask)).toBeCloseTo(54.759375 / 118.8, 9);
    expect(oldRuleError).toBeCloseTo(oldRule! - litres, 12);
  });

  it('is silent where it would promise less than nothing or more than all', () => {
    const { rows } = dipTable(cask, 'lying', 10);
    expect(rows[0]!.oldRule).toBeNull();
    expect(rows.at(-1)!.oldRuleError).toBeNull();
    for (const { oldRule } of rows) if (oldRule !== null) expect(oldRule).toBeGreaterThanOrEqual(0);
  });
});

it('casks lie and tubs stand', () => {
  expect([usualPosture(cask), usualPosture(solved(bucket))]).toEqual(['lying', 'standing']);
});
