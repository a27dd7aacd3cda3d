/**
 * Makes out-samples/: what `draw` makes of some templates and `match` of the invented rack. `npm run samples` writes them anew; with `-- --check` it
 * compares instead. They are never edited by hand; look at the difference before you commit it.
 */
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
} from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { inflateSync } from 'node:zlib';
import { run } from '../src/cli/run.js';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = join(root, 'out-samples');
const font = join(root, 'fonts/DejaVuSans.ttf');

/** template and pieces; enough to show each kind, and no more than a repository likes to carry */
const samples: readonly (readonly [template: string, pieces: string])[] = [
  ['wine-cask-225', 'stave,head,head-edge,end-gauge,job-sheet'],
  ['bucket', 'stave,head,head-edge'],
];

/** Its pictures are taken by a script of their own, `page-pictures.ts`, and no two are alike to the byte. */
const leftAlone = 'page';

/** Of a set all but its staves' patterns, which would be most of the repository. */
const matched = ['set-1.svg', 'set-1.pdf', 'set-1/spec.yaml', 'sets.csv'];

async function make(into: string): Promise<void> {
  for (const [template, pieces] of samples) {
    const out = join(into, template);
    await done(['draw', `templates/${template}.yaml`, '--out', out, '--pieces', pieces]);
  }
  const scratch = mkdtempSync(join(tmpdir(), 'staveloft-sets-'));
  try {
    const rack = ['--stock', 'templates/rack-invented.csv'];
    await done(['match', 'templates/wine-cask-225.yaml', ...rack, '--out', scratch]);
    for (const name of matched) {
      mkdirSync(dirname(join(into, 'match', name)), { recursive: true });
      copyFileSync(join(scratch, name), join(into, 'match', name));
    }
  } finally {
    rmSync(scratch, { recursive: true });
  }
}

async function done(argv: readonly string[]): Promise<void> {
  const said: string[] = [];
  const code = await run([...argv, '--replace', '--quiet'], {
    out: (text) => said.push(text),
    err: (text) => said.push(text),
    stdin: () => Promise.resolve(new Uint8Array()),
    folder: root,
    packageFolder: root,
    font: () => readFile(font),
    helper: null,
    printAside: null,
    show: () => {},
    untilStopped: () => Promise.resolve(),
    env: { STAVELOFT_TRACE: '1' },
  });
  if (code !== 0) throw new Error(`${argv.join(' ')}: ${said.join('')}`);
}

/** What is missing in out-samples, too much, or not as `draw` makes it now. */
export async function outOfDate(): Promise<string[]> {
  const fresh = mkdtempSync(join(tmpdir(), 'staveloft-samples-'));
  try {
    await make(fresh);
    const names = [...new Set([...filesOf(fresh), ...filesOf(folder)])].sort();
    return names.filter((name) => !alike(contentOf(fresh, name), contentOf(folder, name)));
  } finally {
    rmSync(fresh, { recursive: true });
  }
}

function filesOf(path: string): string[] {
  if (!existsSync(path)) return [];
  const entries = readdirSync(path, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile());
  return files
    .map((entry) => relative(path, join(entry.parentPath, entry.name)))
    .filter((name) => name.split(sep)[0] !== leftAlone);
}

function contentOf(path: string, name: string): Buffer | null {
  try {
    return readFileSync(join(path, name));
  } catch {
    return null;
  }
}

/** Byte for byte; but zlib packs the same differently on another processor, so PDFs may differ in that alone. */
function alike(a: Buffer | null, b: Buffer | null): boolean {
  if (!a || !b) return false;
  return a.equals(b) || (a.subarray(0, 5).toString() === '%PDF-' && unpacked(a) === unpacked(b));
}

/** A PDF with its streams unpacked, without what depends on their packed length. */
export function unpacked(pdf: Buffer): string {
  const text = pdf.toString('latin1');
  const body = text.slice(0, text.lastIndexOf('\nxref'));
  const streams = /\/Length \d+|stream\n([^]*?)\nendstream/g;
  return body.replace(streams, (found, packed?: string) => {
    if (packed === undefined) return '';
    try {
      return inflateSync(Buffer.from(packed, 'latin1')).toString('latin1');
    } catch {
      return found;
    }
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  if (process.argv.includes('--check')) {
    const names = await outOfDate();
    for (const name of names) console.log(`out of date: out-samples/${name}`);
    if (names.length > 0) process.exitCode = 1;
  } else {
    for (const name of filesOf(folder)) rmSync(join(folder, name));
    await make(folder);
  }
}
