/** Why there are no more sets, and what would help. Knows nothing of the page. */
import type { RackWords } from '../words/rack.js';
import type { Chosen } from './chosen.js';
import { requestOf } from './replacing.js';

/** Of an answer with fewer sets than wanted; `length` says so many mm with their unit. */
export function shortfallText(
  chosen: Chosen,
  words: Pick<RackWords, 'reasons' | 'help'>,
  length: (mm: number) => string,
): string {
  const { shortfall, help } = chosen.result;
  const bungWidth = requestOf(chosen)?.bung ?? 0;
  const why = words.reasons[shortfall!.reason](length(shortfall!.girthMissing), length(bungWidth));
  if (!help) return why;
  return `${why} ${words.help(help.staves, length(help.fromWidth), length(help.toWidth))}`;
}
