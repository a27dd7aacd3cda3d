/** The wording of a proof, by language. */
import type { Translations, Typeset } from '../language.js';
import type { Check, FindingUnit, Place } from './finding.js';
import { english } from './words.en.js';

export interface ProofWords {
  /** sets a text that is written with decimal points */
  readonly typeset: Typeset;
  /** what was judged */
  readonly checks: Readonly<Record<Check, string>>;
  /** by the names that findings give to parts of what is judged */
  readonly parts: Readonly<Record<string, string>>;
  readonly faces: Readonly<Record<NonNullable<Place['face']>, string>>;
  readonly sides: Readonly<Record<NonNullable<Place['side']>, string>>;
  readonly edges: Readonly<Record<NonNullable<Place['edge']>, string>>;
  readonly ends: Readonly<Record<NonNullable<Place['end']>, string>>;
  readonly station: (mm: string) => string;
  readonly joint: (stave: number) => string;
  readonly number: (number: number) => string;
  readonly hoop: (name: string) => string;
  readonly point: (x: string, y: string) => string;
  readonly layer: (name: string) => string;
  /** behind the number, with the space before it */
  readonly units: Readonly<Record<FindingUnit, string>>;
  readonly measured: (measured: string, expected: string, allowed: string) => string;
  readonly allowed: (tolerance: string) => string;
  readonly notMeasured: string;
  readonly good: string;
  readonly moreFiles: (first: string, last: string, count: number) => string;
  readonly and: string;
  /** why something has not passed, where the numbers do not say it */
  readonly failures: Readonly<Partial<Record<Check, string>>>;
  /** by the names that findings give to reasons */
  readonly reasons: Readonly<Record<string, string>>;
  /** `code` is the value of $INSUNITS */
  readonly otherUnit: (code: string) => string;
  readonly strangeLine: (type: string) => string;
  readonly report: {
    readonly heading: (folder: string, title: string, files: number) => string;
    readonly notDrawn: (files: string) => string;
    readonly failed: (failed: number, count: number) => string;
    readonly passed: (count: number) => string;
    /** the headings of the table: what, where it is worst, measured there, should be, allowed */
    readonly columns: readonly [string, string, string, string, string];
    /** `place` may be empty */
    readonly worst: (place: string, of: number) => string;
    readonly limits: string;
  };
  readonly picture: {
    readonly title: string;
    readonly joint: (files: string) => string;
    readonly outer: string;
    readonly inner: string;
    readonly allowed: (mm: string) => string;
    readonly station: string;
    readonly gapHeading: string;
    readonly scales: (times: string) => string;
    readonly notes: readonly string[];
  };
}

export const proofWords: Translations<ProofWords> = {
  en: english,
  de: async () => (await import('./words.de.js')).german,
  fr: async () => (await import('./words.fr.js')).french,
};
