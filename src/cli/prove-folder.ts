/** Reads a folder of drawings: the names of its files, and the text of those that a proof looks into. */
import { lstatSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { PackFile } from '../index.js';
import { reasonOf } from './reason.js';
import type { CliWords } from './words.js';

/** Patterns take some tens of kilobytes; the whole vessel's section some hundreds. */
const mostBytes = 8 * 1024 * 1024;
const mostFiles = 4000;

/** The files, or why there are none. */
export function readFolder(
  path: string,
  { prove: say, files }: CliWords,
): readonly PackFile[] | string {
  try {
    if (!statSync(path).isDirectory()) return say.isFile;
    const names = readdirSync(path).sort();
    if (names.length > mostFiles) return say.tooMany(mostFiles);
    return names.map((name) => readPart(path, name));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return code === 'ENOENT' ? say.noFolder : reasonOf(error, files);
  }
}

function readPart(folder: string, name: string): PackFile {
  const looked = /\.dxf$/i.test(name) || name === 'index.html';
  if (!looked) return { name, text: null, refusal: '' };
  const path = join(folder, name);
  try {
    // anything else, such as a pipe, may never end
    const { size } = isFile(path);
    if (size > mostBytes) return { name, text: null, refusal: 'too-large' };
    // names of layers and numbers are plain ASCII in every encoding that such a file may have
    return { name, text: readFileSync(path, 'latin1'), refusal: '' };
  } catch {
    return { name, text: null, refusal: 'unreadable' };
  }
}

function isFile(path: string): { size: number } {
  const entry = lstatSync(path).isSymbolicLink() ? statSync(path) : lstatSync(path);
  if (!entry.isFile()) throw new Error('no file');
  return entry;
}
