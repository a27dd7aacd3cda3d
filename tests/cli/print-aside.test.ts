/** When it pays to print on a thread of its own. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { printAside } from '../../src/cli/print-aside.js';

const home = mkdtempSync(join(tmpdir(), 'staveloft-aside-'));
const script = join(home, 'idle.cjs');
writeFileSync(script, '');
afterAll(() => rmSync(home, { recursive: true }));

test.each([
  ['another command', ['figures', 'draw']],
  ['a few pieces', ['draw', 'a.yaml', '--out', 'a', '--pieces', 'stave']],
  ['the same, written together', ['draw', 'a.yaml', '--out', 'a', '--pieces=stave']],
  ['some formats', ['draw', 'a.yaml', '--out', 'a', '--formats', 'svg']],
  ['help', ['draw', '-h']],
  ['nothing', []],
])('not for %s', (_what, argv) => {
  expect(printAside(argv, script)).toBeNull();
});

test.skipIf(availableParallelism() === 1)('for a whole pack', async () => {
  const aside = printAside(['draw', 'a.yaml', '--out', 'a', '--paper', 'a3'], script);
  expect(aside).not.toBeNull();
  await aside!.end();
});
