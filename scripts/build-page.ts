/**
 * Builds the workshop page twice from the same files: `page/`, which `staveloft page` serves, in parts that are fetched when
 * they are first needed; and `staveloft.html`, all of it in one file, which needs no server and no network.
 */
import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type InlineConfig, type Plugin, type Rolldown } from 'vite';
import { standIn } from './build-plugins.js';

type File = Rolldown.OutputChunk | Rolldown.OutputAsset;

const root = fileURLToPath(new URL('../src/page', import.meta.url));

/** What pdfkit brings for fonts and pictures that we never hand to it. */
const unused = /^(fontkit|linebreak|png-js|@noble\/ciphers\/aes)$/;
const withoutUnused: Plugin = {
  name: 'without-unused',
  enforce: 'pre',
  resolveId: (name) => (unused.test(name) ? `\0without:${name}` : null),
  load: (name) => (name.startsWith('\0without:') ? standIn(name.slice(9)) : null),
};

const shared: InlineConfig = {
  root,
  plugins: [withoutUnused],
  base: './',
  configFile: false,
  logLevel: 'warn',
};

const output = {
  target: 'es2022',
  modulePreload: false,
  emptyOutDir: true,
  reportCompressedSize: false,
  chunkSizeWarningLimit: 2000,
} as const;

/**
 * Writes `page/` and `staveloft.html` into `folder`. Answers with the files that they are made of; `licencesOf` gives the text
 * that goes with those, which the single file carries in itself.
 */
export async function buildPage(
  folder: string,
  licencesOf: (inputs: readonly string[]) => string,
): Promise<string[]> {
  await build({ ...shared, build: { ...output, outDir: join(folder, 'page') } });
  const inOnePiece = { output: { codeSplitting: false } } as const;
  const built = await build({
    ...shared,
    // helpers run it as a plain script, which may not have `import.meta`
    base: '/',
    define: { 'import.meta.url': 'location.href', 'import.meta.resolve': 'undefined' },
    build: { ...output, write: false, rolldownOptions: inOnePiece },
  });
  const files = (Array.isArray(built) ? built : [built]).flatMap((each) =>
    'output' in each ? each.output : [],
  );
  const inputs = files.flatMap((file) => (file.type === 'chunk' ? file.moduleIds : []));
  const own = inputs.map((name) => name.replace(/^\0|\?.*$/g, ''));
  writeFileSync(join(folder, 'staveloft.html'), singleFile(files, licencesOf(own)));
  return own;
}

/** The page with its script and its style in it, and a rule for the browser to load nothing else. */
function singleFile(files: readonly File[], licences: string): string {
  const html = textOf(files, /\.html$/);
  const style = textOf(files, /\.css$/);
  const script = inert(textOf(files, /\.js$/));
  const rules = [
    "default-src 'none'",
    `script-src 'sha256-${hash(script)}' blob:`,
    `style-src 'sha256-${hash(style)}'`,
    'img-src data: blob:',
    'worker-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return html
    .replace(/<script[^>]*src=[^>]*><\/script>/, '')
    .replace(/<link[^>]*stylesheet[^>]*>/, '')
    .replace(
      '<meta charset="utf-8" />',
      (found) => `${found}<meta http-equiv="Content-Security-Policy" content="${rules}" />`,
    )
    .replace('</head>', () => `<style>${style}</style></head>`)
    .replace(
      '</body>',
      () =>
        `<script type="module">${script}</script><script type="text/plain" id="licences">${inert(licences)}</script></body>`,
    );
}

function textOf(files: readonly File[], name: RegExp): string {
  const found = files.filter(({ fileName }) => name.test(fileName));
  if (found.length !== 1) throw new Error(`the page is built into ${found.length} files ${name}`);
  const [file] = found;
  return file!.type === 'chunk' ? file!.code : String(file!.source);
}

/** Nothing in it ends the element that it stands in. */
const inert = (text: string): string => text.replaceAll('</script', '<\\/script');

const hash = (text: string): string => createHash('sha256').update(text).digest('base64');
