/** Draws several specs one after the other, and many of them on several threads; files are handed on spec by spec. */
import { join } from 'node:path';
import { drawnFiles, type DrawnFile } from './draw-files.js';
import type { DrawingOptions } from './draw-options.js';
import type { Io } from './io.js';
import type { Planned } from './plans.js';

/** One spec to draw. A thread is told it as it is: text, names and options, no vessel. */
export interface Job {
  readonly file: string;
  readonly text: string;
  readonly folder: string;
  readonly options: DrawingOptions;
}

export interface Take {
  /** some files; why they cannot be taken, or null */
  readonly files: (files: readonly DrawnFile[]) => string | null;
  /** all files of a spec, in their order, once they are taken; why there should be others, or null */
  readonly spec: (files: readonly DrawnFile[], index: number) => string | null;
}

/** A thread takes as long to start as some specs take to draw. */
const fewest = 6;

/** Null when every spec's files are taken; otherwise why not, and the rest is left undrawn. */
export async function drawMany(
  planned: readonly Planned[],
  folders: readonly string[],
  options: DrawingOptions,
  io: Io,
  take: Take,
): Promise<string | null> {
  const folderOf = (i: number): string => join(options.out, folders[i]!);
  if (io.helper !== null && planned.length >= fewest) {
    // each of those prints what it draws
    void io.printAside?.end();
    const { drawByHelpers } = await import('./draw-helpers.js');
    const jobs = planned.map(({ file, text }, i) => ({ file, text, folder: folderOf(i), options }));
    return drawByHelpers(jobs, io.helper, take);
  }
  let refusal: string | null = null;
  for (const [i, { vessel }] of planned.entries()) {
    const taken = (file: DrawnFile): void => void (refusal ??= take.files([file]));
    const files = await drawnFiles(vessel, folderOf(i), options, io, taken);
    refusal ??= take.spec(files, i);
    if (refusal !== null) return refusal;
  }
  // takes a while, as starting it does: it goes on while the files are put in place
  void io.printAside?.end();
  return null;
}
