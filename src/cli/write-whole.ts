/**
 * Writes several files whole, or none of them. Everything is written under temporary names in the folders where it
 * belongs, then put in place by renaming; if a step fails, what was done before is taken back. All calls are
 * synchronous, and signals wait until the end, so that Ctrl-C leaves nothing half-written.
 */
import { existsSync, lstatSync, mkdirSync, rmdirSync, unlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { putInPlace, type Undo } from './put-in-place.js';
import { reasonOf } from './reason.js';

export interface FileToWrite {
  /** absolute */
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Null when all is written; otherwise why nothing is. */
export function writeWhole(files: readonly FileToWrite[], replace: boolean): string | null {
  const failure = withoutInterruption(() => writeAll(files, replace));
  return failure && `nothing was written: ${failure}`;
}

function writeAll(files: readonly FileToWrite[], replace: boolean): string | null {
  const undo: Undo[] = [];
  let at = '';
  try {
    const obstacle = inTheWay(files, replace);
    if (obstacle) return obstacle;
    const temporary = new Map<string, string>();
    for (const { path, content } of files) {
      at = path;
      undo.push(...makeFolder(dirname(path)));
      temporary.set(path, temporaryName(path, temporary.size));
      undo.push(writeScrap(temporary.get(path)!, content));
    }
    for (const [path, scrap] of temporary) {
      at = path;
      undo.push(putInPlace(scrap, path, replace));
    }
  } catch (error) {
    for (const { takeBack } of undo.reverse()) quietly(takeBack);
    return `${at}: ${reasonOf(error)}`;
  }
  for (const { keep } of undo) quietly(keep);
  return null;
}

function inTheWay(files: readonly FileToWrite[], replace: boolean): string | null {
  const there = files.map(({ path }) => path).filter((path) => kindOf(path) !== null);
  const folder = there.find((path) => kindOf(path) === 'folder');
  if (folder) return `${folder} is a folder`;
  if (replace || there.length === 0) return null;
  const named = there.slice(0, 3).join(', ');
  const more = there.length > 3 ? ` and ${there.length - 3} more` : '';
  return `${named}${more} ${there.length === 1 ? 'is' : 'are'} there already; --replace writes over`;
}

/** A link counts as a file: it would be replaced, and what it points to left alone. */
function kindOf(path: string): 'file' | 'folder' | null {
  const entry = existsSync(dirname(path)) && lstatSync(path, { throwIfNoEntry: false });
  if (!entry) return null;
  return entry.isDirectory() ? 'folder' : 'file';
}

/** Makes a folder and those above it that are missing. */
function makeFolder(folder: string): Undo[] {
  const missing: string[] = [];
  for (let next = folder; !existsSync(next); next = dirname(next)) missing.unshift(next);
  mkdirSync(folder, { recursive: true });
  return missing.map((path) => ({ keep: () => {}, takeBack: () => rmdirSync(path) }));
}

/** Beside the file itself, since a name can be changed in one step only within one disk. */
function temporaryName(path: string, index: number): string {
  return join(dirname(path), `.staveloft-${process.pid}-${index}.tmp`);
}

function writeScrap(path: string, content: string | Uint8Array): Undo {
  const takeBack = (): void => unlinkSync(path);
  try {
    writeFileSync(path, content, { flag: 'wx' });
  } catch (error) {
    // one that was there before isn't ours to take away
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') quietly(takeBack);
    throw error;
  }
  return { keep: () => {}, takeBack };
}

/** Tidying goes on where one thing cannot be tidied: a folder that somebody else has used meanwhile stays. */
function quietly(step: () => void): void {
  try {
    step();
  } catch {
    return;
  }
}

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

function withoutInterruption<T>(work: () => T): T {
  const wait = (): void => {};
  for (const signal of signals) process.on(signal, wait);
  try {
    return work();
  } finally {
    for (const signal of signals) process.off(signal, wait);
  }
}
