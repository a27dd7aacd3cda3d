/**
 * A form that goes along with the work: numbers, a list to cut by, steps with boxes to tick and to write in, labels to cut out.
 * A value, whatever it is set on; every text is ready to be read.
 */
import type { Table } from './drawing.js';

export interface FormEntry {
  readonly name: string;
  readonly value: string;
}

export interface FormStep {
  readonly title: string;
  readonly text: string;
  /** boxes to write in what was measured: what, and what it should be; the value may be empty */
  readonly measures: readonly FormEntry[];
  /** empty where the step has none */
  readonly caution: string;
}

export interface Form {
  /** stem of its files */
  readonly name: string;
  /** BCP 47 */
  readonly language: string;
  readonly title: string;
  /** what it belongs to */
  readonly subject: string;
  readonly numbers: { readonly heading: string; readonly entries: readonly FormEntry[] };
  readonly list: Table;
  readonly steps: { readonly heading: string; readonly steps: readonly FormStep[] };
  readonly labels: {
    readonly heading: string;
    readonly texts: readonly string[];
  };
}
