/** The words of the page that shows a vessel's patterns, by language. */
import type { Translations } from '../language.js';
import { english } from './index-page.words.en.js';

export interface IndexPageWords {
  readonly language: string;
  readonly intro: string;
  readonly noPicture: string;
  readonly spec: string;
  /** before the names of its files */
  readonly jobSheet: string;
  readonly formats: Readonly<Record<'svg' | 'dxf' | 'pdf', string>>;
  /** each a heading and its sentences */
  readonly sections: readonly { readonly heading: string; readonly lines: readonly string[] }[];
}

export const indexPageWords: Translations<IndexPageWords> = {
  en: english,
  de: async () => (await import('./index-page.words.de.js')).german,
  fr: async () => (await import('./index-page.words.fr.js')).french,
};
