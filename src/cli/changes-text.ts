/** What has changed from one spec to another, for people. */
import type { Change, Spec } from '../index.js';
import { columns } from './columns.js';
import type { FigureFormat } from './figure-format.js';

/** Old and new; a title is told where it names a number that may no longer be true. */
export function changesText(changes: readonly Change[], spec: Spec, { gap }: FigureFormat): string {
  if (changes.length === 0) return 'nothing changes\n';
  const rows = changes.map(({ key, from, to }) => [nameOf(key), gap(from), '->', gap(to)]);
  const title = /\d/.test(spec.title) ? `the title stays: ${spec.title}\n` : '';
  return `changed\n${columns(rows, { left: 1, indent: '  ' })}${title}`;
}

const nameOf = (key: string): string =>
  key === 'staves.widths' ? `${key}, laid side by side` : key;
