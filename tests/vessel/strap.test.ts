import { describe, expect, it } from 'vitest';
import { hoopMass, strapsOf, strapsToBuy } from '../../src/vessel/strap.js';
import { bucket, cylinder, solved, wineCask } from './specs.js';

describe('straps', () => {
  it('of a cask: one pattern serves the pair, numbered from the top', () => {
    const straps = strapsOf(solved(wineCask).hoops);
    expect(straps.map(({ number, spec }) => `${number} ${spec.name}`)).toEqual([
      '1 chime',
      '2 quarter',
      '3 bilge',
    ]);
    expect(straps.map(({ hoops }) => hoops.map(({ end }) => end))).toEqual([
      ['top', 'bottom'],
      ['top', 'bottom'],
      ['top', 'bottom'],
    ]);
  });

  it('of a pair on a tapered tub differ; on a cylinder they are alike', () => {
    const both = [{ ...bucket.hoops[0]!, end: 'both' as const }];
    expect(strapsOf(solved({ ...bucket, hoops: both }).hoops)).toHaveLength(2);
    expect(strapsOf(solved({ ...cylinder, hoops: both }).hoops)).toHaveLength(1);
  });

  it('are none without hoops', () => {
    expect(strapsOf([])).toEqual([]);
    expect(strapsToBuy([])).toEqual([]);
  });
});

describe('mass', () => {
  it('is volume times 7,850 kg per cubic metre', () => {
    const hoop = solved(wineCask).hoops[0]!;
    const cubicMetres = (hoop.cutLength / 1000) * 0.04 * 0.0018;
    expect(hoopMass(hoop)).toBeCloseTo(cubicMetres * 7850, 9);
    expect(hoopMass(hoop)).toBeGreaterThan(1);
  });
});

describe('steel to buy', () => {
  it('is grouped by section, the heaviest first, with 5 % over', () => {
    const { hoops } = solved(wineCask);
    const list = strapsToBuy(hoops);
    expect(list.map(({ width, thickness, pieces }) => [width, thickness, pieces])).toEqual([
      [40, 1.8, 2],
      [35, 1.5, 2],
      [32, 1.5, 2],
    ]);
    const chime = 2 * hoops[0]!.cutLength;
    expect(list[0]!.cutLength).toBeCloseTo(chime, 9);
    expect(list[0]!.length).toBeCloseTo(1.05 * chime, 9);
    const all = hoops.reduce((sum, hoop) => sum + hoopMass(hoop), 0);
    expect(list.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(1.05 * all, 9);
  });

  it('puts hoops of different names and one section together', () => {
    const hoops = wineCask.hoops.map((hoop) => ({ ...hoop, width: 30, thickness: 1.5 }));
    expect(strapsToBuy(solved({ ...wineCask, hoops }).hoops).map(({ pieces }) => pieces)).toEqual([
      6,
    ]);
  });
});
