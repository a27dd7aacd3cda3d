/** What the shell starts: it only fetches the program, in compiled form where there is one. */
import { join } from 'node:path';
import { runBundle } from './compiled.js';

runBundle(join(__dirname, 'program'), 'main.cjs');
