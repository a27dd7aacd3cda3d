/** Turns what zod complains of into our own issues. */
import type * as z from 'zod';
import { fault } from './fault.js';
import type { FileSchema, Kind } from './file-schema.js';
import type { Issue, SpecPath } from './issue.js';
import { nearest } from './nearest.js';
import { shown } from './shown.js';

type Complaint = z.core.$ZodIssue;

export function issuesOf(
  complaint: Complaint,
  keys: FileSchema['keys'],
  kind: Kind,
  above: SpecPath = [],
): Issue[] {
  const path: SpecPath = [...above, ...(complaint.path as (string | number)[])];
  const found = { found: shown(complaint.input) };
  switch (complaint.code) {
    case 'custom':
      return [customIssue(complaint.params ?? {}, path)];
    case 'unrecognized_keys':
      return complaint.keys.map((key) => unknownKey([...path, key], keys, kind));
    case 'invalid_union':
      // the only union is the bung's, and its first branch is the group of keys
      if (typeof complaint.input !== 'object') return [fault('not-a-bung', path, found)];
      return complaint.errors[0]!.flatMap((inner) => issuesOf(inner, keys, kind, path));
    case 'too_big':
      return [
        fault('list-too-long', path, {
          found: lengthOf(complaint.input),
          most: Number(complaint.maximum),
        }),
      ];
    case 'too_small':
      return [
        fault('list-too-short', path, {
          found: lengthOf(complaint.input),
          least: Number(complaint.minimum),
        }),
      ];
    case 'invalid_type':
      return [wrongKind(complaint, path, found)];
    default:
      return [fault('not-understood', path, found)];
  }
}

const lengthOf = (input: unknown): number => (Array.isArray(input) ? input.length : 0);

/** Our own fields name the code and the values themselves; see `fields.ts`. */
function customIssue(params: Record<string, unknown>, path: SpecPath): Issue {
  return fault(String(params['code']), path, params['values'] as Issue['values']);
}

function wrongKind(
  complaint: z.core.$ZodIssueInvalidType,
  path: SpecPath,
  found: Issue['values'],
): Issue {
  if (path.length === 1 && path[0] === 'staves' && (complaint.input ?? null) === null)
    return fault('no-staves', path);
  return fault(complaint.expected === 'array' ? 'not-a-list' : 'not-a-group', path, found);
}

/** The section that a path's last key stands in, as `FileSchema.keys` names it: `heads.croze`, `hoops[]`. */
function sectionOf(path: SpecPath): string {
  const steps = path.slice(0, -1).map((step) => (typeof step === 'number' ? '[]' : `.${step}`));
  return steps.join('').replace(/^\./, '');
}

export function unknownKey(path: SpecPath, keys: FileSchema['keys'], kind: Kind): Issue {
  const key = String(path.at(-1));
  const section = sectionOf(path);
  const known = keys.get(section) ?? [];
  if (section === '' && otherVessel[kind].includes(key))
    return fault('key-of-other-vessel', path, { vessel: kind });
  if (section === 'heads' && key === 'top') return fault('tub-without-top', path);
  const values = { found: shown(key), allowed: known.join(', ') };
  return fault('unknown-key', path, {
    ...values,
    meant: nearest(key, known) ?? '',
    elsewhere: elsewhere(key, keys),
  });
}

const otherVessel: Record<Kind, readonly string[]> = {
  cask: ['top', 'bottom'],
  tub: ['bilge', 'ends', 'profile'],
};

/** The sections that know a key which stands in the wrong one. */
function elsewhere(key: string, keys: FileSchema['keys']): string {
  const sections = [...keys].filter(([section, known]) => section !== '' && known.includes(key));
  return sections
    .map(([section]) => section)
    .filter((section) => !/^heads\.(top|bottom)/.test(section))
    .join(', ');
}
