/** The files of one set in one zip, those that `match --out` writes: made by a helper beside the page. */
import { specWordings, wordsIn, type OutFile } from '../../index.js';
import { zipOf } from '../file/zip.js';
import { font } from '../output/font.js';
import type { plainOptions } from '../output/output-state.js';
import { filesOfSet, type Chosen } from './chosen.js';

export interface SetFilesQuestion {
  readonly task: 'set files';
  readonly chosen: Chosen;
  /** which of the sets, from 1 */
  readonly number: number;
  readonly options: ReturnType<typeof plainOptions>;
}

/** A zip, or in words why the set makes no vessel. */
export type SetFilesAnswer = { readonly zip: OutFile } | { readonly refused: readonly string[] };

export async function setFilesAside(
  { chosen, number, options }: SetFilesQuestion,
  reply: (answer: SetFilesAnswer) => void,
): Promise<void> {
  // words are functions, which cannot be sent to a helper; their language can
  const wordings = await wordsIn(specWordings, options.language ?? 'en');
  const files = await filesOfSet(chosen, number, { ...options, font, wordings });
  if ('refused' in files) reply({ refused: files.refused.map(({ text }) => text) });
  else reply({ zip: zipOf(`set-${number}.zip`, files) });
}
