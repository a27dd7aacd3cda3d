/** A folder to work in and a command line whose words are caught. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach } from 'vitest';
import { run } from '../../src/cli/run.js';

export const root = fileURLToPath(new URL('../../', import.meta.url));
export const fontFile = join(root, 'fonts/DejaVuSans.ttf');

export const bucket = `vessel: tub
title: Bucket
units: mm
height: 290
top: 300
bottom: 260
staves: { count: 16, thickness: 16 }
`;

export interface Answer {
  code: number;
  out: string;
  err: string;
}

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

export class Workshop {
  readonly folder = mkdtempSync(join(tmpdir(), 'staveloft-cli-'));

  constructor(files: Readonly<Record<string, string | Uint8Array>> = { 'bucket.yaml': bucket }) {
    folders.push(this.folder);
    for (const [name, content] of Object.entries(files)) this.write(name, content);
  }

  path(...parts: string[]): string {
    return join(this.folder, ...parts);
  }

  write(name: string, content: string | Uint8Array): void {
    writeFileSync(this.path(name), content);
  }

  read(...parts: string[]): string {
    return readFileSync(this.path(...parts), 'utf8');
  }

  /** All files, with their folders, in order. */
  files(): string[] {
    const found = readdirSync(this.folder, { recursive: true, withFileTypes: true });
    const paths = found
      .filter((entry) => !entry.isDirectory())
      .map((entry) => join(entry.parentPath, entry.name).slice(this.folder.length + 1));
    return paths.sort();
  }

  /** Runs a command line; `{}` of `more` are the environment and standard input. */
  async run(
    argv: readonly string[],
    more: {
      env?: Record<string, string>;
      stdin?: string | Uint8Array;
      font?: () => Promise<Uint8Array>;
      untilStopped?: () => Promise<void>;
      packageFolder?: string;
    } = {},
  ): Promise<Answer> {
    const said = { out: '', err: '' };
    const code = await run(argv, {
      out: (text) => (said.out += text),
      err: (text) => (said.err += text),
      stdin: (most) => Promise.resolve(Buffer.from(more.stdin ?? '').subarray(0, most)),
      folder: this.folder,
      packageFolder: more.packageFolder ?? root,
      font: more.font ?? (() => readFile(fontFile)),
      helper: null,
      printAside: null,
      show: (address) => (said.out += `shows ${address}\n`),
      untilStopped: more.untilStopped ?? (() => Promise.resolve()),
      env: more.env ?? {},
    });
    return { code, ...said };
  }
}
