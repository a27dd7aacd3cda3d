/** Files in one zip. */
import { strToU8, zipSync, type Zippable } from 'fflate';
import type { OutFile } from '../../index.js';

/** Zips have no date before 1980, and no clock belongs in them: the same files give the same bytes. */
const noDate = new Date(1980, 0, 1);

export function zipOf(name: string, files: readonly OutFile[]): OutFile {
  const entries: Zippable = {};
  for (const { name: entry, content } of files)
    entries[entry] = typeof content === 'string' ? strToU8(content) : content;
  return { name, content: zipSync(entries, { level: 6, mtime: noDate }) };
}
