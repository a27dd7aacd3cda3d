/** What is wrong with a rack list, in words. */
import type { Translations } from '../language.js';
import type { StockCode, StockIssue } from './stock.js';
import { english } from './stock-words.en.js';

export interface StockWords {
  readonly severity: Readonly<Record<StockIssue['severity'], string>>;
  readonly sentences: Readonly<
    Record<StockCode, (found: string, heading: string, detail: string) => string>
  >;
}

export const stockWords: Translations<StockWords> = {
  en: english,
  de: async () => (await import('./stock-words.de.js')).german,
  fr: async () => (await import('./stock-words.fr.js')).french,
};

/** One line for a person: place, matter and remedy. */
export function describeStockIssue(
  { code, found, heading, detail, severity, line, column }: StockIssue,
  file: string,
  words: StockWords = english,
): string {
  const sentence = words.sentences[code](found, heading, detail);
  return `${file}:${line}:${column}: ${words.severity[severity]}: ${sentence}`;
}
