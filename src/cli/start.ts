/**
 * What the shell starts: it fetches the program, in compiled form where there is one. Before that it starts what takes long to
 * start.
 */
import { join } from 'node:path';
import { runBundle } from './compiled.js';
import { printAside } from './print-aside.js';

const started = printAside(process.argv.slice(2), join(__dirname, 'thread.cjs'));
runBundle(join(__dirname, 'program'), 'main.cjs', { started });
