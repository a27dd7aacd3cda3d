import fc from 'fast-check';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { readSpec } from '../../src/spec/read.js';
import { keysOf, writeSpec } from '../../src/spec/write.js';
import { anySpecText } from './arbitrary.js';
import { bucket, inchKeg, specOf, wineCask, withLine } from './texts.js';

const again = (text: string) => readSpec(writeSpec(specOf(text)));

describe('a spec written and read again', () => {
  it.each([
    ['a wine cask', wineCask],
    ['a bucket, without a bung', bucket],
    ['a keg in inches', inchKeg],
    ['no hoops', withLine(wineCask, 'hoops: []')],
    [
      'heads that differ',
      withLine(wineCask, 'heads: { top: { widths: [300, 300] }, bottom: { thickness: 24 } }'),
    ],
    ['a mixed set', withLine(inchKeg, `staves: { widths: [${'1 31/32, '.repeat(15)}2.0301] }`)],
    ['odd angles', withLine(wineCask, 'chime: { bevelDegrees: 33.333333 }')],
    [
      'texts that look like something else',
      withLine(
        wineCask,
        'sheet: { owner: "null", number: "007", date: 2026-01-05, creator: "# x", approved: "*a: &b" }',
      ),
    ],
    ['markup for a title', withLine(wineCask, 'title: "<b>\\"Cask\\"</b> \'& more\'"')],
    ['a long title', withLine(wineCask, `title: ${'long '.repeat(23)}`)],
  ])('is the same: %s', (_, text) => {
    const read = again(text);
    expect(read.issues).toEqual([]);
    expect(read.spec).toEqual(specOf(text));
  });

  it('is the same for thousands of specs', () => {
    fc.assert(
      fc.property(anySpecText, (text) => {
        const { spec } = readSpec(text);
        if (!spec) return;
        const read = readSpec(writeSpec(spec));
        expect(read.issues).toEqual([]);
        expect(read.spec).toEqual(spec);
        expect(writeSpec(read.spec!)).toBe(writeSpec(spec));
      }),
      { seed: 5, numRuns: 800 },
    );
  });
});

/** All values with the keys that lead to them. */
const leaves = (value: unknown, key = ''): [key: string, value: unknown][] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([name, each]) => leaves(each, `${key}.${name}`))
    : [[key, value]];

describe('the keys of a spec', () => {
  it.each([wineCask, bucket, inchKeg])('are those of the written file, in its words', (text) => {
    const spec = specOf(text);
    const file = parseDocument(writeSpec(spec), { schema: 'failsafe' }).toJS() as unknown;
    const keys = leaves(keysOf(spec)).map(([key, value]) => [key, String(value)]);
    expect(keys.length).toBeGreaterThan(30);
    expect(keys).toEqual(leaves(file));
  });
});

describe('the written file', () => {
  it('has every key, in the order of the guide, one line for what belongs together', () => {
    const text = writeSpec(specOf(wineCask));
    expect(
      text
        .split('\n')
        .filter((line) => !line.startsWith(' '))
        .map((line) => line.split(':')[0]),
    ).toEqual([
      'vessel',
      'title',
      'units',
      'height',
      'bilge',
      'ends',
      'profile',
      'staves',
      'chime',
      'howel',
      'heads',
      'hoops',
      'bung',
      'sheet',
      '',
    ]);
    expect(text).toContain('  croze: { inset: 60, depth: 5, width: 6 }\n');
  });

  it('writes inches as fractions where they are some', () => {
    const text = writeSpec(specOf(inchKeg));
    expect(text).toContain('height: 13 1/2\n');
    expect(text).toContain('ends: 8 5/8\n');
  });

  it.each(readdirSync('templates').filter((name) => name.endsWith('.yaml')))(
    'says the same as templates/%s',
    (name) => {
      const text = readFileSync(`templates/${name}`, 'utf8');
      expect(again(text).spec).toEqual(specOf(text));
    },
  );
});
