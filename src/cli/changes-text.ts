/** What has changed from one spec to another, for people. */
import type { Change, Spec } from '../index.js';
import { columns } from './columns.js';
import type { FigureFormat } from './figure-format.js';

/** Old and new; a title is told where it names a number that may no longer be true. */
export function changesText(
  changes: readonly Change[],
  spec: Spec,
  { gap, words }: FigureFormat,
): string {
  const say = words.changes;
  if (changes.length === 0) return `${say.nothing}\n`;
  const nameOf = (key: string): string => (key === 'staves.widths' ? say.laid(key) : key);
  const rows = changes.map(({ key, from, to }) => [nameOf(key), gap(from), '->', gap(to)]);
  const title = /\d/.test(spec.title) ? `${say.titleStays(spec.title)}\n` : '';
  return `${say.changed}\n${columns(rows, { left: 1, indent: '  ' })}${title}`;
}
