/** Files in one go or in shares: what is read back is what was written. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { writeNew } from '../../src/cli/write-new.js';

const folder = mkdtempSync(join(tmpdir(), 'staveloft-write-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);

it.each([
  ['nothing', ''],
  ['a word', 'stave'],
  ['just as much as goes at once', 'x'.repeat(1 << 16)],
  ['a letter more', `${'x'.repeat(1 << 16)}y`],
  ['several shares', Array.from({ length: 50_000 }, (_, i) => `${i}\n`).join('')],
  ['letters beyond ASCII', 'Fässer '.repeat(20_000)],
])('text: %s', (name, text) => {
  writeNew(at(name), text);
  expect(readFileSync(at(name), 'utf8')).toBe(text);
});

it('bytes', () => {
  const bytes = Uint8Array.from({ length: 300 }, (_, i) => i % 256);
  writeNew(at('bytes'), bytes);
  expect(new Uint8Array(readFileSync(at('bytes')))).toEqual(bytes);
});

it.each(['ascii', 'ß'])('never in place of what is there: %s', (text) => {
  writeFileSync(at('there'), 'mine');
  expect(() => writeNew(at('there'), text)).toThrow(/EEXIST/);
  expect(readFileSync(at('there'), 'utf8')).toBe('mine');
});
