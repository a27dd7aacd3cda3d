/** The languages of all that people read. Names of files, layers, keys and options stay as they are in every one of them. */

export const languages = ['en', 'de', 'fr'] as const;
export type Language = (typeof languages)[number];

/** A set of words: English at hand, as most runs want it, the others fetched when they are asked for. */
export interface Translations<T> {
  readonly en: T;
  readonly de: () => Promise<T>;
  readonly fr: () => Promise<T>;
}

export async function wordsIn<T>(words: Translations<T>, language: Language): Promise<T> {
  return language === 'en' ? words.en : words[language]();
}

/** How a language sets a text that is written with decimal points and plain blanks. */
export type Typeset = (text: string) => string;

/** English is written as it is set. */
export const asWritten: Typeset = (text) => text;

/** `12.5` becomes `12,5`; numbers in a row are then parted by semicolons: `12,5; 30,0`. */
export const decimalComma: Typeset = (text) =>
  text.replace(/(?<=\d)\.(?=\d)/g, ',').replace(/(?<=\d,\d+), (?=\s*[-\u2212+]?\d+,\d)/g, '; ');

/** With decimal commas, and no line breaks before the signs that French sets apart from their word. */
export const frenchText: Typeset = (text) =>
  decimalComma(text)
    .replace(/ (?=[:;!?%»])/g, '\u00a0')
    .replace(/(?<=«) /g, '\u00a0');
