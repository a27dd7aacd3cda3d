/** What a thread starts: it only fetches the bundle that it is told, in compiled form where there is one. */
import { join } from 'node:path';
import { workerData } from 'node:worker_threads';
import { runBundle } from './compiled.js';

runBundle(join(__dirname, 'program'), `${workerData as string}.cjs`);
