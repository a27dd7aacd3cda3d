import { describe, expect, it } from 'vitest';
import { readCsv } from '../../src/rack/csv.js';

const texts = (text: string): string[][] =>
  readCsv(text).rows.map((row) => row.map((field) => field.text));

describe('delimited text', () => {
  it('is parted at the delimiter that the heading has', () => {
    expect(texts('a,b\n1,2')).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
    expect(texts('a;b\n1,5;2')).toEqual([
      ['a', 'b'],
      ['1,5', '2'],
    ]);
    expect(texts('a\tb\n1,5\t2;3')).toEqual([
      ['a', 'b'],
      ['1,5', '2;3'],
    ]);
  });

  it('takes any line ending, blank lines and a byte order mark', () => {
    expect(texts('\uFEFFa,b\r\n\r\n1,2\r3,4\n , \n')).toEqual([
      ['a', 'b'],
      ['1', '2'],
      ['3', '4'],
    ]);
  });

  // RFC 4180 (2005), section 2, rules 5 to 7, with its own example
  it('keeps delimiters, line breaks and doubled quotes inside quotes', () => {
    expect(texts('x,y,z\n"aaa","b\r\nbb","ccc"\n"a""a",,"1,5"')).toEqual([
      ['x', 'y', 'z'],
      ['aaa', 'b\nbb', 'ccc'],
      ['a"a', '', '1,5'],
    ]);
  });

  it('knows where each field begins, after a line break in quotes too', () => {
    const { rows } = readCsv('a,b\n"x\ny",2\nlast,3');
    expect(rows[1]![1]).toEqual({ text: '2', line: 3, column: 4 });
    expect(rows[2]![0]).toEqual({ text: 'last', line: 4, column: 1 });
  });

  it('says where a quote is left open or text follows one', () => {
    expect(readCsv('a,b\n1,"2').faults).toEqual([{ code: 'quote-open', line: 2, column: 3 }]);
    expect(readCsv('a,b\n"1"x,2').faults).toEqual([{ code: 'quote-followed', line: 2, column: 1 }]);
  });

  it('is empty without text', () => {
    expect(readCsv('').rows).toEqual([]);
    expect(readCsv('\n \n').rows).toEqual([]);
  });
});
