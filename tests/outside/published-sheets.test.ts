/**
 * ISO 7200:2004, title block, mandatory fields (seen in a secondary source): legal owner, identification number, date of
 * issue, sheet number, title, approval person, creator, document type. pdftotext must find what the spec says on every
 * full-size sheet. ISO 5457 allows a block at most 180 mm wide (from memory).
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { dejaVu, invented, renderedPdf } from '../published/product.js';

const fields = {
  owner: 'Ownerfield',
  number: 'Numberfield-17',
  date: '2001-02-03',
  creator: 'Creatorfield',
  approved: 'Approvedfield',
};
const spec = `${invented}\nsheet: ${JSON.stringify(fields)}\n`;

describe('ISO 7200 fields on a full-size sheet', () => {
  const folder = mkdtempSync(join(tmpdir(), 'published-'));
  let text = '';
  let words: { text: string; x: number }[] = [];

  beforeAll(async () => {
    const file = join(folder, 'head.pdf');
    writeFileSync(file, await renderedPdf(spec, 'head', 'full', dejaVu));
    const run = (...options: string[]): string =>
      execFileSync('pdftotext', [...options, file, '-'], { encoding: 'utf8' });
    text = run('-layout');
    words = [...run('-bbox').matchAll(/<word xMin="([\d.]+)"[^>]*>([^<]*)</g)].map(
      ([, x, word]) => ({ text: word ?? '', x: (Number(x) * 25.4) / 72 }),
    );
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test.each(Object.entries(fields))('%s', (_, value) => {
    expect(text).toContain(value);
  });

  test('title, document type and sheet number', () => {
    expect(text).toContain('Invented');
    expect(text.toLowerCase()).toMatch(/pattern|drawing/);
    expect(text).toMatch(/\b1\s*(\/|of)\s*\d+/);
  });

  test('the fields stand within 180 mm of each other', () => {
    const places = Object.values(fields).flatMap((value) =>
      words.filter((word) => word.text === value).map((word) => word.x),
    );
    expect(places.length).toBeGreaterThanOrEqual(5);
    expect(Math.max(...places) - Math.min(...places)).toBeLessThan(180);
  });
});
