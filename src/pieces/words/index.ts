/** The words on drawings, by language. */
import type { Translations } from '../../language.js';
import { en } from './en.js';

/** What each language has to say. */
export type Words = typeof en;

export const pieceWords: Translations<Words> = {
  en,
  de: async () => (await import('./de.js')).de,
  fr: async () => (await import('./fr.js')).fr,
};
