/**
 * Are the tests awake? Plants one mistake at a time in a scratch copy of the source and runs the tests that should notice.
 * A mistake is killed when a test fails by its own judgement; a source that no longer loads counts for nothing. Prints a
 * table, and exits 1 if any mistake survives.
 */
import { spawn } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { mutations, type Mutation } from './mutations.js';

const root = join(import.meta.dirname, '..');
const atOnce = 2;
/** Vessel and capacity are judged by the tests of both; drawings by their own. */
const modelTests = ['tests/vessel/', 'tests/capacity/'];
const drawingTests = ['tests/pieces/'];
/** The quick ones: the search itself takes minutes. */
const rackTests = [
  'closing',
  'grid-walk',
  'kinds',
  'least-deviation',
  'partings',
  'planing',
  'step',
  'stock',
  'stray-bound',
  'union-grid',
  'union-promise',
  'verify',
].map((name) => `tests/rack/${name}.test.ts`);
const setTests = ['tests/sets/'];
const sheetTests = ['tests/sheets/tiles.test.ts'];
const writingTests = ['tests/cli/write-whole.test.ts'];
const fontTests = ['tests/writers/pdf-face.test.ts'];
/** Those of the page that know no files and no other program. */
const pageTests = ['rack/typed-widths', 'state/', 'vessel/', 'view3d/'].map(
  (part) => `tests/page/${part}`,
);
/** Tests of one folder take helpers from others. */
const copied = ['src', 'templates', 'schemas', 'fonts', 'tests', 'package.json', 'tsconfig.json'];

interface Outcome {
  readonly mutation: Mutation | null;
  readonly verdict: 'killed' | 'survived' | 'broke';
  /** name of the first test that failed, or what went wrong */
  readonly by: string;
  readonly seconds: number;
}

function testsOf({ file }: Mutation): string[] {
  if (file.startsWith('src/pieces/')) return drawingTests;
  if (file.startsWith('src/rack/')) return rackTests;
  if (file.startsWith('src/page/')) return pageTests;
  if (file.startsWith('src/cli/')) return writingTests;
  if (file.startsWith('src/writers/')) return fontTests;
  if (file.startsWith('src/sheets/')) return sheetTests;
  return file.startsWith('src/sets/') ? setTests : modelTests;
}

/** All of them, or those in whose file or name one of the words of the command line occurs. */
function wanted(words: readonly string[]): Mutation[] {
  return mutations.filter(
    ({ name, file }) =>
      words.length === 0 || words.some((word) => `${file} ${name}`.includes(word)),
  );
}

/** Mistakes whose text does not occur exactly once, which would plant nothing or too much. */
function misplaced(): string[] {
  return mutations.flatMap(({ name, file, text }) => {
    const times = readFileSync(join(root, file), 'utf8').split(text).length - 1;
    return times === 1 ? [] : [`${name}: its text occurs ${times} times in ${file}`];
  });
}

function makeScratch(): string {
  const scratch = mkdtempSync(join(tmpdir(), 'mutate-'));
  for (const part of copied) cpSync(join(root, part), join(scratch, part), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(scratch, 'node_modules'), 'junction');
  const config = `export default { cacheDir: '.cache', test: { include: ['tests/**/*.test.ts'], testTimeout: 120_000, hookTimeout: 120_000 } };`;
  writeFileSync(join(scratch, 'vitest.config.js'), config);
  return scratch;
}

/** Exit code of the tests of some folders, and the first failure by a test's own judgement. */
async function runTests(
  scratch: string,
  folders: string[],
): Promise<{ code: number; failed: string | null; stopped: string }> {
  const report = join(scratch, 'report.json');
  rmSync(report, { force: true });
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
  const options = [
    '--bail=1',
    '--maxWorkers=1',
    '--no-isolate',
    '--reporter=json',
    `--outputFile=${report}`,
  ];
  const child = spawn(process.execPath, [vitest, 'run', ...options, ...folders], {
    cwd: scratch,
    stdio: 'ignore',
  });
  const code = await new Promise<number>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (status) => {
      resolve(status ?? -1);
    });
  });
  return { code, failed: firstFailure(report), stopped: stoppedFile(report) };
}

interface Report {
  readonly testResults: readonly {
    readonly status: string;
    readonly name: string;
    readonly message: string;
    readonly assertionResults: readonly { readonly status: string; readonly fullName: string }[];
  }[];
}

function reportOf(file: string): Report {
  return existsSync(file)
    ? (JSON.parse(readFileSync(file, 'utf8')) as Report)
    : { testResults: [] };
}

function firstFailure(file: string): string | null {
  const { testResults } = reportOf(file);
  const results = testResults.flatMap(({ assertionResults }) => assertionResults);
  return results.find(({ status }) => status === 'failed')?.fullName ?? null;
}

/** What stopped a file of tests before any of its tests could fail, for whoever has to find out why. */
function stoppedFile(file: string): string {
  const stopped = reportOf(file).testResults.find(
    ({ status, message }) => status === 'failed' && message !== '',
  );
  return stopped
    ? `${basename(stopped.name)}: ${stopped.message.split('\n')[0] ?? ''}`
    : 'no report';
}

const chosen = wanted(process.argv.slice(2));

/** With null: the source as it is, whose tests must pass, or no failure below would mean anything. */
async function attempt(scratch: string, mutation: Mutation | null): Promise<Outcome> {
  const start = performance.now();
  const original = mutation && readFileSync(join(scratch, mutation.file), 'utf8');
  if (mutation && original !== null)
    writeFileSync(
      join(scratch, mutation.file),
      original.replace(mutation.text, () => mutation.replacement),
    );
  const folders = mutation ? testsOf(mutation) : [...new Set(chosen.flatMap(testsOf))];
  const { code, failed, stopped } = await runTests(scratch, folders);
  if (mutation && original !== null) writeFileSync(join(scratch, mutation.file), original);
  const seconds = (performance.now() - start) / 1000;
  if (failed !== null) return { mutation, verdict: 'killed', by: failed, seconds };
  if (code === 0) return { mutation, verdict: 'survived', by: '', seconds };
  const by = `the tests stopped with ${code}, and none failed (${stopped})`;
  return { mutation, verdict: 'broke', by, seconds };
}

function print({ mutation, verdict, by, seconds }: Outcome): void {
  const name = mutation?.name ?? 'nothing changed';
  const shortened = verdict === 'killed' && by.length > 70 ? `${by.slice(0, 69)}…` : by;
  console.log(
    `${verdict.padEnd(9)} ${name.padEnd(50)} ${seconds.toFixed(1).padStart(5)} s  ${shortened}`,
  );
}

/** Takes mistakes from the list until it is empty; the source as it is goes first. */
async function work(queue: (Mutation | null)[], outcomes: Outcome[]): Promise<void> {
  const scratch = makeScratch();
  try {
    for (let next = queue.shift(); next !== undefined; next = queue.shift()) {
      const outcome = await attempt(scratch, next);
      outcomes.push(outcome);
      print(outcome);
      if (next === null && outcome.verdict !== 'survived') queue.length = 0;
    }
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

async function main(): Promise<number> {
  const slips = misplaced();
  if (slips.length > 0) {
    console.error(slips.join('\n'));
    return 1;
  }
  const outcomes: Outcome[] = [];
  const queue = [null, ...chosen];
  await Promise.all(Array.from({ length: atOnce }, () => work(queue, outcomes)));
  const unchanged = outcomes.find(({ mutation }) => mutation === null);
  if (unchanged?.verdict !== 'survived') {
    console.error('The tests fail without any mutation: mend them first.');
    return 1;
  }
  const killed = outcomes.filter(({ verdict }) => verdict === 'killed').length;
  const survived = chosen.length - killed;
  console.log(`mutations: ${killed} killed, ${survived} survived`);
  return survived === 0 ? 0 : 1;
}

process.exitCode = await main();
