import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { figuresOf, planVessel } from '../../src/index.js';
import { bucket, root, Workshop } from './workshop.js';

const wine = readFileSync(join(root, 'templates/wine-cask-225.yaml'), 'utf8');
const keg = readFileSync(join(root, 'templates/keg-10-inches.yaml'), 'utf8');

test('for people: sections in order, in the units of the spec', async () => {
  const { code, out, err } = await new Workshop({ 'wine.yaml': wine }).run([
    'figures',
    'wine.yaml',
  ]);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const headings = out.split('\n').filter((line) => /^\S/.test(line));
  expect(headings.slice(1)).toEqual([
    'cask, lengths in mm',
    'Capacity',
    'Staves',
    'Heads, top and bottom alike',
    'Hoops, girths at the edge near the end and the far one',
    'Small errors and what they do, mm and litres',
  ]);
  expect(out).toMatch(/between the heads +22\d\.\d litres/);
  expect(out).toMatch(/may be off +±2\.\d\d litres: OIML R 138:2007/);
  expect(out).toMatch(/full with water +2\d\d\.\d\d kg/);
  expect(out).toMatch(/joint bevel, bilge +\d\.\d\d° \(\d+\.\d\d mm per 100 mm\)/);
});

test('the numbers are the model’s', async () => {
  const { vessel } = planVessel(bucket, 'bucket.yaml');
  const { capacityLitres, stave, heads } = figuresOf(vessel!);
  const { out } = await new Workshop().run(['figures', 'bucket.yaml']);
  expect(out).toContain(`${capacityLitres.toFixed(1)} litres`);
  expect(out).toContain(`${stave.bilgeWidth.toFixed(1)} mm`);
  expect(out).toContain(`${heads.bottom.diameter.toFixed(1)} mm`);
  const tilt = (stave.bladeTiltDegrees ?? NaN).toFixed(2);
  expect(out).toMatch(new RegExp(`saw blade tilts +${tilt}°`));
});

test('a tub has a bottom and no bilge', async () => {
  const { out } = await new Workshop().run(['figures', 'bucket.yaml']);
  expect(out).toContain('Bottom\n');
  expect(out).not.toMatch(/Heads|bilge,|Top head/);
  expect(out).toContain('from the bottom to the rim');
});

test('inches: decimals with the nearest 1/32, gallons and pounds', async () => {
  const { out } = await new Workshop({ 'keg.yaml': keg }).run(['figures', 'keg.yaml']);
  expect(out).toContain('lengths in inches, with the nearest 1/32 in brackets');
  expect(out).toMatch(/blank thickness +\d\.\d{3} in \(\d*( ?\d+\/(2|4|8|16|32))?\)/);
  expect(out).toMatch(/US gallons \(\d+\.\d litres\)/);
  expect(out).toMatch(/\d lb$/m);
  expect(out).toMatch(/mm per 100 mm/);
  expect(out).not.toMatch(/\d mm$/m);
});

test('a mixed set lists each stave and the diameter it closes at', async () => {
  const mixed = bucket.replace(
    'count: 16',
    `widths: [${Array.from({ length: 16 }, (_, i) => 55 + (i % 5)).join(', ')}]`,
  );
  const { code, out } = await new Workshop({ 'mixed.yaml': mixed }).run(['figures', 'mixed.yaml']);
  expect(code).toBe(0);
  expect(out).toMatch(/close at a diameter of +\d+\.\d mm/);
  expect(out).toContain('Each stave, in the order round the ring');
  expect(out).toContain('One stave, of the mean width');
});

test('a title is text and nothing else', async () => {
  const title = bucket.replace('title: Bucket', 'title: "<b>Odd</b> & ../../x %s"');
  const { out } = await new Workshop({ 'odd.yaml': title }).run(['figures', 'odd.yaml']);
  expect(out.split('\n')[0]).toBe('<b>Odd</b> & ../../x %s');
});

test('columns of a table end at the same place', async () => {
  const { out } = await new Workshop({ 'wine.yaml': wine }).run(['figures', 'wine.yaml']);
  const lines = out.split('\n');
  const start = lines.findIndex((line) => line.includes('station mm'));
  const table = lines.slice(start, lines.indexOf('', start));
  expect(table.length).toBeGreaterThan(5);
  expect(new Set(table.map((line) => line.length)).size).toBe(1);
});
