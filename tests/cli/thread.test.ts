import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Thread } from '../../src/cli/thread.js';
import { root } from './workshop.js';

const home = mkdtempSync(join(tmpdir(), 'staveloft-thread-'));
const script = join(home, 'doubles.cjs');

/** Doubles what it is asked, the first after a while; ends at a negative number; knows which bundle it should be. */
beforeAll(() =>
  writeFileSync(
    script,
    `const { parentPort, workerData } = require('node:worker_threads');
     let before = new Promise((resolve) => setTimeout(resolve, 100));
     parentPort.on('message', (n) => {
       if (n < 0) throw new Error('less than nothing');
       before = before.then(() => parentPort.postMessage([workerData, 2 * n]));
     });`,
  ),
);
afterAll(() => rmSync(home, { recursive: true }));

test('answers in the order in which it is asked', async () => {
  const thread = new Thread<number, [string, number]>(script, 'a bundle');
  const answers = await Promise.all([1, 2, 3].map((n) => thread.ask(n)));
  expect(answers).toEqual([
    ['a bundle', 2],
    ['a bundle', 4],
    ['a bundle', 6],
  ]);
  await thread.end();
});

test('once it has failed, so does all that it was and is asked', async () => {
  const thread = new Thread<number, [string, number]>(script, 'a bundle');
  const asked = [1, -1, 2].map((n) => thread.ask(n));
  for (const each of asked) await expect(each).rejects.toThrow('less than nothing');
  await expect(thread.ask(3)).rejects.toThrow('less than nothing');
});

test('one that is asked nothing more lets the program end', () => {
  const library = join(home, 'thread.cjs');
  const entryPoints = [join(root, 'src/cli/thread.ts')];
  buildSync({ entryPoints, outfile: library, bundle: true, platform: 'node' });
  const program = join(home, 'program.cjs');
  writeFileSync(
    program,
    `const { Thread } = require(${JSON.stringify(library)});
     new Thread(${JSON.stringify(script)}, 'idle');
     new Thread(${JSON.stringify(script)}, 'busy').ask(4).then(([, n]) => console.log(n));`,
  );
  const said = execFileSync(process.execPath, [program], { encoding: 'utf8', timeout: 20_000 });
  expect(said).toBe('8\n');
});
