/**
 * Writes several files whole, or none of them. Everything is written under temporary names in the folders where it
 * belongs, then put in place by renaming; a folder that isn't there yet is renamed as a whole. If a step fails, what was done
 * before is taken back. Every step is synchronous, and a signal is dealt with between them, so that Ctrl-C leaves nothing
 * half-written.
 */
import { existsSync, lstatSync, mkdirSync, rmdirSync, unlinkSync } from 'node:fs';
import { constants } from 'node:os';
import { dirname, join } from 'node:path';
import { NewFolder } from './new-folder.js';
import { putInPlace, type Undo } from './put-in-place.js';
import { reasonOf } from './reason.js';
import { cliWords, type FileWords } from './words.js';
import { writeNew } from './write-new.js';

export interface FileToWrite {
  /** absolute */
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Files that are written as they come and shown all at once. */
export class Writing {
  private readonly undo: Undo[] = [];
  /** by the path where each file belongs */
  private readonly temporary = new Map<string, string>();
  /** by the paths of all folders that files go to: the one that is not there yet, or null */
  private readonly folders = new Map<string, NewFolder | null>();
  private readonly inTheWay: string[] = [];

  constructor(
    private readonly replace: boolean,
    private readonly words: FileWords,
  ) {}

  /**
   * Writes files under temporary names. Null, or why nothing will be written: everything is taken back then. What is in the way
   * is remembered for `obstacle`, which can tell of all that is.
   */
  add(files: readonly FileToWrite[]): string | null {
    for (const { path, content } of files) {
      const failure = this.step(path, () => {
        const folder = this.newFolder(dirname(path));
        if (folder) {
          folder.write(path, content);
          return null;
        }
        const there = kindOf(path);
        if (there === 'folder') return this.words.folderInTheWay(path);
        if (there === 'file' && !this.replace) {
          this.inTheWay.push(path);
          return null;
        }
        const scrap = temporaryName(path);
        this.undo.push(writeScrap(scrap, content));
        this.temporary.set(path, scrap);
        return null;
      });
      if (failure !== null) return this.refuse(failure);
    }
    return null;
  }

  /** Null, or which files are there already; everything is taken back then. */
  obstacle(): string | null {
    const { inTheWay } = this;
    if (inTheWay.length === 0) return null;
    const named = inTheWay.slice(0, 3).join(', ');
    const more = Math.max(0, inTheWay.length - 3);
    return this.refuse(this.words.there(named, more, inTheWay.length > 1));
  }

  /** Gives all files their names. Null, or why nothing is written. */
  finish(): string | null {
    const obstacle = this.obstacle();
    if (obstacle !== null) return obstacle;
    for (const [path, scrap] of this.temporary) {
      const failure = this.step(path, () => {
        this.undo.push(putInPlace(scrap, path, this.replace));
        return null;
      });
      if (failure !== null) return this.refuse(failure);
    }
    for (const folder of new Set(this.folders.values())) {
      if (!folder) continue;
      const failure = this.step(folder.path, () => {
        folder.putInPlace();
        return null;
      });
      if (failure !== null) return this.refuse(failure);
    }
    for (const { keep } of this.undo) quietly(keep);
    return null;
  }

  takeBack(): void {
    for (const { takeBack } of this.undo.splice(0).reverse()) quietly(takeBack);
  }

  /**
   * The folder that isn't there yet, or one above it that isn't. Only that one gets its name in the end: those above it are
   * made at once, since others may be filling them as well.
   */
  private newFolder(path: string): NewFolder | null {
    const known = this.folders.get(path);
    if (known !== undefined) return known;
    const above = [...this.folders.values()].find((each) => each?.holds(path));
    const folder = above ?? (existsSync(path) ? null : this.makeFolder(path));
    this.folders.set(path, folder);
    return folder;
  }

  private makeFolder(path: string): NewFolder {
    this.undo.push(...makeFolder(dirname(path)));
    const folder = new NewFolder(path, temporaryName(path));
    this.undo.push({ keep: () => {}, takeBack: () => folder.takeBack() });
    return folder;
  }

  private step(path: string, work: () => string | null): string | null {
    try {
      return work();
    } catch (error) {
      return `${path}: ${reasonOf(error, this.words)}`;
    }
  }

  private refuse(failure: string): string {
    this.takeBack();
    return this.words.nothingWritten(failure);
  }
}

/** Null when all is written; otherwise why nothing is. */
export function writeWhole(
  files: readonly FileToWrite[],
  replace: boolean,
  words: FileWords = cliWords.en.files,
): string | null {
  const writing = new Writing(replace, words);
  const letGo = holdSignals(() => {});
  try {
    return writing.add(files) ?? writing.finish();
  } finally {
    letGo();
  }
}

/**
 * The same for files that `work` adds bit by bit; it answers why it cannot, or null. A signal meanwhile takes everything
 * back and ends the program.
 */
export async function writeAsTheyCome(
  replace: boolean,
  work: (writing: Writing) => Promise<string | null>,
  words: FileWords = cliWords.en.files,
): Promise<string | null> {
  const writing = new Writing(replace, words);
  const letGo = holdSignals((signal) => {
    writing.takeBack();
    process.exit(128 + constants.signals[signal]);
  });
  let refusal: string | null = 'undone';
  try {
    refusal = (await work(writing)) ?? writing.finish();
    return refusal;
  } finally {
    if (refusal !== null) writing.takeBack();
    letGo();
  }
}

/** A link counts as a file: it would be replaced, and what it points to left alone. */
function kindOf(path: string): 'file' | 'folder' | null {
  const entry = lstatSync(path, { throwIfNoEntry: false });
  if (!entry) return null;
  return entry.isDirectory() ? 'folder' : 'file';
}

/** Makes a folder and those above it that are missing. */
function makeFolder(folder: string): Undo[] {
  const missing: string[] = [];
  for (let next = folder; !existsSync(next); next = dirname(next)) missing.unshift(next);
  if (missing.length > 0) mkdirSync(folder, { recursive: true });
  return missing.map((path) => ({ keep: () => {}, takeBack: () => rmdirSync(path) }));
}

/** How many there have been, so that none is given twice. */
let names = 0;

/** Beside the file or folder itself, since a name can be changed in one step only within one disk. */
function temporaryName(path: string): string {
  return join(dirname(path), `.staveloft-${process.pid}-${names++}.tmp`);
}

function writeScrap(path: string, content: string | Uint8Array): Undo {
  const takeBack = (): void => unlinkSync(path);
  try {
    writeNew(path, content);
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

/** Signals go to `act` until they are let go. */
function holdSignals(act: (signal: NodeJS.Signals) => void): () => void {
  for (const signal of signals) process.on(signal, act);
  return () => {
    for (const signal of signals) process.off(signal, act);
  };
}
