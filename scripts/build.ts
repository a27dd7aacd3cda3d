/**
 * Builds dist/: the program, the library and its types. Everything that runs is bundled, so that an installed package
 * starts from few files:
 *
 *     staveloft.cjs     what the shell starts; it fetches the program
 *     thread.cjs        what its threads start
 *     program/          the program: main.cjs, those of its threads, and what they load when it is asked for
 *     index.js          the library; it fetches the PDF writer when a PDF is asked for
 *     types/
 *     page/             the workshop page, as `staveloft page` serves it
 *     staveloft.html    the same in one file
 *     DejaVuSans.ttf    for PDF
 *     LICENCES.txt      of the packages that are part of it
 *
 * `npm run build`; with `-- --quick` without types and page, which is enough to draw.
 */
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build, transform, type BuildOptions, type Metafile } from 'esbuild';
import { inputsOf, licencesOf } from './build-licences.js';
import { leftOut, pastIndex } from './build-plugins.js';

const root = fileURLToPath(new URL('..', import.meta.url));
const from = (...path: string[]): string => join(root, ...path);

const shared: BuildOptions = {
  bundle: true,
  absWorkingDir: root,
  platform: 'node',
  target: 'node20',
  minify: true,
  legalComments: 'none',
  logLevel: 'warning',
  // what pdfkit makes of its own place are the paths of a colour profile and of fonts that are never asked for
  define: { 'import.meta.url': '"file:///"' },
  plugins: [
    leftOut('fontkit', /^fontkit$/),
    leftOut('png', /^png-js$/),
    leftOut('linebreak', /^linebreak$/),
    leftOut('encryption', /^@noble\/ciphers/),
    // the command line library loads it for subcommands that are programs of their own
    leftOut('child_process', /^(node:)?child_process$/, /commander/),
  ],
};

/** Everything that runs but the page, in `folder`, which is emptied first. Answers with the files that it is made of. */
export async function buildBundles(folder: string): Promise<string[]> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(join(folder, 'program'), { recursive: true });
  const metafiles = await Promise.all([
    buildScript('src/cli/start.ts', join(folder, 'staveloft.cjs'), '#!/usr/bin/env node'),
    buildScript('src/cli/start-thread.ts', join(folder, 'thread.cjs')),
    buildProgram(join(folder, 'program')),
    buildLibrary(folder),
  ]);
  const inputs = metafiles.flatMap(inputsOf);
  writeFileSync(join(folder, 'LICENCES.txt'), licencesOf(root, inputs));
  copyFileSync(from('fonts/DejaVuSans.ttf'), join(folder, 'DejaVuSans.ttf'));
  copyFileSync(from('fonts/LICENSE.txt'), join(folder, 'DejaVuSans-LICENSE.txt'));
  await keepCompiled(join(folder, 'program'));
  return inputs;
}

/** Everything that runs, and the page. */
async function buildAll(folder: string): Promise<void> {
  const inputs = await buildBundles(folder);
  const { buildPage } = await import('./build-page.js');
  const pageInputs = await buildPage(folder, (used) => licencesOf(root, used));
  writeFileSync(join(folder, 'LICENCES.txt'), licencesOf(root, [...inputs, ...pageInputs]));
}

async function buildScript(entry: string, outfile: string, banner = ''): Promise<Metafile> {
  const entryPoints = [from(entry)];
  const options = { entryPoints, format: 'cjs', outfile, banner: { js: banner } } as const;
  const { metafile } = await build({ ...shared, ...options, metafile: true });
  return metafile;
}

/**
 * Shared out over files by what is loaded together, which only works with modules; then each is turned into CommonJS,
 * which starts sooner and whose compiled code can be kept.
 */
async function buildProgram(folder: string): Promise<Metafile> {
  const { outputFiles, metafile } = await build({
    ...shared,
    metafile: true,
    entryPoints: ['main', 'draw-thread', 'print-thread'].map((name) => from(`src/cli/${name}.ts`)),
    define: { ...shared.define, bundleFolder: '__dirname' },
    plugins: [...(shared.plugins ?? []), pastIndex(from('src/index.ts'))],
    format: 'esm',
    splitting: true,
    minify: false,
    write: false,
    outdir: folder,
    outExtension: { '.js': '.cjs' },
  });
  checkOrder(metafile);
  for (const { path, text } of outputFiles) {
    const { code } = await transform(withConstants(text), {
      format: 'cjs',
      platform: 'node',
      target: 'node20',
      minify: true,
      supported: { 'dynamic-import': false },
    });
    writeFileSync(
      join(folder, basename(path)),
      `${code.trimEnd()}module.exports={...module.exports};\n`,
    );
  }
  return metafile;
}

/**
 * What a bundle takes from another becomes constants of its own, and at its end the exports become plain values: else every use
 * of them, a hundred thousand in a pack, would go through two functions.
 */
function withConstants(text: string): string {
  return text.replace(
    /^import \{([^}]*)\} from ("\.\/[^"]+");$/gm,
    (_, names: string, file: string) => {
      return `const {${names.replaceAll(' as ', ': ')}} = require(${file});`;
    },
  );
}

/** Constants are there only if the bundle that they come from has run before. */
function checkOrder({ outputs }: Metafile): void {
  const done = new Set<string>();
  const visit = (name: string, above: readonly string[]): void => {
    if (above.includes(name))
      throw new Error(`bundles import one another: ${[...above, name].join(', ')}`);
    if (done.has(name)) return;
    const statements = outputs[name]!.imports.filter(({ kind }) => kind === 'import-statement');
    for (const { path } of statements) if (path in outputs) visit(path, [...above, name]);
    done.add(name);
  };
  for (const name of Object.keys(outputs)) visit(name, []);
}

async function buildLibrary(outdir: string): Promise<Metafile> {
  const entryPoints = [from('src/index.ts')];
  // what is CommonJS in a bundle asks for built-in modules in its own way
  const banner = `import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);`;
  const { metafile } = await build({
    ...shared,
    metafile: true,
    entryPoints,
    outdir,
    format: 'esm',
    splitting: true,
    chunkNames: 'library/[name]-[hash]',
    banner: { js: banner },
  });
  return metafile;
}

const exampleSpec =
  'vessel: cask\nunits: mm\nheight: 945\nbilge: 678\nends: 572\nstaves: { count: 28 }\n';

/** Runs the commonest commands once; the one that needs the least of what they share comes first. */
async function keepCompiled(folder: string): Promise<void> {
  const scratch = mkdtempSync(join(tmpdir(), 'staveloft-build-'));
  const keeper = join(scratch, 'keep-compiled.cjs');
  const draw = ['draw', '-', '--out', join(scratch, 'out'), '--quiet'];
  try {
    await buildScript('scripts/keep-compiled.ts', keeper);
    for (const command of [['figures', '-'], draw, ['prove', join(scratch, 'out')]])
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
  const parts = [compiler, '-p', from('tsconfig.types.json')];
  execFileSync(process.execPath, parts, { stdio: 'inherit' });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  if (process.argv.includes('--quick')) {
    await buildBundles(from('dist'));
  } else {
    await buildAll(from('dist'));
    buildTypes();
  }
}
