import { expect, test } from 'vitest';
import { toCsv } from '../../src/writers/csv.js';

test('rows end with CRLF, and plain cells stay as they are', () => {
  expect(
    toCsv([
      ['mark', 'width'],
      ['A1', '71.5'],
    ]),
  ).toBe('mark,width\r\nA1,71.5\r\n');
});

/** RFC 4180, section 2, rules 5 to 7. */
test.each([
  ['a,b', '"a,b"'],
  ['say "so"', '"say ""so"""'],
  ['two\nlines', '"two\nlines"'],
  ['two\r\nlines', '"two\r\nlines"'],
  [' spaced', '" spaced"'],
  ['a;b', '"a;b"'],
])('%j is quoted', (text, cell) => {
  expect(toCsv([[text]])).toBe(`${cell}\r\n`);
});

test.each([
  ['=1+1', "'=1+1"],
  ['=cmd|"/c calc"!A0', `"'=cmd|""/c calc""!A0"`],
  ['@SUM(A1)', "'@SUM(A1)"],
  ['+A1', "'+A1"],
  ['-A1', "'-A1"],
  ['\t=1', `"'\t=1"`],
])('%j is no formula for a spreadsheet', (text, cell) => {
  expect(toCsv([[text]])).toBe(`${cell}\r\n`);
});

test.each(['-5', '+0.25', '-71,5'])('%j is a number and stays one', (text) => {
  expect(toCsv([[text]]).replaceAll('"', '')).toBe(`${text}\r\n`);
});
