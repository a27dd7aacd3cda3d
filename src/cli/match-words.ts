/** What `match` answers, by language. Lengths come in written and set, with their unit. */
import type { Shortfall, Translations, Typeset, UnfitStave } from '../index.js';
import { matchWordsEnglish } from './match-words.en.js';
import type { FileWords } from './words.js';

export interface MatchWords {
  /** sets a number that is written with a decimal point; marks are never set so */
  readonly typeset: Typeset;
  /** `wanted` is null for as many as there are */
  readonly found: (found: number, wanted: number | null, staves: number) => string;
  readonly proven: (bound: number) => string;
  readonly bound: (bound: number) => string;
  readonly best: string;
  readonly asked: (
    diameter: string,
    tolerance: string,
    count: string,
    plane: string,
    bung: string,
  ) => string;
  readonly bungOf: (width: string) => string;
  readonly noBung: string;
  readonly measured: Readonly<Record<'blank' | 'backed', string>>;
  readonly set: (set: number) => string;
  readonly names: {
    readonly closes: string;
    readonly staves: string;
    readonly bungStave: string;
    readonly order: string;
    readonly large: string;
    readonly small: string;
  };
  readonly closes: (diameter: string, sure: string, off: string) => string;
  readonly staves: (count: number, laid: string) => string;
  readonly bungStave: (mark: string, width: string) => string;
  readonly order: (measure: string, parts: string) => string;
  readonly orderParts: {
    readonly joints: (mm: string) => string;
    readonly balance: (mm: string) => string;
    readonly neighbours: (mm: string) => string;
    readonly pairs: (count: number) => string;
    readonly inLine: (count: string) => string;
  };
  readonly cure: (takeOut: string, putIn: string, by: string) => string;
  readonly headings: (unit: string) => readonly string[];
  readonly bungMark: string;
  readonly legend: readonly string[];
  readonly left: (count: number) => string;
  readonly leftMore: (count: number) => string;
  readonly unfit: Readonly<Record<UnfitStave['because'], (count: number) => string>>;
  readonly shortfall: (set: number, why: string) => string;
  readonly reasons: Readonly<
    Record<Shortfall['reason'], (girthMissing: string, bungWidth: string) => string>
  >;
  readonly help: (staves: number, widths: string, set: number) => string;
  readonly widths: (from: string, to: string) => string;
  readonly interrupted: string;
  readonly progress: Readonly<
    Record<'choosing' | 'ordering', (done: number, of: number) => string>
  >;
  readonly wrote: (files: number, folder: string) => string;
  readonly carry: (plan: string) => string;
  /** `draw` makes what is left out */
  readonly noPatterns: (first: number, command: string) => string;
  /** why a rack list cannot be taken */
  readonly list: Pick<FileWords, 'tooLarge' | 'notText' | 'notUtf8'>;
  readonly swap: {
    readonly broken: (mark: string, place: number, of: number, width: string) => string;
    readonly closes: (diameter: string) => string;
    readonly bungStave: string;
    readonly headings: (unit: string) => readonly string[];
    readonly none: string;
    readonly cut: (width: string, from: string, to: string) => string;
  };
}

export const matchWords: Translations<MatchWords> = {
  en: matchWordsEnglish,
  de: async () => (await import('./match-words.de.js')).matchWordsGerman,
  fr: async () => (await import('./match-words.fr.js')).matchWordsFrench,
};
