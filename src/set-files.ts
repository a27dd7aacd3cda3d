/** The files of sets that were chosen from a rack, as `match --out` writes them and the page hands them out. */
import { wordsIn } from './language.js';
import { packSet, type DrawOptions, type OutFile } from './pipeline.js';
import { pieceWords, type Words } from './pieces/words/index.js';
import { planVessel } from './plan.js';
import type { Measured } from './rack/closing.js';
import type { MatchedSet } from './rack/request.js';
import { runningTotals } from './sets/running-totals.js';
import { specOfSet } from './sets/set-spec.js';
import type { Message } from './spec/issue.js';
import type { Spec } from './spec/spec.js';
import type { Wordings } from './spec/wording.js';
import { writeSpec } from './spec/write.js';
import { toCsv } from './writers/csv.js';

/** A set, what it was chosen for, and which of the sets it is, from 1. */
export interface ChosenSet {
  readonly spec: Spec;
  readonly measured: Measured;
  readonly set: MatchedSet;
  readonly number: number;
}

export type SetFileOptions = Omit<DrawOptions, 'formats' | 'pieces' | 'fan' | 'router'> & {
  /** a pattern for every stave */
  readonly patterns: boolean;
  /** what its spec is called where something is wrong in it */
  readonly file: string;
  readonly wordings?: Wordings;
};

/** The spec of a set as text; its title has the set's number, in the language of the words. */
export function setSpecText({ spec, measured, set, number }: ChosenSet, words: Words): string {
  const title = words.setting.vesselTitle(spec.title, number);
  return writeSpec(specOfSet(spec, set, measured, title));
}

/** Plan, spec and, where they are wanted, a pattern for every stave; or why the set makes no vessel. */
export async function setFiles(
  chosen: ChosenSet,
  { file, wordings, ...options }: SetFileOptions,
): Promise<OutFile[] | { readonly refused: readonly Message[] }> {
  const { set, number } = chosen;
  const words = await wordsIn(pieceWords, options.language ?? 'en');
  const { vessel, messages } = planVessel(setSpecText(chosen, words), file, wordings);
  return vessel ? packSet({ vessel, set, number }, options) : { refused: messages };
}

/** All sets as one table for a spreadsheet: a row a stave, lengths in the units of the spec. */
export function setsTable(sets: readonly MatchedSet[], { units }: Spec): OutFile {
  const headings = ['set', 'place', 'mark', 'bung', `width_${units}`, `plane_off_${units}`];
  const all = [...headings, `laid_so_far_${units}`, `closes_at_${units}`];
  const rows = sets.flatMap((set, i) => setRows(set, i + 1, units));
  return { name: 'sets.csv', content: toCsv([all, ...rows]) };
}

function setRows(set: MatchedSet, number: number, units: Spec['units']): string[][] {
  const text = (mm: number): string =>
    units === 'mm' ? String(Number(mm.toFixed(3))) : String(Number((mm / 25.4).toFixed(5)));
  const totals = runningTotals(set);
  return set.staves.map(({ mark, width, planeOff }, i) => [
    String(number),
    String(i + 1),
    mark,
    mark === set.bungStave ? 'yes' : 'no',
    text(width),
    text(planeOff),
    text(totals[i]!),
    text(set.closesAt),
  ]);
}
