/**
 * Says which of the programs that judge our files cannot be found here; `--all` makes that a fault.
 * The checks that need a program are left out without it.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const answers = (program, ...parts) => spawnSync(program, parts, { stdio: 'ignore' }).status === 0;
const starts = (program, ...parts) => !spawnSync(program, parts, { stdio: 'ignore' }).error;
const python = (module) =>
  ['/usr/bin/python3', 'python3'].some((program) => answers(program, '-c', `import ${module}`));

/** each with the package of Debian that has it */
const validators = [
  ['ezdxf', 'python3-ezdxf', python('ezdxf')],
  ['scipy', 'python3-scipy', python('scipy')],
  ['shapely', 'python3-shapely', python('shapely')],
  ['qpdf', 'qpdf', starts('qpdf', '--version')],
  ['pdfinfo', 'poppler-utils', starts('pdfinfo', '-v')],
  ['pdffonts', 'poppler-utils', starts('pdffonts', '-v')],
  ['pdftotext', 'poppler-utils', starts('pdftotext', '-v')],
  ['pdftoppm', 'poppler-utils', starts('pdftoppm', '-v')],
  ['xmllint', 'libxml2-utils', starts('xmllint', '--version')],
  ['chromium', 'chromium', existsSync('/usr/bin/chromium') || starts('chromium', '--version')],
];

const missing = validators.filter(([, , found]) => !found);
for (const [name, debian] of missing) console.log(`not found: ${name} (Debian: ${debian})`);
console.log(`${validators.length - missing.length} of ${validators.length} outside programs found`);
if (missing.length > 0 && process.argv.includes('--all')) process.exitCode = 1;
