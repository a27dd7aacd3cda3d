import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { capacityLitres, planVessel } from '../../src/index.js';
import { bucket, root, Workshop } from './workshop.js';

const wine = readFileSync(join(root, 'templates/wine-cask-225.yaml'), 'utf8');
const keg = readFileSync(join(root, 'templates/keg-10-inches.yaml'), 'utf8');
const files = { 'wine.yaml': wine, 'keg.yaml': keg, 'bucket.yaml': bucket };

const litresIn = (text: string): number => capacityLitres(planVessel(text, 'x').vessel!);

test('writes a whole spec that holds what was wanted, and says what it changed', async () => {
  const shop = new Workshop(files);
  const { code, out, err } = await shop.run([
    'size',
    'wine.yaml',
    '--litres',
    '228',
    '--keep',
    'heads',
    '--out',
    'new.yaml',
  ]);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(Math.abs(litresIn(shop.read('new.yaml')) / 228 - 1)).toBeLessThan(1e-4);
  expect(out).toMatch(/capacity 225\.\d\d litres -> 228\.00 litres/);
  expect(out).toMatch(/height +940\.00 mm +-> +950\.\d\d mm/);
  expect(out).toContain('the title stays: Wine cask, 225 litres');
  expect(out).toContain('whole 5 mm');
  expect(out).toContain('wrote new.yaml');
});

test('without --out: the spec alone on standard output, the report beside it', async () => {
  const { code, out, err } = await new Workshop(files).run(['size', 'keg.yaml', '--litres', '11']);
  expect(code).toBe(0);
  expect(Math.abs(litresIn(out) / 11 - 1)).toBeLessThan(1e-4);
  expect(err).toContain('whole 1/4 in');
  const quiet = await new Workshop(files).run(['size', 'keg.yaml', '--litres', '11', '--quiet']);
  expect(quiet).toEqual({ code: 0, out, err: '' });
});

test('a stave length, in the units of the spec', async () => {
  const shop = new Workshop(files);
  const argv = ['size', 'keg.yaml', '--litres', '10', '--stave-length', '14 1/4'];
  const { out } = await shop.run([...argv, '--quiet']);
  shop.write('sized.yaml', out);
  const { stave } = JSON.parse((await shop.run(['figures', 'sized.yaml', '--json'])).out) as {
    stave: { outerLength: number };
  };
  expect(Math.abs(stave.outerLength - 14.25 * 25.4)).toBeLessThan(0.02);
});

test('never writes over a file unasked', async () => {
  const shop = new Workshop({ ...files, 'new.yaml': 'precious' });
  const argv = ['size', 'bucket.yaml', '--litres', '10', '--out', 'new.yaml'];
  const { code, err } = await shop.run(argv);
  expect(code).toBe(2);
  expect(err).toContain('--replace');
  expect(shop.read('new.yaml')).toBe('precious');
  expect((await shop.run([...argv, '--replace'])).code).toBe(0);
  expect(litresIn(shop.read('new.yaml'))).toBeCloseTo(10, 2);
});

describe('what cannot be reached: exit 1, with the reason, and nothing written', () => {
  test.each([
    ['these heads allow no less', ['--litres', '5', '--keep', 'heads'], /no nearer than about \d/],
    ['the bung is wider than a stave', ['--litres', '20'], /bung\.diameter: .*wide/],
    [
      'staves of that length bend no further',
      ['--litres', '500', '--keep', 'heads', '--stave-length', '940'],
      /keeping heads and this stave length, 500 litres cannot be reached/,
    ],
  ])('%s', async (_name, options, reason) => {
    const shop = new Workshop(files);
    const { code, out, err } = await shop.run([
      'size',
      'wine.yaml',
      ...options,
      '--out',
      'new.yaml',
    ]);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toMatch(reason);
    expect(shop.files()).not.toContain('new.yaml');
  });
});

test.each([
  [['wine.yaml'], /--litres/],
  [['wine.yaml', '--litres', 'many'], /above 0/],
  [['wine.yaml', '--litres', '0'], /above 0/],
  [['wine.yaml', '--litres', '225', '--keep', 'head'], /heads/],
  [['wine.yaml', '--litres', '225', '--stave-length', '37 3/8'], /no length in mm/],
  [['keg.yaml', '--litres', '10', '--stave-length', 'long'], /no length in in/],
  [['wine.yaml', '--litres', '225', '--keep', 'height', '--stave-length', '950'], /settles/],
  [['missing.yaml', '--litres', '225'], /no such file/],
])('bad input: %j', async (argv, reason) => {
  const { code, out, err } = await new Workshop(files).run(['size', ...argv]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toMatch(reason);
});
