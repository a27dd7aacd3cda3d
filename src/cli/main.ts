/** The program `staveloft`: the real world, and one command line. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Io } from './io.js';
import type { PrintAside } from './print-aside.js';
import { run } from './run.js';

/** Set by the build: the folder of this bundle, `dist/program`. */
declare const bundleFolder: string;
const dist = join(bundleFolder, '..');

/** Set by `start.ts`. */
declare const started: PrintAside | null;

async function readStdin(most: number): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of process.stdin) {
    chunks.push(chunk as Buffer);
    size += (chunk as Buffer).length;
    if (size >= most) break;
  }
  return Buffer.concat(chunks).subarray(0, most);
}

/** A reader such as `head` may close the pipe early; that is no failure. */
function leaveQuietlyWhenClosed(stream: NodeJS.WriteStream): void {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit();
  });
}

/** One line on the terminal, written over itself. */
function progress(text: string): void {
  process.stderr.write(`\r\u001b[K${text}`);
}

/** The second Ctrl-C ends the program as usual. */
function onInterrupt(callback: () => void): () => void {
  process.once('SIGINT', callback);
  return () => void process.off('SIGINT', callback);
}

/** Read once: the same array for every document is parsed only once. */
let font: Uint8Array | undefined;

const io: Io = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  stdin: readStdin,
  folder: process.cwd(),
  packageFolder: join(dist, '..'),
  font: () => Promise.resolve((font ??= readFileSync(join(dist, 'DejaVuSans.ttf')))),
  helper: join(dist, 'thread.cjs'),
  printAside: started,
  ...(process.stderr.isTTY && { progress }),
  onInterrupt,
  now: () => performance.now() / 1000,
  show: (address) => void import('./open-browser.js').then((it) => it.openBrowser(address)),
  untilStopped: () =>
    new Promise((resolve) => {
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
    }),
  env: process.env,
};

leaveQuietlyWhenClosed(process.stdout);
leaveQuietlyWhenClosed(process.stderr);
void run(process.argv.slice(2), io).then((code) => {
  process.exitCode = code;
});
