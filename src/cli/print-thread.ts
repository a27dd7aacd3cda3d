/** A thread that makes PDFs for the program: drawings and forms come as they are, files go back as bytes. What goes wrong ends it, and is told. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort } from 'node:worker_threads';
import { printPdf, type Printing } from '../index.js';
import { pack } from './pack.js';

/** Set by the build: the folder of this bundle, `dist/program`. */
declare const bundleFolder: string;

const font = readFileSync(join(bundleFolder, '..', 'DejaVuSans.ttf'));

async function print(printing: Printing): Promise<void> {
  const bytes = await printPdf(printing, font, pack);
  parentPort?.postMessage(bytes, [bytes.buffer as ArrayBuffer]);
}

let before = Promise.resolve();
parentPort?.on('message', (printing: Printing) => {
  before = before.then(() => print(printing));
});
