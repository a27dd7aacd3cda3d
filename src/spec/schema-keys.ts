/** Which keys a section of the spec file knows, asked of the schema itself; only messages need it. */
import * as z from 'zod/mini';
import type { FileSchema } from './file-schema.js';
import type { SpecPath } from './issue.js';

/** The keys known beside the last key of `path`. */
export function keysBeside(path: SpecPath, schema: FileSchema): readonly string[] {
  let node: z.core.$ZodType | undefined = schema;
  for (const step of path.slice(0, -1)) {
    node = unwrapped(node);
    if (node instanceof z.ZodMiniArray) node = node._zod.def.element;
    else node = node instanceof z.ZodMiniObject ? node.shape[String(step)] : undefined;
  }
  node = unwrapped(node);
  return node instanceof z.ZodMiniObject ? Object.keys(node.shape) : [];
}

/** The sections that know `key`: `heads.croze`, `hoops`; not the file itself, nor the heads' own overrides. */
export function sectionsWith(key: string, schema: FileSchema): readonly string[] {
  return Object.entries(schema.shape).flatMap(([name, child]) => sections(child, name, key));
}

function sections(schema: z.core.$ZodType, place: string, key: string): string[] {
  const node = unwrapped(schema);
  if (node instanceof z.ZodMiniArray) return sections(node._zod.def.element, place, key);
  if (!(node instanceof z.ZodMiniObject) || /^heads\.(top|bottom)/.test(place)) return [];
  const below = Object.entries(node.shape).flatMap(([name, child]) =>
    sections(child as z.core.$ZodType, `${place}.${name}`, key),
  );
  return Object.hasOwn(node.shape, key) ? [place, ...below] : below;
}

/** The schema itself under what makes it optional; of the bung's union, the group of keys. */
function unwrapped(schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined {
  if (schema instanceof z.ZodMiniOptional || schema instanceof z.ZodMiniNullable) {
    return unwrapped(schema._zod.def.innerType as z.core.$ZodType);
  }
  return schema instanceof z.ZodMiniUnion ? unwrapped(schema._zod.def.options[0]) : schema;
}
