/** What a rule finds between keys, and which of it is worth saying. */
import { fault } from './fault.js';
import type { Issue, SpecPath } from './issue.js';

type Values = Issue['values'];

export interface Finding {
  readonly code: string;
  /** the key to blame */
  readonly path: SpecPath;
  /** the other keys that the rule looked at */
  readonly beside: readonly SpecPath[];
  readonly values: Values;
}

export function finding(
  code: string,
  path: SpecPath,
  values: Values = {},
  beside: readonly SpecPath[] = [],
): Finding {
  return { code, path, beside, values };
}

/** A rule that touches a key which is already in doubt stays silent. */
export function sound(findings: readonly Finding[], known: readonly Issue[]): Issue[] {
  const doubted = (path: SpecPath): boolean => known.some((issue) => related(issue.path, path));
  return findings
    .filter(({ path, beside }) => ![path, ...beside].some(doubted))
    .map(({ code, path, values }) => fault(code, path, values));
}

/** One path is the other, or leads to it. An issue of the whole file says nothing of any one key. */
function related(a: SpecPath, b: SpecPath): boolean {
  const shorter = Math.min(a.length, b.length);
  return shorter > 0 && a.slice(0, shorter).every((step, i) => step === b[i]);
}

/** Heads that share their keys share their faults: one message will do. */
export function unique(issues: readonly Issue[]): Issue[] {
  const seen = new Set<string>();
  return issues.filter((issue) => {
    const name = JSON.stringify([issue.code, issue.path]);
    return !seen.has(name) && seen.add(name);
  });
}
