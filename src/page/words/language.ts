/** The language that people read, and the words of it: the page's own, those on drawings, and what is said of a spec. */
import { batch, effect, signal } from '@preact/signals';
import {
  languages,
  pieceWords,
  specWordings,
  wordsIn,
  type Language,
  type Wordings,
  type Words as PieceWords,
} from '../../index.js';
import { keep, kept } from '../state/kept.js';
import { de } from './de.js';
import { en } from './en.js';
import { fr } from './fr.js';
import type { Words } from './words.js';

const all: Readonly<Record<Language, Words>> = { en, de, fr };

export const language = signal<Language>('en');
export const words = signal<Words>(en);
export const drawingWords = signal<PieceWords>(pieceWords.en);
export const wordings = signal<Wordings>(specWordings.en);

/** Everything changes together, once all words are there. */
export async function speak(wanted: Language): Promise<void> {
  const [drawn, said] = await Promise.all([
    wordsIn(pieceWords, wanted),
    wordsIn(specWordings, wanted),
  ]);
  batch(() => {
    language.value = wanted;
    words.value = all[wanted];
    drawingWords.value = drawn;
    wordings.value = said;
  });
  // not by an effect: that would run before what was kept is read
  keep('language', wanted);
}

/** As the browser asks, or as chosen before. */
export function firstLanguage(): Language {
  const asked = [kept('language'), ...navigator.languages.map((each) => each.slice(0, 2))];
  return asked.flatMap((each) => languages.find((known) => known === each) ?? [])[0] ?? 'en';
}

effect(() => {
  document.documentElement.lang = language.value;
});
