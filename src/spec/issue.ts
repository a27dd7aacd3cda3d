/** What is wrong, or doubtful, with a spec: data only. The wording lives in `spec/wording.en.ts` and its like. */

/** Where in the YAML: `['heads', 'croze', 'inset']`, `['hoops', 1, 'offset']`; empty for the whole file. */
export type SpecPath = readonly (string | number)[];

export interface Issue {
  readonly severity: 'error' | 'warning';
  /** stable name of the rule that was broken; the wording file has one sentence for each */
  readonly code: string;
  readonly path: SpecPath;
  /** numbers (mm, degrees, as the wording says) and words that the sentence needs */
  readonly values: Readonly<Record<string, string | number>>;
}

/** An issue put into words, at its place in a file. */
export interface Message {
  readonly severity: 'error' | 'warning';
  readonly code: string;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** dotted: `heads.croze.inset`, `hoops[1].offset`; empty for the whole file */
  readonly key: string;
  readonly found: string;
  readonly allowed: string;
  readonly text: string;
}
