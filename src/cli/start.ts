/** What the shell starts: it only fetches the program, in compiled form where there is one. */
import { runBundle } from './compiled.js';

runBundle(__dirname, 'program.cjs');
