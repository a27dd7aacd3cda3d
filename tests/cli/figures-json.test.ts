import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { figuresSchema, schemaText } from '../../scripts/make-figures-schema.js';
import { figuresJson, type FiguresFile } from '../../src/cli/figures-json.js';
import { figuresOf, planVessel } from '../../src/index.js';
import { bucket, root, Workshop } from './workshop.js';

const schemaFile = readFileSync(join(root, 'schemas/figures.schema.json'), 'utf8');
const templates = readdirSync(join(root, 'templates')).filter((name) => name.endsWith('.yaml'));

async function figuresFile(text: string): Promise<FiguresFile> {
  const { code, out } = await new Workshop({ 'spec.yaml': text }).run([
    'figures',
    'spec.yaml',
    '--json',
  ]);
  expect(code).toBe(0);
  return JSON.parse(out) as FiguresFile;
}

test('the schema in the package is up to date (npm run schemas)', async () => {
  expect(schemaFile).toBe(await schemaText());
});

describe('figures of every template keep to the schema', () => {
  // read back from the file, so that what is tested is what ships
  const shipped = z.fromJSONSchema(
    JSON.parse(schemaFile) as Parameters<typeof z.fromJSONSchema>[0],
  );

  test.each(templates)('%s', async (name) => {
    const figures = await figuresFile(readFileSync(join(root, 'templates', name), 'utf8'));
    expect(shipped.safeParse(figures).error).toBeUndefined();
    expect(figuresSchema.safeParse(figures).error).toBeUndefined();
    expect(shipped.safeParse({ ...figures, odd: 1 }).success).toBe(false);
    expect(shipped.safeParse({ ...figures, capacityLitres: '9' }).success).toBe(false);
  });
});

test('mixed sets keep to the schema as well', async () => {
  const widths = Array.from({ length: 16 }, (_, i) => 55 + (i % 5)).join(', ');
  const figures = await figuresFile(bucket.replace('count: 16', `widths: [${widths}]`));
  expect(figuresSchema.safeParse(figures).error).toBeUndefined();
  expect(figures.staves).toHaveLength(16);
});

test('lengths are mm whatever the spec’s units, to a nanometre', async () => {
  const inches = `vessel: cask\nunits: in\nheight: 20\nbilge: 16\nends: 14\nstaves: { count: 20 }\n`;
  const { stave } = await figuresFile(inches);
  expect(stave.outerLength / 25.4).toBeCloseTo(20, 0);
  expect(stave.outerLength).toBe(Number(stave.outerLength.toFixed(6)));
});

test('warnings are in words, with their code and key', async () => {
  const ten = bucket.replace(
    '{ count: 16, thickness: 16 }',
    '{ count: 10, thickness: 16, inside: flat }',
  );
  const { warnings } = await figuresFile(ten);
  expect(warnings.length).toBeGreaterThan(0);
  for (const warning of warnings) expect(Object.keys(warning)).toEqual(['code', 'key', 'text']);
});

test('a number that is none is a failure of ours, not a null', () => {
  const figures = figuresOf(planVessel(bucket, 'x').vessel!);
  expect(() => figuresJson({ ...figures, capacityLitres: NaN }, [])).toThrow(/no number/);
});
