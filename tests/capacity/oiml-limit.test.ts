import { expect, it } from 'vitest';
import { oimlLimitLitres } from '../../src/capacity/oiml-limit.js';

// OIML R 138:2007, wooden casks: 1.0 %, at least 0.15 l
it.each([
  [225, 2.25],
  [15, 0.15],
  [10, 0.15],
  [1, 0.15],
])('of %d litres is %d litres', (litres, limit) => {
  expect(oimlLimitLitres(litres)).toBeCloseTo(limit, 12);
});
