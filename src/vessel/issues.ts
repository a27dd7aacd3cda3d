/** Makes the issues that the geometry raises; their wording lives with the spec's. */
import type { Issue, SpecPath } from '../spec/issue.js';

type Values = Issue['values'];

export function error(code: string, path: SpecPath, values: Values = {}): Issue {
  return { severity: 'error', code, path, values };
}

export function warning(code: string, path: SpecPath, values: Values = {}): Issue {
  return { severity: 'warning', code, path, values };
}
