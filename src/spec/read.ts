/** From YAML text to a checked spec: parse, hold against the schema, check key against key, fill in defaults. */
import { checkFile } from './check-file.js';
import { fillIn } from './defaults.js';
import { fault } from './fault.js';
import type { Given } from './given.js';
import type { Issue, SpecPath } from './issue.js';
import type { Place } from './lines.js';
import { checkGiven, checkSpec } from './rules.js';
import type { Spec, Units } from './spec.js';
import { parseSource, type Source } from './yaml-source.js';
import { placeInTree, plainTree } from './yaml-tree.js';

export { putIntoWords } from './words.js';

export interface ReadSpec {
  /** null when there is any error */
  readonly spec: Spec | null;
  readonly issues: readonly Issue[];
  /** the units that people are shown; `mm` when the file doesn't say */
  readonly units: Units;
  /** lines and columns count from 1; what isn't in the file is looked for at its nearest ancestor */
  readonly locate: (path: SpecPath) => Place;
}

/** More than this many faults are of one cause. */
const mostIssues = 200;

/**
 * Never throws for any text, which may have been parsed before. Every fault of the file is among the issues, each with a place
 * in the file.
 */
export function readSpec(text: string | Source): ReadSpec {
  const source = typeof text === 'string' ? parseSource(text) : text;
  const locate = (path: SpecPath): Place => placeInTree(source.document, source.placeAt, path);
  if (!source.document) return { spec: null, issues: source.issues, units: 'mm', locate };
  const tree = plainTree(source.document, source.placeAt);
  const found = [...source.issues, ...tree.issues];
  if (!tree.data) return { spec: null, issues: found, units: 'mm', locate };
  const file = checkFile(tree.data);
  const known = [...found, ...withoutHoles(file.issues, found)];
  const { spec, issues } = judge(file.given, known);
  return {
    spec,
    issues: capped(issues.map((issue) => atItsKey(issue, source))),
    units: file.units,
    locate,
  };
}

/** Checks that need more than one key, on as much as is known; a spec only if nothing is wrong. */
function judge(given: Given, known: readonly Issue[]): { spec: Spec | null; issues: Issue[] } {
  const first = [...known, ...checkGiven(given, known)];
  const filled = fillIn(given);
  const issues = filled ? [...first, ...checkSpec(filled, given, first)] : first;
  return { spec: issues.length === 0 ? filled : null, issues };
}

const leavesHole = new Set(['yaml-alias', 'yaml-tag']);

/** An alias or a tag leaves a hole where its value was, which is no second fault. */
function withoutHoles(issues: readonly Issue[], found: readonly Issue[]): Issue[] {
  const name = ({ path }: Issue): string => JSON.stringify(path);
  const holes = new Set(found.filter(({ code }) => leavesHole.has(code)).map(name));
  return issues.filter((issue) => !holes.has(name(issue)));
}

/** Faults of a key itself are shown where the key stands; others where its value does. */
const ofTheKey = new Set(['unknown-key', 'key-of-other-vessel', 'tub-without-top']);

function atItsKey(issue: Issue, { document, placeAt }: Source): Issue {
  if (!ofTheKey.has(issue.code) || 'line' in issue.values) return issue;
  const place = placeInTree(document, placeAt, issue.path, 'key');
  return { ...issue, values: { ...issue.values, ...place } };
}

function capped(issues: readonly Issue[]): readonly Issue[] {
  if (issues.length <= mostIssues) return issues;
  const more = issues.length - mostIssues;
  return [...issues.slice(0, mostIssues), fault('more-issues', [], { more })];
}
