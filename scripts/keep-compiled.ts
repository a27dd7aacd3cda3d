/**
 * Keeps the compiled code of the program's bundles, after a run that has used it. The build bundles this file and runs it
 * in a process of its own: `node keep-compiled.cjs FOLDER COMMAND ...`. What another command has kept before stays.
 */
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cacheName, runBundle, type Compiled } from '../src/cli/compiled.js';

const [folder = '', ...command] = process.argv.slice(2);
const bundles: Compiled[] = [];
process.argv.splice(2, Infinity, ...command);
process.on('exit', () => {
  for (const { name, script } of bundles) {
    const file = join(folder, cacheName(name));
    if (!existsSync(file)) writeFileSync(file, script.createCachedData());
  }
});
// without anything started: a single process does it all
runBundle(folder, 'main.cjs', { loaded: (bundle) => bundles.push(bundle), started: null });
