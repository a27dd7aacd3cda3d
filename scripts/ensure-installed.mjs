/** Installs the packages that are missing. Plain JavaScript, since it runs before anything is installed. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Does nothing when all that package-lock.json asks for is there. Throws when it cannot be installed. */
export function ensureInstalled() {
  if (isInstalled()) return;
  console.log('installing what is missing (npm ci) ...');
  // npm names its own program to what it runs; elsewhere the shell has to find it
  const npm = process.env['npm_execpath'];
  const quiet = ['ci', '--no-fund', '--no-audit'];
  const { status } = npm
    ? spawnSync(process.execPath, [npm, ...quiet], { cwd: root, stdio: 'inherit' })
    : spawnSync(`npm ${quiet.join(' ')}`, { cwd: root, stdio: 'inherit', shell: true });
  if (status !== 0) throw new Error('npm ci failed: see above');
}

/** npm notes in node_modules what it has installed; packages for other machines are optional and may be absent. */
function isInstalled() {
  const wanted = packagesIn('package-lock.json');
  const present = packagesIn('node_modules/.package-lock.json');
  return (
    wanted !== null &&
    present !== null &&
    Object.entries(wanted).every(
      ([path, { version, optional }]) =>
        path === '' || optional || present[path]?.version === version,
    )
  );
}

function packagesIn(lockfile) {
  try {
    return JSON.parse(readFileSync(new URL(`../${lockfile}`, import.meta.url), 'utf8')).packages;
  } catch {
    return null;
  }
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    ensureInstalled();
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
