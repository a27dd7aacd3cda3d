/** The wording of messages, by language. */
import type { Translations } from '../language.js';
import type { Say } from './say.js';
import { english, type Code } from './wording.en.js';
import type { Wording, Wordings } from './wording.js';

/** With a message for every code that English has one for. */
export interface AllWordings extends Wordings {
  readonly messages: Readonly<Record<Code, (say: Say) => Wording>>;
}

export const specWordings: Translations<AllWordings> = {
  en: english,
  de: async () => (await import('./wording.de.js')).german,
  fr: async () => (await import('./wording.fr.js')).french,
};
