/** What a drawing thread starts: it only fetches the helper, in compiled form where there is one. */
import { join } from 'node:path';
import { runBundle } from './compiled.js';

runBundle(join(__dirname, 'program'), 'helper.cjs');
