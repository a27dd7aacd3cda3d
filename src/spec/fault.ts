/** Makes the issues that reading a spec raises; their wording lives in `wording.en.ts`. */
import type { Issue, SpecPath } from './issue.js';

export function fault(code: string, path: SpecPath, values: Issue['values'] = {}): Issue {
  return { severity: 'error', code, path, values };
}
