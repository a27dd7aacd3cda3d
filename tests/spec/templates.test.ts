import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readSpec } from '../../src/spec/read.js';
import type { Spec } from '../../src/spec/spec.js';
import { capacityLitres } from '../../src/capacity/volume.js';
import { solveVessel } from '../../src/vessel/solve.js';

const names = readdirSync('templates').filter((name) => name.endsWith('.yaml'));
const textOf = (name: string) => readFileSync(`templates/${name}`, 'utf8');
const specs = names.map((name) => readSpec(textOf(name)).spec!);
const some = (test: (spec: Spec) => boolean) => expect(specs.some(test)).toBe(true);

describe('the templates', () => {
  it('are the eight that the guide names', () => {
    expect(names).toEqual(
      [
        'bucket',
        'cask-110',
        'keg-10-inches',
        'keg-30',
        'straight-vat',
        'wash-tub',
        'wine-cask-225',
        'wine-cask-228',
      ].map((name) => `${name}.yaml`),
    );
  });

  it.each(names)('%s can be read, and says at its top that it is invented', (name) => {
    expect(readSpec(textOf(name)).issues).toEqual([]);
    expect(textOf(name).split('\n').slice(0, 2).join(' ')).toMatch(/^# .*invented example/);
  });

  it('between them use what a spec can say', () => {
    some(({ outside }) => outside.kind === 'cask' && outside.profile === 'parabola');
    some(({ outside }) => outside.kind === 'cask' && outside.profile === 'ellipse');
    some(({ outside }) => outside.kind === 'tub' && outside.top === outside.bottom);
    some(({ outside }) => outside.kind === 'tub' && outside.top > outside.bottom);
    some(({ staves }) => staves.endThickness < staves.thickness);
    some(({ staves }) => staves.widths !== null);
    some(({ staves }) => staves.ends === 'cut');
    some(({ staves }) => staves.inside === 'flat');
    some(({ staves }) => staves.outside === 'flat');
    some(({ heads }) => heads.bottom.widths !== null);
    some(({ heads }) => heads.top !== null && heads.top.widths?.[0] !== heads.bottom.widths?.[0]);
    some(({ heads }) => heads.bottom.crossGrain !== 0);
    some(({ units }) => units === 'in');
  });
});

describe('what the templates hold', () => {
  it.each(names)('%s can be built, with nothing to warn of', (name) => {
    const solved = solveVessel(readSpec(textOf(name)).spec!);
    expect('issues' in solved ? solved.issues : solved.vessel.warnings).toEqual([]);
  });

  it.each([
    ['wine-cask-225', 225, 0.5],
    ['wine-cask-228', 228, 0.5],
    ['cask-110', 110, 0.5],
    ['keg-30', 30, 0.5],
    ['keg-10-inches', 10, 0.1],
    ['bucket', 12, 0.5],
    ['straight-vat', 640, 2],
  ])('%s: the litres of its name', (name, litres, tolerance) => {
    const solved = solveVessel(readSpec(textOf(`${name}.yaml`)).spec!);
    if (!('vessel' in solved)) throw new Error(name);
    expect(Math.abs(capacityLitres(solved.vessel) - litres)).toBeLessThan(tolerance);
  });

  it('is 225 litres by a sum of our own, too: an arc 27 inside the outer one, between the heads', () => {
    const [half, bilge, ends, thickness] = [470, 340, 285, 27];
    const rise = bilge - ends;
    const radius = (half ** 2 + rise ** 2) / (2 * rise);
    // the groove lies 60 inside the end, the inside face of the head 12 further in
    const top = half - 60 - 12;
    const slices = 20_000;
    let volume = 0;
    for (let i = 0; i < slices; i++) {
      const z = ((i + 0.5) / slices) * top;
      const inside = bilge - radius + Math.sqrt((radius - thickness) ** 2 - z ** 2);
      volume += 2 * Math.PI * inside ** 2 * (top / slices);
    }
    expect(Math.abs(volume / 1e6 - 225)).toBeLessThan(0.5);
  });
});
