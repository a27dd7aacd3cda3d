/** Turns what zod complains of into our own issues. */
import type * as z from 'zod/mini';
import { fault } from './fault.js';
import type { FileSchema, Kind } from './file-schema.js';
import type { Issue, SpecPath } from './issue.js';
import { nearest } from './nearest.js';
import { keysBeside, sectionsWith } from './schema-keys.js';
import { shown } from './shown.js';

type Complaint = z.core.$ZodIssue;

export function issuesOf(
  complaint: Complaint,
  schema: FileSchema,
  kind: Kind,
  above: SpecPath = [],
): Issue[] {
  const path: SpecPath = [...above, ...(complaint.path as (string | number)[])];
  const found = { found: shown(complaint.input) };
  switch (complaint.code) {
    case 'custom':
      return [customIssue(complaint.params ?? {}, path)];
    case 'unrecognized_keys':
      return complaint.keys.map((key) => unknownKey([...path, key], schema, kind));
    case 'invalid_union':
      // the only union is the bung's, and its first branch is the group of keys
      if (typeof complaint.input !== 'object') return [fault('not-a-bung', path, found)];
      return complaint.errors[0]!.flatMap((inner) => issuesOf(inner, schema, kind, path));
    case 'too_big':
      return [
        fault('list-too-long', path, { ...entries(complaint), most: Number(complaint.maximum) }),
      ];
    case 'too_small':
      return [
        fault('list-too-short', path, { ...entries(complaint), least: Number(complaint.minimum) }),
      ];
    case 'invalid_type':
      return [wrongKind(complaint, path, found)];
    default:
      return [fault('not-understood', path, found)];
  }
}

const entries = ({ input }: Complaint): { found: number } => ({
  found: Array.isArray(input) ? input.length : 0,
});

/** Our own fields name the code and the values themselves; see `fields.ts`. */
function customIssue(params: Record<string, unknown>, path: SpecPath): Issue {
  return fault(String(params['code']), path, params['values'] as Issue['values']);
}

function wrongKind(
  { expected }: z.core.$ZodIssueInvalidType,
  path: SpecPath,
  found: Issue['values'],
): Issue {
  return fault(expected === 'array' ? 'not-a-list' : 'not-a-group', path, found);
}

const otherVessel: Record<Kind, readonly string[]> = {
  cask: ['top', 'bottom'],
  tub: ['bilge', 'ends', 'profile'],
};

function unknownKey(path: SpecPath, schema: FileSchema, kind: Kind): Issue {
  const key = String(path.at(-1));
  if (path.length === 1 && otherVessel[kind].includes(key)) {
    return fault('key-of-other-vessel', path, { vessel: kind });
  }
  if (path.length === 2 && path[0] === 'heads' && key === 'top')
    return fault('tub-without-top', path);
  const known = keysBeside(path, schema);
  const elsewhere = sectionsWith(key, schema).join(', ');
  const meant = nearest(key, known) ?? '';
  return fault('unknown-key', path, {
    found: shown(key),
    allowed: known.join(', '),
    meant,
    elsewhere,
  });
}
