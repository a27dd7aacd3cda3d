import { expect, it } from 'vitest';
import type { Aims } from '../../src/rack/aims.js';
import { Doubt } from '../../src/rack/doubt.js';

const straying = (deviation: number): Aims => {
  return { sets: 2, planing: 0, deviation, spread: 0, rest: 1 };
};

it('spares whatever is no worse than the best that was passed over', () => {
  const doubt = new Doubt();
  expect(doubt.isNone).toBe(true);
  expect(doubt.spares(straying(100))).toBe(true);
  for (const deviation of [7, 5, 9]) doubt.passOver(straying(deviation));
  expect(doubt.isNone).toBe(false);
  expect([4, 5, 6].map((deviation) => doubt.spares(straying(deviation)))).toEqual([
    true,
    true,
    false,
  ]);
});
