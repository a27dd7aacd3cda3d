/** Lengths as people write them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDecimal, readLength, type Units } from '../../../src/page/state/read-length.js';

const mm = (text: string, units: Units = 'mm'): number | string => {
  const read = readLength(text, units);
  return 'mm' in read ? read.mm : read.problem;
};

describe('a length', () => {
  it.each([
    ['945', 945],
    [' 949,5 ', 949.5],
    ['949.5', 949.5],
    ['949.5mm', 949.5],
    ['95 cm', 950],
    ['0.95 m', 950],
    ['1 250', 1250],
    ['1 250,5', 1250.5],
    ['1.250,5', 1250.5],
    ['1,250.5', 1250.5],
    ["1'250", 1250],
    ['0,125', 0.125],
    ['-3', -3],
    ['−3,5', -3.5],
    ['.5', 0.5],
    ['5,', 5],
  ])('%j is so many millimetres', (text, expected) => {
    expect(mm(text)).toBeCloseTo(expected, 9);
  });

  it.each([
    ['37 3/8', 949.325],
    ['37-3/8', 949.325],
    ['37⅜', 949.325],
    ['37 3/8"', 949.325],
    ['37.375', 949.325],
    ['37,375', 949.325],
    ['37,375 in', 949.325],
    ['3/8', 9.525],
    ['½ in', 12.7],
    ['2 Zoll', 50.8],
    ['2 pouces', 50.8],
    ['95 cm', 950],
  ])('%j is so many inches where the file is in inches', (text, expected) => {
    expect(mm(text, 'in')).toBeCloseTo(expected, 9);
  });

  it('in eighths is inches in a file of millimetres too', () => {
    expect(readLength('37 3/8', 'mm')).toEqual({ mm: 949.325, written: 949.325 });
  });

  it('stays as typed where the file is in the same units', () => {
    expect(readLength('37-3/8', 'in')).toMatchObject({ written: '37 3/8' });
    expect(readLength('37,375', 'in')).toMatchObject({ written: 37.375 });
    expect(readLength('949,5', 'mm')).toMatchObject({ written: 949.5 });
    expect(readLength('949.325 mm', 'in')).toMatchObject({ written: '37 3/8' });
  });

  it.each([
    ['', 'empty'],
    ['  ', 'empty'],
    ['abc', 'not-a-length'],
    ['12..5', 'not-a-length'],
    ['12 kg', 'not-a-length'],
    ['mm', 'not-a-length'],
    ['1e3', 'not-a-length'],
    ['1,250', 'two-readings'],
    ['37 9/8', 'odd-fraction'],
    ['3/0', 'odd-fraction'],
    ['3/8 mm', 'odd-fraction'],
    ['37 3/8/2', 'odd-fraction'],
    ['<b>', 'not-a-length'],
  ])('%j is none: %s', (text, problem) => {
    expect(mm(text)).toBe(problem);
  });

  it('is read or refused, whatever is typed', () => {
    const typed = fc.oneof(
      fc.string(),
      fc.string({ unit: fc.constantFrom(...'0123456789.,/ -"in') }),
    );
    fc.assert(
      fc.property(typed, fc.constantFrom<Units>('mm', 'in'), (text, units) => {
        const read = mm(text, units);
        expect(typeof read === 'string' || Number.isFinite(read)).toBe(true);
      }),
    );
  });

  it('with comma or point is the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 99 }), (a, b) => {
        expect(readDecimal(`${a},${b}`)).toBe(readDecimal(`${a}.${b}`));
      }),
    );
  });
});
