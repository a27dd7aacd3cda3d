import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { outOfDate, unpacked } from '../scripts/samples.js';

test('out-samples are what draw makes now (npm run samples makes them anew)', async () => {
  expect(await outOfDate()).toEqual([]);
});

test('a PDF that only packs its streams otherwise is the same, one that says something else is not', () => {
  const file = fileURLToPath(new URL('../out-samples/bucket/stave.pdf', import.meta.url));
  expect(unpacked(readFileSync(join(file)))).toContain(' Tm [<');
  const pdf = (content: string, level: number): Buffer => {
    const packed = deflateSync(content.repeat(50), { level });
    const head = `%PDF-1.3\n1 0 obj\n<< /Length ${packed.length} >>\nstream\n`;
    const tail = `\nendstream\nendobj\nxref\n${packed.length}`;
    return Buffer.concat([Buffer.from(head), packed, Buffer.from(tail)]);
  };
  expect(pdf('0 0 m 9 9 l S\n', 1).equals(pdf('0 0 m 9 9 l S\n', 9))).toBe(false);
  expect(unpacked(pdf('0 0 m 9 9 l S\n', 1))).toBe(unpacked(pdf('0 0 m 9 9 l S\n', 9)));
  expect(unpacked(pdf('0 0 m 9 9 l S\n', 9))).not.toBe(unpacked(pdf('0 0 m 9 8 l S\n', 9)));
});
