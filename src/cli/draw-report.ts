/** Says what `draw` wrote: a line for each piece, and how to look at it all. */
import { dirname, extname, join } from 'node:path';
import { oneLine } from './say.js';
import type { CliWords } from './words.js';

/** `shown` are the files as people are told them. */
export function drawReport(shown: readonly string[], { draw }: CliWords): string {
  const lines = new Map<string, string[]>();
  for (const file of shown) {
    const stem = file.slice(0, -extname(file).length);
    lines.set(stem, [...(lines.get(stem) ?? []), file]);
  }
  const folders = [...new Set(shown.map((file) => dirname(file)))];
  return [
    draw.wrote(shown.length),
    ...[...lines.values()].map((names) => `  ${names.join('  ')}`),
    ...folders.map((folder) => draw.look(join(folder, 'index.html'))),
  ]
    .map(oneLine)
    .join('');
}
