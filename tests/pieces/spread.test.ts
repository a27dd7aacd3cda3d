import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../src/pieces/spread.js';

describe('spreading places', () => {
  it('leaves none and one alone', () => {
    expect(spread([], 5)).toEqual([]);
    expect(spread([3], 5)).toEqual([3]);
  });

  it('moves two that are too near apart by the same amount', () => {
    expect(spread([0, 1], 5)).toEqual([-2, 3]);
  });

  it('keeps the order, the gap, and whatever has room already', () => {
    const places = fc.array(fc.double({ min: -500, max: 500, noNaN: true }), { maxLength: 30 });
    fc.assert(
      fc.property(places, (unsorted) => {
        const sorted = [...unsorted].sort((a, b) => a - b);
        const moved = spread(sorted, 4);
        moved.slice(1).forEach((place, i) => expect(place - moved[i]!).toBeGreaterThan(4 - 1e-9));
        const roomy = sorted.every((place, i) => i === 0 || place - sorted[i - 1]! > 4);
        if (roomy) expect(moved).toEqual(sorted);
      }),
      { seed: 4 },
    );
  });
});
