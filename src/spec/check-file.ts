/** Holds plain data against the spec file's schema: what is wrong, and what can be used all the same. */
import * as z from 'zod/mini';
import { issuesOf } from './complaints.js';
import { fileSchema, type Kind } from './file-schema.js';
import type { Given } from './given.js';
import type { Issue, SpecPath } from './issue.js';
import type { Units } from './spec.js';
import type { Data } from './yaml-tree.js';

export interface CheckedFile {
  readonly units: Units;
  readonly kind: Kind;
  readonly given: Given;
  readonly issues: readonly Issue[];
}

/** A file that names no vessel or units, or none that exist, is read as those that suit its other keys best. */
export function checkFile(data: Data): CheckedFile {
  const kinds: Kind[] = isKind(data['vessel']) ? [data['vessel']] : ['cask', 'tub'];
  const units: Units[] = isUnits(data['units']) ? [data['units']] : ['mm', 'in'];
  const readings = kinds.flatMap((kind) => units.map((unit) => checkAs(data, unit, kind)));
  return readings.reduce((best, next) => (next.issues.length < best.issues.length ? next : best));
}

const isKind = (value: unknown): value is Kind => value === 'cask' || value === 'tub';
const isUnits = (value: unknown): value is Units => value === 'mm' || value === 'in';

/** Interpreted: compiling the schema pays only from the tenth file on, and pages may forbid it. */
const asIs = { reportInput: true, jitless: true };

function checkAs(data: Data, units: Units, kind: Kind): CheckedFile {
  const schema = fileSchema(units, kind);
  const whole = schema.safeParse(data, asIs);
  if (whole.success) return { units, kind, given: whole.data, issues: [] };
  const issues = whole.error.issues.flatMap((complaint) => issuesOf(complaint, schema, kind));
  const usable = without(
    data,
    issues.map(({ path }) => path),
  );
  const partial = z.partial(schema).safeParse(usable, asIs);
  return { units, kind, given: partial.success ? (partial.data as Given) : {}, issues };
}

/** The data less what stands at those paths. A list with a fault in it goes whole, so that the others keep their places. */
function without(data: Data, paths: readonly SpecPath[]): Data {
  const copy = structuredClone({ ...data });
  for (const path of paths) {
    const list = path.findIndex((step) => typeof step === 'number');
    const steps = list < 0 ? path : path.slice(0, list);
    let node: unknown = copy;
    for (const step of steps.slice(0, -1)) node = (node as Data | null | undefined)?.[step];
    if (node && typeof node === 'object') delete (node as Data)[String(steps.at(-1))];
  }
  return copy;
}
