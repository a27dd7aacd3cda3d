/**
 * Makes schemas/spec.schema.json, by which editors complete and check a spec, from the same table of keys that reads one.
 * Run with `npx tsx scripts/make-spec-schema.ts`; a test fails when the file is out of date.
 */
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { format } from 'prettier';
import * as z from 'zod/mini';
import { forEditors } from '../src/spec/fields.js';
import { fileSchema, type Kind } from '../src/spec/file-schema.js';
import type { Units } from '../src/spec/spec.js';

type Json = Record<string, unknown>;

const path = new URL('../schemas/spec.schema.json', import.meta.url);
const kinds: readonly Kind[] = ['cask', 'tub'];
const units: readonly Units[] = ['mm', 'in'];

/** A cask and a tub have other keys, and inches other limits: which of the four applies, the first lines of a file say. */
function specSchema(): Json {
  const variants = kinds.flatMap((kind) => units.map((unit) => ({ kind, unit })));
  const { anyOf, definitions } = asJson(variants.map(({ kind, unit }) => fileSchema(unit, kind)));
  const named = variants.map(({ kind, unit }, i) => [`${kind}-${unit}`, withStaves(anyOf[i]!)]);
  return {
    $schema: 'http://json-schema.org/draft-07/schema#',
    title: 'Spec of a cask or tub',
    description:
      'Dimensions of a vessel to be built of staves. Made from src/spec/file-schema.ts; do not edit.',
    type: 'object',
    required: ['vessel', 'units'],
    properties: {
      vessel: { enum: kinds, description: 'cask: widest in the middle; tub: straight-sided' },
      units: { enum: units, description: 'of every length in the file' },
    },
    allOf: variants.map(({ kind, unit }) => ({
      if: {
        required: ['vessel', 'units'],
        properties: { vessel: { const: kind }, units: { const: unit } },
      },
      then: { $ref: `#/definitions/${kind}-${unit}` },
    })),
    definitions: { ...Object.fromEntries(named), ...definitions },
  };
}

type Group = Json & { properties: Json; required: string[] };

function asJson(schemas: z.ZodMiniType[]): { anyOf: Group[]; definitions: Json } {
  const json = z.toJSONSchema(z.union(schemas), {
    io: 'input',
    target: 'draft-7',
    unrepresentable: 'any',
    reused: 'ref',
    metadata: forEditors,
    override: ({ zodSchema, jsonSchema }) => nameRequired(zodSchema, jsonSchema),
  });
  return json as unknown as { anyOf: Group[]; definitions: Json };
}

/** Staves are required, with one key of two. The rules check that in a file, which may lack the whole section. */
function withStaves(schema: Group): Group {
  const either = { oneOf: [{ required: ['count'] }, { required: ['widths'] }] };
  const staves = { ...(schema.properties['staves'] as Json), ...either };
  return {
    ...schema,
    properties: { ...schema.properties, staves },
    required: [...schema.required, 'staves'],
  };
}

/** zod takes no key for required that a transform reads: it might make something of nothing. Ours don't. */
function nameRequired(schema: z.core.$ZodType, json: Json): void {
  if (!(schema instanceof z.ZodMiniObject)) return;
  const shape = Object.entries(schema.shape as Record<string, unknown>);
  const required = shape.filter(([, child]) => !(child instanceof z.ZodMiniOptional));
  if (required.length > 0) json['required'] = required.map(([key]) => key);
}

export const specSchemaText = (): Promise<string> =>
  format(JSON.stringify(specSchema()), { parser: 'json', printWidth: 100 });

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(path, await specSchemaText());
}
