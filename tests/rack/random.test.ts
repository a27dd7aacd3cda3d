import { expect, it } from 'vitest';
import { seeded } from '../../src/rack/random.js';

it('gives the same numbers for the same seed, others for another, spread evenly', () => {
  const draw = (seed: number): number[] => {
    const random = seeded(seed);
    return Array.from({ length: 2000 }, () => random.unit());
  };
  expect(draw(1)).toEqual(draw(1));
  expect(draw(1)).not.toEqual(draw(2));
  const tenths = new Array<number>(10).fill(0);
  for (const unit of draw(7)) tenths[Math.floor(unit * 10)]!++;
  // 200 each expected, with a standard deviation of 13.4
  for (const count of tenths) expect(Math.abs(count - 200)).toBeLessThan(55);
  const random = seeded(3);
  for (let i = 0; i < 100; i++) expect([0, 1, 2]).toContain(random.below(3));
});
