import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { capacityLitres, planVessel } from '../../src/index.js';
import { bucket, root, Workshop } from './workshop.js';

const wine = readFileSync(join(root, 'templates/wine-cask-225.yaml'), 'utf8');
const keg = readFileSync(join(root, 'templates/keg-10-inches.yaml'), 'utf8');
const files = { 'wine.yaml': wine, 'keg.yaml': keg, 'bucket.yaml': bucket };

interface File {
  posture: string;
  rows: { dip: number; litres: number; oldRule: number | null; oldRuleError: number | null }[];
}

async function json(...argv: string[]): Promise<File> {
  const { code, out, err } = await new Workshop(files).run(['dip', ...argv, '--json']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return JSON.parse(out) as File;
}

test('--json: posture and rows in mm, from nothing to full', async () => {
  const { posture, rows } = await json('wine.yaml');
  expect(posture).toBe('lying');
  expect(rows.slice(0, 3).map(({ dip }) => dip)).toEqual([0, 10, 20]);
  expect(rows.at(-1)!.dip).toBe(626);
  const { vessel } = planVessel(wine, 'x');
  expect(rows.at(-1)!.litres).toBeCloseTo(capacityLitres(vessel!), 5);
});

test('a tub stands, a cask can', async () => {
  expect((await json('bucket.yaml')).posture).toBe('standing');
  const { posture, rows } = await json('wine.yaml', '--posture', 'standing', '--step', '2.5');
  expect(posture).toBe('standing');
  expect(rows[1]!.dip).toBe(2.5);
});

test('inches: half an inch unless told otherwise', async () => {
  expect((await json('keg.yaml')).rows[1]!.dip).toBe(12.7);
  expect((await json('keg.yaml', '--step', '1/4')).rows[1]!.dip).toBe(6.35);
  const { out } = await new Workshop(files).run(['dip', 'keg.yaml']);
  expect(out).toMatch(/dip in +litres +US gallons/);
});

test('for people: the old rule beside the litres, and its error', async () => {
  const { code, out } = await new Workshop(files).run(['dip', 'wine.yaml', '--step', '50']);
  expect(code).toBe(0);
  expect(out).toContain('lying, bung up');
  expect(out).toMatch(/^ +200\.0 +59\.\d +61\.\d +\+1\.\d$/m);
  expect(out).toMatch(/^ +600\.0 +22\d\.\d +- +-$/m);
});

test('--csv: a heading with units, numbers only', async () => {
  const { out } = await new Workshop(files).run(['dip', 'bucket.yaml', '--csv']);
  const [heading, ...lines] = out.trimEnd().split('\r\n');
  expect(heading).toBe('dip_mm,litres,old_rule_litres,old_rule_error_litres');
  for (const line of lines)
    expect(line).toMatch(/^\d+(\.\d+)?,\d+\.\d{3},(\d+\.\d{3})?,(-?\d+\.\d{3})?$/);
});

test.each([
  [['wine.yaml', '--step', '0'], /--step: "0" is no length in mm/],
  [['wine.yaml', '--step', '-5'], /no length/],
  [['wine.yaml', '--step', '0.01'], /more than 5000 rows/],
  [['wine.yaml', '--posture', 'laying'], /lying/],
  [['wine.yaml', '--json', '--csv'], /not both/],
  [['missing.yaml'], /no such file/],
])('bad input: %j', async (argv, reason) => {
  const { code, out, err } = await new Workshop(files).run(['dip', ...argv]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toMatch(reason);
});
