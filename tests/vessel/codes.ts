/** What solving a spec says, by code; shared by the tests of the checks. */
import { expect } from 'vitest';
import type { Issue } from '../../src/spec/issue.js';
import type { Spec } from '../../src/spec/spec.js';
import { solveVessel } from '../../src/vessel/solve.js';

export function issuesOf(spec: Spec): readonly Issue[] {
  const result = solveVessel(spec);
  return 'issues' in result ? result.issues : result.vessel.warnings;
}

/** Codes in order, warnings with a question mark: `['groove-deep?']`. */
export function codesOf(spec: Spec): string[] {
  return issuesOf(spec).map(({ code, severity }) => (severity === 'warning' ? `${code}?` : code));
}

/** The one issue of a spec, after checking that it is alone and that its values are finite numbers or words. */
export function onlyIssue(spec: Spec): Issue {
  const issues = issuesOf(spec);
  expect(issues.map(({ code }) => code)).toHaveLength(1);
  const issue = issues[0]!;
  for (const value of Object.values(issue.values))
    expect(typeof value === 'string' || Number.isFinite(value)).toBe(true);
  return issue;
}
