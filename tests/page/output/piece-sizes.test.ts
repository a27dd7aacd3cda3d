/** Sizes that are typed for the fan and the plank: what they come to is what the command makes of the same sizes. */
import { describe, expect, it } from 'vitest';
import { packVessel, planVessel, type Spec } from '../../../src/index.js';
import { readFan, readPlank } from '../../../src/page/output/piece-sizes.js';
import { bucket, Workshop } from '../../cli/workshop.js';

const inInches = 'vessel: tub\nunits: in\nheight: 12\ntop: 12\nbottom: 10\nstaves: { count: 16 }\n';
const specOf = (text: string): Spec => planVessel(text, 'test.yaml').vessel!.spec;
const mm = specOf(bucket);
const inches = specOf(inInches);

describe('empty boxes', () => {
  it('leave it as usual', () => {
    expect(readFan(['', ' '], mm)).toEqual({ value: null });
    expect(readPlank(['', ''], mm)).toEqual({ value: null });
  });

  it('beside a full one are asked for', () => {
    expect(readFan(['', '60'], mm)).toEqual({ problem: 'one-alone', box: 0 });
    expect(readPlank(['2000', ''], mm)).toEqual({ problem: 'one-alone', box: 1 });
  });
});

describe('the fan', () => {
  it('is read in the units of the spec, and in any way that a length is written', () => {
    expect(readFan(['40', '62,5'], mm)).toEqual({ value: { from: 40, to: 62.5 } });
    expect(readFan(['1 1/2', '2.5'], inches)).toEqual({ value: { from: 38.1, to: 63.5 } });
    expect(readFan(['4 cm', '2 1/2'], mm)).toEqual({ value: { from: 40, to: 63.5 } });
  });

  it.each([
    ['0', '60', 'not-above-0', 0],
    ['-5', '60', 'not-above-0', 0],
    ['60', '40', 'fan-order', 1],
    ['60', '150.1', 'fan-too-wide', 1],
    ['40', 'wide', 'not-a-length', 1],
    ['1,250', '60', 'two-readings', 0],
    ['2/0', '60', 'odd-fraction', 0],
  ] as const)('from %s to %s: %s', (from, to, problem, box) => {
    expect(readFan([from, to], mm)).toEqual({ problem, box });
  });

  it('goes up to half of the diameter, and to 60 steps', () => {
    expect(readFan(['60', '150'], mm)).toHaveProperty('value');
    const vat = specOf(
      'vessel: tub\nunits: mm\nheight: 900\ntop: 2000\nbottom: 1900\nstaves: { count: 40 }\n',
    );
    expect(readFan(['100', '400'], vat)).toHaveProperty('value');
    expect(readFan(['100', '401'], vat)).toEqual({ problem: 'fan-too-many', box: 1 });
  });
});

describe('the plank', () => {
  it('lies with its grain across the drawing', () => {
    expect(readPlank(['2000', '250'], mm)).toEqual({ value: { width: 2000, height: 250 } });
    expect(readPlank(['96', '7 1/4'], inches)).toEqual({
      value: { width: 2438.4, height: 184.15 },
    });
  });

  it.each([
    ['0', '250', 'not-above-0', 0],
    ['2000', '0', 'not-above-0', 1],
    ['20001', '250', 'plank-too-large', 0],
    ['2000', '20001', 'plank-too-large', 1],
    ['2000', '25 0 x', 'not-a-length', 1],
  ] as const)('of %s by %s: %s', (length, width, problem, box) => {
    expect(readPlank([length, width], mm)).toEqual({ problem, box });
  });
});

describe.each([
  ['bucket.yaml', bucket, ['40', '60'], ['1250', '150']],
  ['inches.yaml', inInches, ['1.5', '2.75'], ['40', '7.25']],
] as const)('%s', (name, text, fanTyped, plankTyped) => {
  it('gives the very bytes that draw --fan and --plank write', async () => {
    const workshop = new Workshop({ [name]: text });
    const pieces = ['stave-fan', 'joint-gauge', 'listing-jig', 'head-router'];
    const options = ['--formats', 'svg,dxf', '--pieces', pieces.join(',')];
    const sizes = ['--fan', fanTyped.join('-'), '--plank', plankTyped.join('x')];
    const { code, err } = await workshop.run([
      'draw',
      name,
      '--out',
      'drawn',
      ...options,
      ...sizes,
    ]);
    expect([code, err]).toEqual([0, expect.any(String)]);
    const vessel = planVessel(text, name).vessel!;
    const [fan, sheet] = [readFan(fanTyped, vessel.spec), readPlank(plankTyped, vessel.spec)];
    if ('problem' in fan || 'problem' in sheet) throw new Error('refused');
    const pack = await packVessel(vessel, {
      formats: ['svg', 'dxf'],
      pieces,
      fan: fan.value!,
      router: { sheet: sheet.value! },
    });
    const drawn = workshop.files().filter((file) => file.startsWith('drawn/'));
    expect(drawn).toEqual(pack.map((file) => `drawn/${file.name}`).sort());
    for (const file of pack) expect(workshop.read('drawn', file.name)).toBe(file.content);
    const usual = await packVessel(vessel, { formats: ['dxf'], pieces });
    const differ = usual.filter((file) => workshop.read('drawn', file.name) !== file.content);
    expect(differ.map((file) => file.name)).toEqual(
      expect.arrayContaining(['stave-fan.dxf', 'head-router-1.dxf']),
    );
  });
});
