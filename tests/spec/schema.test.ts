import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { specSchemaText } from '../../scripts/make-spec-schema.js';

interface Schema {
  definitions: Record<
    string,
    { properties: Record<string, Record<string, unknown>>; required: string[] }
  >;
}

describe('schemas/spec.schema.json', () => {
  const file = readFileSync('schemas/spec.schema.json', 'utf8');
  const { definitions } = JSON.parse(file) as Schema;

  it('is up to date: else run `npx tsx scripts/make-spec-schema.ts`', async () => {
    expect(file).toBe(await specSchemaText());
  });

  it('asks for what has no default', () => {
    expect(definitions['cask-mm']!.required).toEqual([
      'vessel',
      'units',
      'height',
      'bilge',
      'ends',
      'staves',
    ]);
    expect(definitions['tub-in']!.required).toEqual([
      'vessel',
      'units',
      'height',
      'top',
      'bottom',
      'staves',
    ]);
  });

  it('describes every key', () => {
    expect(undescribed(definitions)).toEqual([]);
  });

  it('knows limits in millimetres, and fractions in inches', () => {
    expect(definitions['cask-mm']!.properties['height']).toMatchObject({
      type: 'number',
      minimum: 50,
      maximum: 5000,
    });
    expect(definitions['cask-in']!.properties['height']).toMatchObject({
      anyOf: [{ type: 'number' }, { type: 'string' }],
    });
  });
});

/** The keys, at any depth, that an editor would have nothing to say of. */
function undescribed(definitions: Schema['definitions']): string[] {
  const missing: string[] = [];
  const follow = (node: unknown): string =>
    JSON.stringify(node, (key, value: unknown) =>
      key === '$ref' ? follow(definitions[String(value).replace('#/definitions/', '')]) : value,
    );
  const walk = (node: unknown, place: string): void => {
    if (typeof node !== 'object' || node === null) return;
    const { properties } = node as { properties?: Record<string, unknown> };
    for (const [key, child] of Object.entries(properties ?? {})) {
      if (!follow(child).includes('description')) missing.push(`${place}.${key}`);
    }
    for (const [key, child] of Object.entries(node)) walk(child, `${place}.${key}`);
  };
  walk(definitions, '');
  return missing;
}
