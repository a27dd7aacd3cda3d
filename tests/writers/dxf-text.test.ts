import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tagsToText } from '../../src/writers/dxf-tags.js';
import { dxfText } from '../../src/writers/dxf-text.js';

test.each([
  ['Stave, 28 a cask', 'Stave, 28 a cask'],
  ['⌀ 556', '\\U+2300 556'],
  ['12,9° → ½', '12,9\\U+00B0 \\U+2192 \\U+00BD'],
  ['e\u0301', '\\U+00E9'],
  ['😀 cask', '? cask'],
  ['line\nbreak\ttab\0', 'linebreaktab'],
  ['\u202eturned\u202c', 'turned'],
  ['  padded  ', 'padded'],
  ['100%', '100%'],
  ['%%d', '% %d'],
  ['%%%', '% % %'],
  ['%%%%uold', '% % % %uold'],
  ['\\U+0041', '/U+0041'],
  ['\\\\P \\M+18140', '//P /M+18140'],
  ['^J', '^ J'],
  ['a^ b', 'a^  b'],
  ['\ud800', '\\U+FFFD'],
  ['', ''],
])('%j is written %j', (text, written) => {
  expect(dxfText(text)).toBe(written);
});

/** What a reader makes of a value: escapes, then control characters, then the codes of TEXT (DXF reference). */
function read(value: string): string {
  return value
    .replaceAll(/\\U\+([0-9A-F]{4})/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)))
    .replaceAll(/\^(.)/g, (_, letter: string) =>
      letter === ' ' ? '^' : String.fromCharCode(letter.charCodeAt(0) ^ 64),
    );
}

test('whatever the text, what is read is one line without codes, and reading it again changes nothing worse', () => {
  const parts = fc.constantFrom(
    '%',
    '%%',
    'c',
    '\\',
    'U+0025',
    'U+005C',
    'U+000A',
    '^',
    'J',
    'M',
    ' ',
    'ü',
    '\n',
  );
  fc.assert(
    fc.property(fc.array(parts, { maxLength: 24 }), (pieces) => {
      const written = dxfText(pieces.join(''));
      expect(written).toMatch(/^[\x20-\x7e]*$/);
      const seen = read(written);
      expect(seen).not.toMatch(/[\p{Cc}\\]|%%/u);
    }),
    { seed: 9, numRuns: 2000 },
  );
});

test('a value never grows longer than R2000 allows (2049 bytes), and no escape is cut in two', () => {
  const long = dxfText('ä'.repeat(5000));
  expect(long.length).toBeLessThanOrEqual(2049);
  expect(long).toMatch(/^(\\U\+00E4)+$/);
});

test('a value that skipped this is caught before it reaches the file', () => {
  expect(() => tagsToText([[1, 'two\nlines']])).toThrow(RangeError);
  expect(() => tagsToText([[1, 'ä']])).toThrow(RangeError);
  expect(tagsToText([[0, 'EOF']])).toBe('0\nEOF\n');
});
