/**
 * How messages are worded, in any language. To add a message, add `'its-code': (say) => words(found, allowed, text)` to the file
 * of every language. Found and allowed are short and may be empty; the text says in whole sentences what is wrong and what
 * to do. `say.length('name')` writes the value of that name, kept in mm, in the file's own units; `say.ts` has the rest.
 */
import type { Manner, Say } from './say.js';

export interface Wording {
  readonly found: string;
  readonly allowed: string;
  readonly text: string;
}

/** How a language words messages, each by the code of its issue, and how it writes numbers in them. */
export interface Wordings {
  readonly messages: Readonly<Record<string, (say: Say) => Wording>>;
  readonly manner: Manner;
}

export function wordingOf(found: string, allowed: string, ...text: string[]): Wording {
  return { found, allowed, text: text.filter((sentence) => sentence !== '').join(' ') };
}
