/** The words of what the commands answer, by language. Help, and what is wrong with a command line, is in English. */
import type { Figures, Keep, Posture, Recut, Translations, Typeset } from '../index.js';
import { english } from './words.en.js';

type Slip = Figures['sensitivity'][number]['slip'];
type GrooveState = Recut['oldGrooves'][number]['state'];

export interface CliWords {
  /** sets a number that is written with a decimal point */
  readonly typeset: Typeset;
  readonly warning: string;
  readonly check: { readonly good: string; warned(warnings: number): string };
  readonly draw: {
    wrote(files: number): string;
    look(page: string): string;
    none(file: string): string;
  };
  readonly give: {
    wrote(file: string): string;
    readonly cannotBeBuilt: string;
    readonly tryAgain: string;
  };
  readonly changes: {
    readonly nothing: string;
    readonly changed: string;
    titleStays(title: string): string;
    laid(key: string): string;
    capacity(from: string, to: string): string;
  };
  readonly ends: Readonly<Record<'top' | 'bottom', string>>;
  readonly vessels: Readonly<Record<'cask' | 'tub', string>>;
  /** the names that a spec gives hoops unless it has its own */
  hoopName(name: string): string;
  readonly format: {
    readonly note: Readonly<Record<'mm' | 'in', string>>;
    per100(slope: string): string;
    litres(litres: string): string;
    gallons(gallons: string, litres: string): string;
  };
  readonly size: {
    round(step: string): string;
    headings(unit: string, diameters: readonly string[]): readonly string[];
    readonly diameters: Readonly<Record<'cask' | 'tub', readonly [string, string]>>;
    unreachable(keeping: string, litres: string, reach: string): string;
    readonly keeps: Readonly<Record<Keep, string>>;
    withLength(kept: string): string;
    readonly no: string;
    noNearer(litres: string): string;
  };
  readonly recut: {
    readonly head: string;
    readonly outside: string;
    readonly inside: string;
    atMost(gap: string): string;
    readonly groove: Readonly<Record<GrooveState, (end: string, fromEnd: string) => string>>;
  };
  readonly dip: {
    readonly postures: Readonly<Record<Posture, string>>;
    headings(unit: string): readonly string[];
    readonly gallons: string;
    readonly oldRule: readonly [rule: string, error: string];
  };
  readonly figures: FigureWords;
  readonly prove: {
    readonly isFile: string;
    tooMany(files: number): string;
    readonly noFolder: string;
    noSpec(folder: string): string;
    /** why a picture is not drawn */
    noStaves(picture: string): string;
    noRing(picture: string): string;
  };
  readonly files: FileWords;
}

/** What cannot be read or written, and why. */
export interface FileWords {
  cannotRead(why: string): string;
  readonly isFolder: string;
  tooLarge(kilobytes: number): string;
  readonly utf16: string;
  readonly notText: string;
  readonly notUtf8: string;
  readonly stdinOnce: string;
  nothingWritten(why: string): string;
  folderInTheWay(path: string): string;
  /** `more` files beside those that are named are there too */
  there(named: string, more: number, several: boolean): string;
  /** by the code of the system's error */
  readonly reasons: Readonly<Record<string, string>>;
}

export interface FigureWords {
  readonly capacity: {
    readonly title: string;
    readonly from: Readonly<Record<'cask' | 'tub', string>>;
    readonly recess: string;
    leftOut(litres: string): string;
    readonly law: string;
    limit(litres: string): string;
    readonly empty: string;
    masses(empty: string, wood: string, steel: string): string;
    readonly full: string;
  };
  readonly staves: {
    readonly title: string;
    readonly count: string;
    readonly laid: string;
    readonly closes: string;
    readonly one: string;
    readonly mean: string;
    readonly thickness: string;
    readonly widest: Readonly<Record<'cask' | 'tub', string>>;
    readonly width: EndNames;
    readonly outerLength: string;
    readonly innerLength: string;
    readonly bevel: string;
    readonly bevelBilge: string;
    readonly bevels: EndNames;
    readonly blade: string;
    readonly endCut: EndNames;
    readonly gap: string;
    atEachJoint(gap: string): string;
    readonly stretch: string;
    readonly stations: string;
    stationHeadings(unit: string): readonly string[];
    readonly each: string;
    eachHeadings(unit: string): readonly string[];
  };
  readonly heads: {
    readonly titles: Readonly<Record<'tub' | 'alike' | 'top' | 'bottom', string>>;
    readonly diameter: string;
    readonly compass: string;
    sixSteps(radius: string): string;
    readonly opensRadius: string;
    readonly opensGirth: string;
    boardHeadings(unit: string): readonly string[];
    dowels(unit: string): string;
  };
  readonly hoops: { readonly title: string; readonly headings: readonly string[] };
  readonly slips: {
    title(unit: string): string;
    readonly headings: readonly string[];
    readonly faces: Readonly<Record<'inside' | 'outside', string>>;
    readonly names: Readonly<Record<Slip, (amount: string) => string>>;
  };
  readonly warnings: string;
}

type EndNames = Readonly<Record<'both' | 'top' | 'bottom', string>>;

export const cliWords: Translations<CliWords> = {
  en: english,
  de: async () => (await import('./words.de.js')).german,
  fr: async () => (await import('./words.fr.js')).french,
};
