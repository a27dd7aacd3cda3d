/** A thread that draws for the program: specs come as text, files go back as bytes. What goes wrong ends it, and is told. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort } from 'node:worker_threads';
import { planVessel } from '../index.js';
import { drawnFiles } from './draw-files.js';
import type { Job } from './draw-many.js';

/** Set by the build: the folder of this bundle, `dist/program`. */
declare const bundleFolder: string;

let font: Uint8Array | undefined;
const io = {
  folder: process.cwd(),
  font: () => Promise.resolve((font ??= readFileSync(join(bundleFolder, '..', 'DejaVuSans.ttf')))),
};

async function draw({ file, text, folder, options }: Job): Promise<void> {
  const { vessel } = planVessel(text, file);
  if (!vessel) throw new Error(`${file}: it could be built before`);
  const files = await drawnFiles(vessel, folder, options, io);
  const sent = files.map(({ content, ...rest }) => ({ ...rest, content: bytesOf(content) }));
  parentPort?.postMessage(sent, [...new Set(sent.map(({ content }) => content.buffer))]);
}

/** In memory of their own, which can be handed over without a copy. */
function bytesOf(content: string | Uint8Array): Uint8Array<ArrayBuffer> {
  return typeof content === 'string' ? new TextEncoder().encode(content) : new Uint8Array(content);
}

let before = Promise.resolve();
parentPort?.on('message', (job: Job) => {
  before = before.then(() => draw(job));
});
