/** Says what `draw` wrote: a line for each piece, and how to look at it all. */
import { dirname, extname, join } from 'node:path';
import type { DrawnFile } from './draw-files.js';
import { oneLine } from './say.js';
import type { CliWords } from './words.js';

export function drawReport(files: readonly DrawnFile[], { draw }: CliWords): string {
  const lines = new Map<string, string[]>();
  for (const { shown } of files) {
    const stem = shown.slice(0, -extname(shown).length);
    lines.set(stem, [...(lines.get(stem) ?? []), shown]);
  }
  const folders = [...new Set(files.map(({ shown }) => dirname(shown)))];
  return [
    draw.wrote(files.length),
    ...[...lines.values()].map((names) => `  ${names.join('  ')}`),
    ...folders.map((folder) => draw.look(join(folder, 'index.html'))),
  ]
    .map(oneLine)
    .join('');
}
