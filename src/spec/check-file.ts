/** Holds plain data against the spec file's schema: what is wrong, and what can be used all the same. */
import { issuesOf } from './complaints.js';
import { fileSchema, partialSchema, type Kind } from './file-schema.js';
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
  const best = readings.reduce((a, b) => (b.issues.length < a.issues.length ? b : a));
  return best.issues.length === 0 ? best : { ...best, given: usable(data, best) };
}

const isKind = (value: unknown): value is Kind => value === 'cask' || value === 'tub';
const isUnits = (value: unknown): value is Units => value === 'mm' || value === 'in';

/** Interpreted: compiling the schema pays only from the tenth file on, and pages may forbid it. */
const asIs = { reportInput: true, jitless: true };

function checkAs(data: Data, units: Units, kind: Kind): CheckedFile {
  const schema = fileSchema(units, kind);
  const read = schema.safeParse(data, asIs);
  if (read.success) return { units, kind, given: read.data, issues: [] };
  const issues = read.error.issues.flatMap((complaint) => issuesOf(complaint, schema, kind));
  return { units, kind, given: {}, issues };
}

/** What is left when everything with a fault is taken out, and nothing is required. */
function usable(data: Data, { units, kind, issues }: CheckedFile): Given {
  const paths = issues.map(({ path }) => path);
  const read = partialSchema(units, kind).safeParse(without(data, paths), asIs);
  return read.success ? read.data : {};
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
