/** A folder that isn't there yet: it is filled under a temporary name beside its place, and gets its own name in one step. */
import { mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, sep } from 'node:path';
import { writeNew } from './write-new.js';

export class NewFolder {
  /** those in it that are made, under the temporary name */
  private readonly folders: Set<string>;
  private placed = false;

  /** Throws where no folder can be made there. */
  constructor(
    readonly path: string,
    private readonly scrap: string,
  ) {
    mkdirSync(scrap);
    this.folders = new Set([scrap]);
  }

  /** Whether what has this path is to be in it. */
  holds(path: string): boolean {
    return path.startsWith(this.path + sep);
  }

  /** `path` is where the file will be, in this folder or in one below it. Throws where it has been written before. */
  write(path: string, content: string | Uint8Array): void {
    const temporary = this.scrap + path.slice(this.path.length);
    const folder = dirname(temporary);
    if (!this.folders.has(folder)) mkdirSync(folder, { recursive: true });
    this.folders.add(folder);
    writeNew(temporary, content);
  }

  /** Throws where somebody else has put something of that name there meanwhile. */
  putInPlace(): void {
    renameSync(this.scrap, this.path);
    this.placed = true;
  }

  takeBack(): void {
    rmSync(this.placed ? this.path : this.scrap, { recursive: true, force: true });
  }
}
