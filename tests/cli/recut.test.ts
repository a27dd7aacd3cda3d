import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { planVessel } from '../../src/index.js';
import { bucket, root, Workshop } from './workshop.js';

const wine = readFileSync(join(root, 'templates/wine-cask-225.yaml'), 'utf8');
const keg = readFileSync(join(root, 'templates/keg-10-inches.yaml'), 'utf8');
const files = { 'wine.yaml': wine, 'keg.yaml': keg, 'bucket.yaml': bucket };

test('writes the spec of what is left, with old and new capacity, head and grooves', async () => {
  const shop = new Workshop(files);
  const argv = ['recut', 'wine.yaml', '--shorten', '15', '--shave', '2', '--out', 'new.yaml'];
  const { code, out, err } = await shop.run(argv);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const { vessel } = planVessel(shop.read('new.yaml'), 'new.yaml');
  expect(vessel!.spec.height).toBe(910);
  expect(vessel!.spec.staves.thickness).toBe(25);
  expect(out).toMatch(/capacity 225\.1 litres -> 218\.0 litres/);
  expect(out).toMatch(/head +\d+\.\d mm -> \d+\.\d mm/);
  expect(out).toMatch(/0\.00 mm at most/);
  expect(out).toContain('old groove, top: stays in the chime, its middle 45.0 mm');
});

test('a tub, at its rim, to standard output', async () => {
  const { code, out, err } = await new Workshop(files).run(['recut', 'bucket.yaml', '--rim', '12']);
  expect(code).toBe(0);
  expect(planVessel(out, 'x').vessel!.spec.height).toBe(278);
  expect(err).toContain('old groove, bottom: stays in use');
});

test('inches', async () => {
  const { code, out } = await new Workshop(files).run(['recut', 'keg.yaml', '--shorten', '1/2']);
  expect(code).toBe(0);
  expect(out).toContain('height: 12 1/2\n');
});

test('what cannot be built: exit 1, with the reason, and nothing written', async () => {
  const shop = new Workshop(files);
  const { code, out, err } = await shop.run([
    'recut',
    'wine.yaml',
    '--shave',
    '20',
    '--out',
    'new.yaml',
  ]);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toMatch(/chime\.flat: .*thick/);
  expect(shop.files()).not.toContain('new.yaml');
});

test.each([
  [['wine.yaml'], /say what to take off/],
  [['wine.yaml', '--shorten', '0'], /say what to take off/],
  [['wine.yaml', '--shorten', '-5'], /no length/],
  [['wine.yaml', '--shorten', '470'], /nothing would be left/],
  [['wine.yaml', '--shave', '27'], /nothing would be left/],
  [['wine.yaml', '--rim', '5'], /for tubs/],
  [['bucket.yaml', '--shorten', '1/2'], /no length in mm/],
])('bad input: %j', async (argv, reason) => {
  const { code, out, err } = await new Workshop(files).run(['recut', ...argv]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toMatch(reason);
});
