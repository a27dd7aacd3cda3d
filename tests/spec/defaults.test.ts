import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Spec } from '../../src/spec/spec.js';
import { bucket, inchKeg, specOf, wineCask, withLine } from './texts.js';

/** Every key of the project's own example vessel, as its design states them. */
const example: Spec = {
  vessel: 'cask',
  title: 'Wine cask',
  units: 'mm',
  height: 945,
  outside: { kind: 'cask', bilge: 678, ends: 572, profile: 'arc' },
  staves: {
    count: 28,
    widths: null,
    thickness: 27,
    endThickness: 27,
    inside: 'hollowed',
    outside: 'rounded',
    neutral: 0.5,
    ends: 'overlong',
    trim: 10,
  },
  chime: { bevel: (40 * Math.PI) / 180, flat: 10 },
  howel: { depth: 2, beyondGroove: 20 },
  heads: { top: exampleHead(), bottom: exampleHead() },
  hoops: [
    { name: 'chime', end: 'both', offset: 3, width: 40, thickness: 1.8, lap: 70 },
    { name: 'quarter', end: 'both', offset: 105, width: 32, thickness: 1.5, lap: 70 },
    { name: 'bilge', end: 'both', offset: 255, width: 35, thickness: 1.5, lap: 70 },
  ],
  bung: { diameter: 50 },
  sheet: { owner: '', number: '', date: '', creator: '', approved: '' },
};

function exampleHead(): Spec['heads']['bottom'] {
  return {
    thickness: 27,
    boards: 6,
    widths: null,
    clearance: 0,
    crossGrain: 0,
    croze: { inset: 60, depth: 5, width: 6 },
    edge: { thickness: 5.5, fromInside: 12, outerBevel: 35, innerBevel: 14 },
    dowels: { diameter: 8, length: 50, spacing: 150, margin: 25 },
  };
}

const cask = (height: number, bilge: number, ends: number, count: number): Spec =>
  specOf(
    `vessel: cask\nunits: mm\nheight: ${height}\nbilge: ${bilge}\nends: ${ends}\nstaves: { count: ${count} }\n`,
  );
const tub = (height: number, top: number, bottom: number, count: number): Spec =>
  specOf(
    `vessel: tub\nunits: mm\nheight: ${height}\ntop: ${top}\nbottom: ${bottom}\nstaves: { count: ${count} }\n`,
  );

describe('the wine cask', () => {
  it('has every default of the example, to the digit', () => {
    expect(specOf(wineCask)).toEqual(example);
  });
  it('has its kind for a title when it has none', () => {
    expect(specOf(wineCask.replace(/title.*\n/, '')).title).toBe('Cask');
    expect(specOf(bucket).title).toBe('Tub');
  });
});

/** Ranges that a cooper would call ordinary (common practice, no source). */
describe('smaller vessels', () => {
  it.each([
    ['keg of 10 litres', cask(340, 255, 218, 16), 15, 16.5],
    ['keg of 30 litres', cask(490, 360, 310, 18), 18, 20],
    ['cask of 110 litres', cask(750, 540, 450, 24), 22, 25],
    ['bucket', tub(280, 300, 260, 16), 16, 18],
  ])('%s: staves of ordinary thickness', (_, spec, least, most) => {
    expect(spec.staves.thickness).toBeGreaterThanOrEqual(least);
    expect(spec.staves.thickness).toBeLessThanOrEqual(most);
    expect(spec.staves.endThickness).toBe(spec.staves.thickness);
  });

  it('have fewer and narrower hoops', () => {
    const keg = cask(340, 255, 218, 16).hoops;
    expect(keg.map(({ name }) => name)).toEqual(['chime', 'bilge']);
    expect(keg[0]!.width).toBeLessThan(26);
    expect(cask(490, 360, 310, 18).hoops).toHaveLength(3);
  });

  it('have a bung in proportion, and within its stave', () => {
    expect(cask(340, 255, 218, 16).bung!.diameter).toBeCloseTo(30.5, 0);
    expect(cask(945, 678, 572, 60).bung!.diameter).toBeLessThan(
      (2 / 3) * ((Math.PI * 678) / 60) + 0.5,
    );
    expect(tub(280, 300, 260, 16).bung).toBeNull();
  });

  it('have hoops at both ends of a tub, and a third when it is tall', () => {
    expect(tub(280, 300, 260, 16).hoops.map(({ end }) => end)).toEqual(['bottom', 'top']);
    expect(tub(800, 600, 560, 30).hoops.map(({ end }) => end)).toEqual(['bottom', 'bottom', 'top']);
  });
});

describe('defaults that follow a given key', () => {
  it('keep the ends as thick as the stave, and the flat within it', () => {
    const { staves, chime, heads } = specOf(
      withLine(wineCask, 'staves: { count: 28, thickness: 9, endThickness: 4 }'),
    );
    expect(staves.endThickness).toBe(4);
    expect(chime.flat).toBeLessThanOrEqual(4);
    expect(heads.bottom.thickness).toBe(9);
  });
  it('keep the land within the groove and the head', () => {
    const { croze, edge } = specOf(
      withLine(wineCask, 'heads: { thickness: 3, croze: { width: 5 } }'),
    ).heads.bottom;
    expect(croze.width).toBe(5);
    expect(edge.thickness).toBeLessThanOrEqual(3);
    expect(edge.fromInside).toBe(edge.thickness / 2);
  });
  it('keep the groove clear of a steep chime', () => {
    const bevelled = specOf(withLine(wineCask, 'chime: { bevelDegrees: 75, flat: 5 }'));
    expect(bevelled.heads.bottom.croze.inset).toBeGreaterThan(
      22 * Math.tan((75 * Math.PI) / 180) + 3,
    );
  });
  it('keep the dowels of neighbouring joints apart', () => {
    expect(
      specOf(withLine(wineCask, 'heads: { boards: 14 }')).heads.bottom.dowels.length,
    ).toBeLessThan(572 / 14);
  });
  it('count the staves of a mixed set', () => {
    const text = withLine(
      wineCask,
      `staves: { widths: [${Array.from({ length: 28 }, () => 76).join(', ')}] }`,
    );
    expect(specOf(text).staves).toMatchObject({ count: 28, thickness: 27 });
    expect(specOf(text).staves.widths).toHaveLength(28);
  });
});

describe('in inches', () => {
  it('defaults are thirty-seconds, and sixty-fourths where that is too coarse', () => {
    const spec = specOf(inchKeg);
    const inWhole = (mm: number, parts: number) =>
      expect((mm / 25.4) * parts).toBeCloseTo(Math.round((mm / 25.4) * parts), 6);
    const { croze, edge, dowels, thickness } = spec.heads.bottom;
    for (const mm of [
      spec.staves.thickness,
      spec.staves.trim,
      spec.chime.flat,
      spec.howel.depth,
      thickness,
      croze.inset,
      croze.depth,
      croze.width,
      edge.outerBevel,
      dowels.length,
      spec.bung!.diameter,
    ])
      inWhole(mm, 32);
    for (const hoop of spec.hoops)
      for (const mm of [hoop.thickness, hoop.lap, hoop.offset, hoop.width]) inWhole(mm, 64);
    inWhole(edge.thickness, 64);
  });
});

describe('any vessel', () => {
  const sizes = fc.record({
    bilge: fc.integer({ min: 60, max: 6000 }),
    share: fc.double({ min: 0.5, max: 0.999, noNaN: true }),
    slender: fc.double({ min: 0.25, max: 3, noNaN: true }),
    count: fc.integer({ min: 6, max: 80 }),
    units: fc.constantFrom('mm', 'in'),
    tub: fc.boolean(),
  });
  it('gets defaults that hold together by the rules of a spec', () => {
    fc.assert(
      fc.property(sizes, ({ bilge, share, slender, count, units, tub: isTub }) => {
        const height = Math.min(5000, slender * bilge);
        const write = (mm: number): number => Math.max(mm, 50.01) / (units === 'in' ? 25.4 : 1);
        const diameters = isTub
          ? `top: ${write(bilge)}\nbottom: ${write(bilge * share)}`
          : `bilge: ${write(bilge)}\nends: ${write(Math.min(bilge - 1, bilge * share))}`;
        const spec = specOf(
          `vessel: ${isTub ? 'tub' : 'cask'}\nunits: ${units}\nheight: ${write(height)}\n${diameters}\nstaves: { count: ${count} }\n`,
        );
        const { edge, croze } = spec.heads.bottom;
        expect(edge.thickness).toBeLessThanOrEqual(croze.width + 1e-9);
        expect(edge.outerBevel).toBeLessThan((bilge * share) / 4 + 9);
        expect(JSON.stringify(spec)).not.toMatch(/NaN|Infinity/);
      }),
      { seed: 3, numRuns: 1000 },
    );
  });
});
