/** The words that sheets add to a drawing, by language. */
import type { Translations } from '../language.js';
import type { PaperName } from './paper.js';
import { english } from './words.en.js';

export interface SheetWords {
  readonly titleBlock: {
    readonly owner: string;
    readonly number: string;
    readonly date: string;
    readonly sheet: string;
    readonly title: string;
    readonly approved: string;
    readonly creator: string;
    readonly documentType: string;
    /** the type of a full-size drawing */
    readonly pattern: string;
    /** the type of a drawing that is not full size */
    readonly picture: string;
    readonly scale: string;
    readonly units: string;
    readonly unitNames: { readonly mm: string; readonly in: string };
    sheetOf(sheet: number, sheets: number): string;
  };
  readonly proof: {
    /** two lines, above the square on the first sheet */
    readonly before: readonly [string, string];
    readonly across: string;
    readonly along: string;
    /** inside the square */
    readonly remedy: string;
    readonly hundred: string;
    readonly fourInches: string;
  };
  readonly cover: {
    /** `scale` is `1:1` for full size */
    subtitle(tiles: number, paper: string, scale: string): string;
    readonly paperNames: Readonly<Record<PaperName, string>>;
    readonly howToUse: string;
    /** how to join the sheets of a piece */
    readonly steps: readonly string[];
    /** the same when the piece is on one sheet */
    readonly single: readonly string[];
    readonly plan: string;
    readonly planLeftOut: string;
  };
  readonly tile: {
    identification(sheet: number, sheets: number, scale: string): string;
    /** beside the line where a sheet is cut to lie on its neighbour */
    cutHere(neighbour: string): string;
    /** in the strip that its neighbour covers */
    covered(neighbour: string): string;
  };
}

export const sheetWords: Translations<SheetWords> = {
  en: english,
  de: async () => (await import('./words.de.js')).german,
  fr: async () => (await import('./words.fr.js')).french,
};
