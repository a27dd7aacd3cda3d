/** Tests the bench itself, on drawings made here by another route, before it judges the product. */
import { describe, expect, test } from 'vitest';
import type { BenchSpec } from './bench-spec.js';
import { closingDiameter, ringOf } from './bench-spec.js';
import { exactGroove, exactLitres, exactStave } from './exact.js';
import { randomSpec } from './generate.js';
import { judge } from './judge.js';
import type { Work } from './judge.js';
import * as spoil from './mutate-dxf.js';
import { namedSpecs, wineCask } from './named-specs.js';
import { gauss } from './quadrature.js';
import { circleCorners, dxfText, syntheticStave } from './synthetic.js';
import { describe as inWords } from './verdict.js';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

describe('the bench reproduces what it should already know', () => {
  const alpha = Math.PI / 28;
  const stave = exactStave(wineCask, alpha);

  test('quadrature is exact for polynomials of degree 11', () => {
    expect(gauss((x) => x ** 11 + x ** 10, 0, 1)).toBeCloseTo(1 / 12 + 1 / 11, 14);
  });

  test('the arc of a cask has a closed form for its station', () => {
    // neutral line of radius rho - t/2, turned by asin(z / rho)
    const rho = (472.5 ** 2 + 53 ** 2) / 106;
    const turned = Math.asin(472.5 / rho);
    expect(stave.outerEnd.top).toBeCloseTo((rho - 13.5) * turned, 9);
  });

  test('blank thickness by bisection is the closed form, on casks and on leaning tubs', () => {
    for (const spec of namedSpecs.filter((s) => s.staves.inside === 'hollowed')) {
      const { alphas, scale } = ringOf(spec);
      const a = alphas[0] ?? 0;
      const exact = exactStave(spec, a);
      const widest = spec.vessel === 'cask' ? spec.bilge : Math.max(spec.top, spec.bottom);
      const wide = (scale * widest) / 2;
      const phi =
        spec.vessel === 'cask' ? 0 : Math.atan((spec.bottom - spec.top) / 2 / spec.height);
      const above = wide * (1 - Math.cos(a)) * Math.cos(phi) + spec.staves.thickness * Math.cos(a);
      const below = Math.cos(phi) ** 2 + Math.cos(a) * Math.sin(phi) ** 2;
      expect(exact.blankThickness).toBeCloseTo(above / below, 9);
    }
  });

  test('the example cask, to the digits given for it', () => {
    const end = stave.bend.sectionAt(472.5);
    const { top, bottom } = stave.outerEnd;
    expect(top - bottom).toBeCloseTo(946.9, 1);
    expect(stave.innerEnd.top - stave.innerEnd.bottom).toBeCloseTo(960.1, 1);
    expect(stave.blankThickness).toBeCloseTo(29.0, 1);
    expect(2 * stave.halfWidth(0, 'outer')).toBeCloseTo(76.4, 1);
    expect(2 * stave.halfWidth(top, 'outer')).toBeCloseTo(64.4, 1);
    expect(degrees(Math.atan((stave.innerEnd.top - top) / stave.blankThickness))).toBeCloseTo(
      12.9,
      1,
    );
    expect(degrees(Math.atan(Math.tan(alpha) * end.cos))).toBeCloseTo(6.27, 2);
    expect(exactGroove(wineCask, 'top').head).toBeCloseTo(556.4, 1);
    expect(exactLitres(wineCask)).toBeCloseTo(225.7, 1);
  });

  test('a cone of staves holds what mensuration says', () => {
    const spec = namedSpecs.find((s) => s.name === 'tub leaning 25 degrees') as BenchSpec;
    const lean = Math.atan((spec.bottom - spec.top) / 2 / spec.height);
    const low = -150 + 60 + 12;
    const insideAt = (z: number): number =>
      (spec.top + spec.bottom) / 4 - Math.tan(lean) * z - 27 / Math.cos(lean);
    const [a, b, h] = [insideAt(low), insideAt(150), 150 - low];
    expect(exactLitres(spec)).toBeCloseTo(((Math.PI * h) / 3) * (a * a + a * b + b * b) * 1e-6, 9);
  });

  test('equal widths close where equal staves do', () => {
    const widths = Array.from({ length: 28 }, () => 2 * 339 * Math.tan(alpha));
    expect(closingDiameter(widths)).toBeCloseTo(678, 9);
  });
});

function trueWork(spec: BenchSpec, arcsPerEdge = 48): Work {
  const { alphas } = ringOf(spec);
  const drawn = (alpha: number): string =>
    syntheticStave(spec, alpha, exactStave(spec, alpha).blankThickness, arcsPerEdge);
  const texts = new Map([...new Set(alphas)].map((alpha) => [alpha, drawn(alpha)]));
  const head = (end: 'top' | 'bottom'): string =>
    dxfText({ outline: circleCorners(exactGroove(spec, end).head / 2) });
  return {
    staves: alphas.map((alpha) => texts.get(alpha) ?? ''),
    heads: { top: spec.vessel === 'cask' ? head('top') : null, bottom: head('bottom') },
    litres: exactLitres(spec),
  };
}

const reasons = (spec: BenchSpec, work: Work): string[] =>
  judge(spec, work).complaints.map((c) => c.check);

describe('the bench accepts true work', () => {
  const random = Array.from({ length: 12 }, (_, i) => randomSpec(9000 + i)).filter(
    (spec) => spec.staves.widths.length === 0,
  );
  // the heads drawn here are circles
  const round = namedSpecs.filter((spec) => spec.heads.crossGrain === 0);
  test.each([...round, ...random].map((spec) => ({ name: spec.name, spec })))(
    '$name',
    ({ spec }) => {
      expect(judge(spec, trueWork(spec)).complaints.map(inWords)).toEqual([]);
    },
  );
});

describe('the bench rejects spoilt work, for the right reason', () => {
  const work = trueWork(wineCask, 12);
  const spoilt = (change: (text: string) => string): string[] =>
    reasons(wineCask, { ...work, staves: work.staves.map(change) });
  const spoiltHead = (change: (text: string) => string): string[] =>
    reasons(wineCask, {
      ...work,
      heads: { top: work.heads.top, bottom: change(work.heads.bottom) },
    });

  test('one edge of the outer face moved by 0.1 mm', () => {
    const found = spoilt((text) => spoil.edgeMoved(text, 'outline', 0.1));
    expect(found).toEqual(expect.arrayContaining(['outline edge', 'joint gap']));
    expect(found).not.toContain('hidden edge');
  });

  test('one edge of the inner face moved by 0.03 mm', () => {
    const found = spoilt((text) => spoil.edgeMoved(text, 'hidden', 0.03));
    expect(found).toEqual(expect.arrayContaining(['hidden edge', 'joint gap']));
    expect(found).not.toContain('girth');
  });

  test('an edge moved by 0.005 mm passes: the bench does not cry wolf', () => {
    expect(spoilt((text) => spoil.edgeMoved(text, 'outline', 0.005))).toEqual([]);
  });

  test('scaled by 25.4, and by its inverse', () => {
    for (const factor of [25.4, 1 / 25.4])
      expect(spoilt((text) => spoil.scaled(text, factor))).toContain('outer face length');
  });

  test('marked as inches', () => {
    expect(spoilt((text) => spoil.unitChanged(text, 1))).toEqual(['unit of the file']);
  });

  test('stretched by 0.03 mm in length', () => {
    const found = spoilt((text) => spoil.stretched(text, 'outline', 1 + 0.03 / 473));
    expect(found).toEqual(expect.arrayContaining(['outer face length', 'end plane at the faces']));
  });

  test('an arc replaced by its chord', () => {
    expect(spoilt((text) => spoil.arcFlattened(text, 'outline'))).toContain('outline edge');
    expect(spoilt((text) => spoil.arcFlattened(text, 'hidden'))).toContain('hidden edge');
  });

  test('arcs turned inside out', () => {
    expect(spoilt((text) => spoil.arcsReversed(text, 'outline'))).toContain('outline edge');
  });

  test('faces swapped', () => {
    const found = spoilt((text) => spoil.layersSwapped(text, 'outline', 'hidden'));
    expect(found).toContain('outer face length');
    expect(found).toContain('inner face length');
  });

  test('a curve left open, drawn twice, or missing', () => {
    const reason = 'one closed curve on outline';
    expect(spoilt((text) => spoil.opened(text, 'outline'))).toContain(reason);
    expect(spoilt((text) => spoil.doubled(text, 'outline'))).toContain(reason);
    expect(spoilt((text) => spoil.layerEmptied(text, 'outline'))).toContain(reason);
  });

  test('no line to cut to on an overlong stave', () => {
    const overlong = namedSpecs.find((s) => s.name === 'wine cask left overlong') as BenchSpec;
    const good = trueWork(overlong);
    const bare = good.staves.map((text) => spoil.layerEmptied(text, 'station'));
    expect(reasons(overlong, { ...good, staves: bare })).toEqual(['finished end on station']);
  });

  test('a head 0.04 mm too wide in radius, or with a flat in its rim', () => {
    const wide = spoiltHead((text) => spoil.scaled(text, 1 + 0.04 / 278));
    expect(wide).toEqual(expect.arrayContaining(['head rim in its groove', 'head diameter']));
    expect(spoiltHead((text) => spoil.arcFlattened(text, 'outline'))).toContain(
      'head rim in its groove',
    );
  });

  test('litres 0.2 % out', () => {
    expect(reasons(wineCask, { ...work, litres: work.litres * 1.002 })).toEqual(['capacity']);
  });
});
