/** The files of `match --out`: for each set its plan, its spec and its staves; all sets as one table. */
import { join, resolve } from 'node:path';
import { setFiles, setsTable } from '../index.js';
import type { Language, MatchRequest, MatchResult, Message, OutFile, Vessel } from '../index.js';
import type { Io } from './io.js';
import type { FileToWrite } from './write-whole.js';

/** Sets whose staves each get their own patterns: those of a cask take 10 MB. Of the others `draw` makes them. */
export const setsWithPatterns = 10;

interface Making {
  readonly vessel: Vessel;
  readonly request: MatchRequest;
  readonly result: MatchResult;
  readonly out: string;
  readonly language: Language;
}

/** Or why one of the sets makes no vessel, in words. */
export async function matchFiles(
  { vessel: { spec }, request: { measured }, result, out, language }: Making,
  io: Io,
): Promise<FileToWrite[] | { readonly refused: readonly Message[] }> {
  const made: OutFile[] = [setsTable(result.sets, spec)];
  for (const [i, set] of result.sets.entries()) {
    const number = i + 1;
    const file = join(out, `set-${number}`, 'spec.yaml');
    const options = { file, font: io.font, language, patterns: number <= setsWithPatterns };
    const files = await setFiles({ spec, measured, set, number }, options);
    if ('refused' in files) return files;
    made.push(...files);
  }
  return made.map(({ name, content }) => ({ path: resolve(io.folder, join(out, name)), content }));
}
