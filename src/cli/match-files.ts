/** The files of `match --out`: for each set its plan, its spec and its staves; all sets as one table. */
import { join, resolve } from 'node:path';
import { packSet, planVessel, specOfSet, writeSpec } from '../index.js';
import type { Language, MatchRequest, MatchResult, Message, Vessel } from '../index.js';
import type { Io } from './io.js';
import { setsCsv } from './match-csv.js';
import type { MatchWords } from './match-words.js';
import type { FileToWrite } from './write-whole.js';

/** Sets whose staves each get their own patterns: those of a cask take 10 MB. Of the others `draw` makes them. */
export const setsWithPatterns = 10;

interface Making {
  readonly vessel: Vessel;
  readonly request: MatchRequest;
  readonly result: MatchResult;
  readonly out: string;
  readonly words: MatchWords;
  readonly language: Language;
}

/** Or why one of the sets makes no vessel, in words. */
export async function matchFiles(
  { vessel, request, result, out, words, language }: Making,
  io: Io,
): Promise<FileToWrite[] | { readonly refused: readonly Message[] }> {
  const place = (name: string): string => resolve(io.folder, join(out, name));
  const { spec } = vessel;
  const files: FileToWrite[] = [{ path: place('sets.csv'), content: setsCsv(result, spec) }];
  for (const [i, set] of result.sets.entries()) {
    const number = i + 1;
    const title = words.setTitle(spec.title, number);
    const own = writeSpec(specOfSet(spec, set, request.measured, title));
    const plan = planVessel(own, join(out, `set-${number}`, 'spec.yaml'));
    if (!plan.vessel) return { refused: plan.messages };
    const options = { font: io.font, language, patterns: number <= setsWithPatterns };
    const pack = await packSet({ vessel: plan.vessel, set, number }, options);
    files.push(...pack.map(({ name, content }) => ({ path: place(name), content })));
  }
  return files;
}
