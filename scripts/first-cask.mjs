/**
 * From a fresh copy to a folder of patterns: installs what is missing, builds, and draws the wine cask of the templates
 * into my-cask/. Plain JavaScript, since it runs before anything is installed. Running it again draws it again.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureInstalled } from './ensure-installed.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = 'my-cask';

function run(what, ...parts) {
  console.log(`${what} ...`);
  const { status } = spawnSync(process.execPath, parts, { cwd: root, stdio: 'inherit' });
  if (status !== 0) throw new Error(`${what}: failed, see above`);
}

try {
  const [major] = process.versions.node.split('.').map(Number);
  if (major < 20) throw new Error(`this needs Node 20 or later, and this is ${process.version}`);
  ensureInstalled();
  run('building', '--import', 'tsx', 'scripts/build.ts', '--quick');
  const spec = 'templates/wine-cask-225.yaml';
  run('drawing', 'dist/staveloft.cjs', 'draw', spec, '--out', folder, '--replace');
  console.log(`
Your first cask is in ${join(root, folder)}
  look at it:  open ${join(root, folder, 'index.html')} in a browser
  print it:    ${join(root, folder, 'stave.pdf')}, at actual size, 100 %; measure the square on the sheet
  change it:   copy ${spec}, change the copy, then
               node dist/staveloft.cjs draw my-spec.yaml --out my-own`);
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}
