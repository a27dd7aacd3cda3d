import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatBulge, formatNumber } from '../../src/writers/number.js';

test.each([
  [0, '0'],
  [-0, '0'],
  [-0.00004, '0'],
  [0.00006, '0.0001'],
  [100, '100'],
  [-1200.5, '-1200.5'],
  [38.20004999, '38.2'],
  [1e-7, '0'],
  [123456789.12346, '123456789.1235'],
  [0.1 + 0.2, '0.3'],
  [1e9, '1000000000'],
])('%f is written %s', (value, text) => {
  expect(formatNumber(value)).toBe(text);
});

test('a bulge keeps ten decimals', () => {
  expect(formatBulge(Math.SQRT2 - 1)).toBe('0.4142135624');
  expect(formatBulge(-1e-11)).toBe('0');
  expect(formatBulge(1)).toBe('1');
});

test('what is not a number, or absurd, is a bug and throws', () => {
  for (const value of [NaN, Infinity, -Infinity, 1e21, -2e9]) {
    expect(() => formatNumber(value)).toThrow(RangeError);
    expect(() => formatBulge(value)).toThrow(RangeError);
  }
});

test('written and read again, any number is within half a step, and stays put when written again', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
      const text = formatNumber(value);
      expect(text).toMatch(/^(0|-?(0|[1-9]\d*)(\.\d{0,3}[1-9])?)$/);
      expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.5e-4 + 1e-9);
      expect(formatNumber(Number(text))).toBe(text);
      // a mirrored drawing has mirrored coordinates
      expect(Number(formatNumber(-value))).toBe(0 - Number(text));
    }),
    { seed: 3, numRuns: 2000 },
  );
});
