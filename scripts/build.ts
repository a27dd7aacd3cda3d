/**
 * Builds dist/: the program, the library and its types. Everything that runs is bundled, so that an installed package
 * starts from few files. The PDF writer is a file of its own, read only when a PDF is made: it is most of the code.
 *
 * `npx tsx scripts/build.ts`; with `--quick` without types, which is enough to run it.
 */
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build, type BuildOptions } from 'esbuild';
import { lazyTries, leftOut, pdfApart, unicodeByLanguage } from './build-plugins.js';

const root = fileURLToPath(new URL('..', import.meta.url));
const from = (...path: string[]): string => join(root, ...path);

const shared: BuildOptions = {
  bundle: true,
  platform: 'node',
  target: 'node20',
  minify: true,
  legalComments: 'linked',
  logLevel: 'warning',
};

/** CommonJS, since it starts sooner than a module does and its compiled code can be kept. */
const start: BuildOptions = {
  entryPoints: [from('src/cli/start.ts')],
  format: 'cjs',
  banner: { js: '#!/usr/bin/env node' },
};

const program: BuildOptions = {
  entryPoints: [from('src/cli/main.ts')],
  format: 'cjs',
  define: { bundleFolder: '__dirname' },
  supported: { 'dynamic-import': false },
  // the command line library loads it for subcommands that are programs of their own
  plugins: [pdfApart, leftOut('child_process', /^(node:)?child_process$/)],
};

const library: BuildOptions = {
  entryPoints: [from('src/index.ts')],
  format: 'esm',
  plugins: [pdfApart],
};

/** What pdfkit makes of its own place are the paths of a colour profile and of fonts that are never asked for. */
const pdfWriter: BuildOptions = {
  entryPoints: [from('src/writers/pdf.ts')],
  format: 'cjs',
  define: { 'import.meta.url': '"file:///"' },
  plugins: [
    unicodeByLanguage,
    lazyTries,
    leftOut('woff2', /^brotli\/decompress/),
    leftOut('png', /^png-js$/),
    leftOut('linebreak', /^linebreak$/),
    leftOut('encryption', /^@noble\/ciphers/),
  ],
};

/** Everything that runs, in `folder`, which is emptied first. */
export async function buildBundles(folder: string): Promise<void> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const outputs = {
    'staveloft.cjs': start,
    'program.cjs': program,
    'pdf.cjs': pdfWriter,
    'index.js': library,
  };
  const builds = Object.entries(outputs).map(([name, options]) =>
    build({ ...shared, ...options, outfile: join(folder, name) }),
  );
  await Promise.all(builds);
  copyFileSync(from('fonts/DejaVuSans.ttf'), join(folder, 'DejaVuSans.ttf'));
  copyFileSync(from('fonts/LICENSE.txt'), join(folder, 'DejaVuSans-LICENSE.txt'));
  await keepCompiled(folder);
}

const exampleSpec =
  'vessel: cask\nunits: mm\nheight: 945\nbilge: 678\nends: 572\nstaves: { count: 28 }\n';

async function keepCompiled(folder: string): Promise<void> {
  const scratch = mkdtempSync(join(tmpdir(), 'staveloft-build-'));
  const keeper = join(scratch, 'keep-compiled.cjs');
  try {
    await build({
      ...shared,
      entryPoints: [from('scripts/keep-compiled.ts')],
      format: 'cjs',
      outfile: keeper,
    });
    const draw = ['draw', '-', '--out', join(scratch, 'out'), '--quiet'];
    for (const command of [['figures', '-'], draw])
      execFileSync(process.execPath, [keeper, folder, ...command], {
        input: exampleSpec,
        stdio: ['pipe', 'ignore', 'inherit'],
      });
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

function buildTypes(): void {
  const compiler = from('node_modules/typescript/bin/tsc');
  execFileSync(process.execPath, [compiler, '-p', from('tsconfig.types.json')], {
    stdio: 'inherit',
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await buildBundles(from('dist'));
  if (!process.argv.includes('--quick')) buildTypes();
}
