/**
 * Keeps the compiled code of the bundles in a folder, after a run that has used most of it. The build bundles this
 * file and runs it in a process of its own: `node keep-compiled.cjs FOLDER COMMAND ...`.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cacheName, runBundle, type Compiled } from '../src/cli/compiled.js';

const [folder = '', ...command] = process.argv.slice(2);
const bundles: Compiled[] = [];
process.argv.splice(2, Infinity, ...command);
process.on('exit', () => {
  for (const { name, script } of bundles)
    writeFileSync(join(folder, cacheName(name, command)), script.createCachedData());
});
runBundle(folder, 'program.cjs', (bundle) => bundles.push(bundle));
