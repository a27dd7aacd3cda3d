import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readSpec } from '../../src/spec/read.js';
import type { Spec } from '../../src/spec/spec.js';

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
