/** Files that are no specs, or are made to do harm: each is refused with one clear message. */
import { describe, expect, it } from 'vitest';
import { codesOf, messagesOf, specOf, wineCask, withLine } from './texts.js';
import { readSpec } from '../../src/spec/read.js';

describe('a file that is no spec', () => {
  it.each([
    ['empty', '', 'file-empty'],
    ['blank', ' \n\n\t\n', 'file-empty'],
    ['nothing but comments', '# a\n# b\n', 'file-empty'],
    ['a document mark alone', '---\n', 'file-empty'],
    ['a null', 'null\n', 'file-empty'],
    ['a byte order mark alone', '\ufeff', 'file-empty'],
    ['a single word', 'cask\n', 'root-not-keys'],
    ['a list', '- vessel: cask\n', 'root-not-keys'],
    ['a picture', '\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'not-a-text-file'],
    ['UTF-16', 'v\0e\0s\0s\0e\0l\0', 'not-a-text-file'],
    ['bytes that are not UTF-8', 'title: K\ufffdfer\n', 'not-a-text-file'],
  ])('%s', (_, text, code) => {
    expect(codesOf(text)).toEqual([code]);
    expect(readSpec(text).spec).toBeNull();
  });

  it('says where the first byte is that is not text', () => {
    expect(messagesOf('vessel: cask\ntitle: K\ufffdfer\n')[0]).toMatchObject({
      line: 2,
      column: 9,
    });
  });
});

describe('a file made to do harm', () => {
  const nested = (n: number) => '['.repeat(n) + ']'.repeat(n);
  it.each([
    ['a quarter of a million characters and one', `#${' '.repeat(256 * 1024)}`, 'file-too-big'],
    ['thousands of lines', 'height: 945\n'.repeat(20_000), 'file-too-long'],
    ['thousands of open brackets', '['.repeat(200_000), 'file-too-long'],
    ['brackets just under the limit of words', nested(9_000), 'nested-too-deep'],
    ['deep brackets', `title: ${nested(40)}`, 'nested-too-deep'],
    ['deep braces', `${'{ a: '.repeat(30)}1${' }'.repeat(30)}`, 'nested-too-deep'],
    [
      'deep lines',
      Array.from({ length: 100 }, (_, i) => `${' '.repeat(i)}a:`).join('\n'),
      'nested-too-deep',
    ],
    ['deep dashes', '- '.repeat(500), 'nested-too-deep'],
    ['deep question marks', '? '.repeat(500), 'nested-too-deep'],
    ['a second document', `${wineCask}---\n${wineCask}`, 'several-documents'],
    ['an old version of YAML', `%YAML 1.1\n---\n${wineCask}`, 'yaml-directive'],
  ])('%s is refused', (_, text, code) => {
    expect(codesOf(text)).toEqual([code]);
  });

  it('cannot multiply itself by references', () => {
    const bomb = `a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\n${wineCask}`;
    expect(new Set(codesOf(bomb))).toEqual(new Set(['yaml-anchor', 'yaml-alias', 'unknown-key']));
  });

  it('has a reference refused once, and not what it leaves out as well', () => {
    const text = withLine(wineCask.replace('945', '&h 945'), 'bilge: *h');
    expect(messagesOf(text).map(({ code, line }) => [code, line])).toEqual([
      ['yaml-anchor', 4],
      ['yaml-alias', 7],
    ]);
  });

  it.each([
    ['height: !!str 945', 'yaml-tag'],
    ['height: !!float 945', 'yaml-tag'],
    ['title: !!js/function "x"', 'yaml-tag'],
    ['heads: !thing { boards: 6 }', 'yaml-tag'],
    ['<<: { height: 945 }', 'merge-key'],
    ['? [a, b]\n: 3', 'key-not-text'],
    [': 3', 'key-not-text'],
  ])('cannot use %s', (line, code) => {
    expect(codesOf(withLine(wineCask, line))).toContain(code);
    expect(codesOf(withLine(wineCask, line))).toHaveLength(1);
  });

  it.each([
    '__proto__: { units: in }',
    'constructor: 1',
    'toString: 1',
    'heads: { __proto__: { boards: 3 } }',
    'hoops: [{ __proto__: 1, name: a, offset: 1, width: 9 }]',
  ])('cannot reach the program by %s', (line) => {
    expect(codesOf(withLine(wineCask, line))).toEqual(['unknown-key']);
    expect(({} as Record<string, unknown>)['boards']).toBeUndefined();
  });

  it('shows its control characters as codes', () => {
    const [message] = messagesOf(withLine(wineCask, '"\\e[31mred": "\\u202Ex"'));
    expect(`${message!.key} ${message!.found} ${message!.text}`).not.toMatch(/[\u001b\u202e]/);
    expect(message!.key).toBe('\\u001b[31mred');
  });

  it('gets a limited number of messages', () => {
    const many = Array.from({ length: 900 }, (_, i) => `key${i}: 1`).join('\n');
    const messages = messagesOf(`${wineCask}${many}`);
    expect(messages).toHaveLength(201);
    expect(messages.some(({ code, found }) => code === 'more-issues' && found === '700 more')).toBe(
      true,
    );
  });
});

describe('YAML that is broken', () => {
  it.each([
    ['a tab as indent', 'staves:\n\tcount: 28', 2],
    ['a quote left open, at the end', 'title: "Wine cask\n', 2],
    ['a bracket left open', 'staves: { count: 28\nhoops: []\n', 2],
    ['a colon too many', 'vessel: cask\ntitle: Cask: large\n', 2],
    ['a key without its colon', 'vessel: cask\nheight 945\nbilge: 678\n', 2],
    ['uneven indents', 'staves:\n   count: 28\n  trim: 3\n', 3],
  ])('%s is named with its line', (_, text, line) => {
    const messages = messagesOf(text);
    expect(messages.every(({ code }) => code === 'yaml-syntax')).toBe(true);
    expect(messages.map((message) => message.line)).toContain(line);
  });
});

describe('files from other systems', () => {
  it('may have a byte order mark and the line ends of Windows', () => {
    expect(specOf(`\ufeff${wineCask.replaceAll('\n', '\r\n')}`)).toEqual(specOf(wineCask));
  });
  it('may start with a document mark and end without a line end', () => {
    expect(specOf(`---\n${wineCask.trimEnd()}`)).toEqual(specOf(wineCask));
  });
});
