/** The order of marks. */
import { expect, it } from 'vitest';
import { readingOrder } from '../../src/rack/marks.js';

it('reads numbers as numbers, and all else letter by letter', () => {
  const marks = ['A10', 'B1', 'A2', 'A', '7', 'A2b', '12', 'A02', 'a1', '', 'A2-10', 'A2-9'];
  const sorted = ['', '7', '12', 'A', 'A02', 'A2', 'A2-9', 'A2-10', 'A2b', 'A10', 'B1', 'a1'];
  expect(marks.toSorted(readingOrder)).toEqual(sorted);
  expect(marks.toReversed().sort(readingOrder)).toEqual(sorted);
});

it('tells marks apart, and no mark from itself', () => {
  expect(readingOrder('A7', 'A7')).toBe(0);
  expect(readingOrder('A7', 'A07')).toBeGreaterThan(0);
  expect(readingOrder('A07', 'A7')).toBeLessThan(0);
});
