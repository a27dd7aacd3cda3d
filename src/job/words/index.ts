/** The words of the job sheet, by language. */
import type { Translations } from '../../language.js';
import { en } from './en.js';
import type { JobWords } from './job-words.js';

export const jobWords: Translations<JobWords> = {
  en,
  de: async () => (await import('./de.js')).de,
  fr: async () => (await import('./fr.js')).fr,
};
