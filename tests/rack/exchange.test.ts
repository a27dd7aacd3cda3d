import { describe, expect, it } from 'vitest';
import { nearestExchange, sortedSums, type Size } from '../../src/rack/exchange.js';
import { seeded } from '../../src/rack/random.js';

const random = seeded(4);
const girth = Float64Array.from({ length: 40 }, () => 60 + 40 * random.unit());
const mine = Array.from({ length: 9 }, (_, i) => i);
const theirs = Array.from({ length: 11 }, (_, i) => 20 + i);

function* ways(group: readonly number[], size: number, from = 0): Generator<number[]> {
  if (size === 0) yield [];
  else
    for (let i = from; i <= group.length - size; i++)
      for (const rest of ways(group, size - 1, i + 1)) yield [group[i]!, ...rest];
}

const sum = (staves: readonly number[]): number => staves.reduce((s, i) => s + girth[i]!, 0);

function nearestByTrying(wanted: number, out: number, into: number): number {
  let best = Infinity;
  for (const a of ways(mine, out))
    for (const b of ways(theirs, into)) best = Math.min(best, Math.abs(sum(a) - sum(b) - wanted));
  return best;
}

describe('the nearest exchange', () => {
  const sizes: [Size, Size][] = [
    [1, 1],
    [2, 2],
    [3, 3],
    [1, 2],
    [3, 2],
  ];
  it.each(sizes)('of %d against %d is as near as trying all', (out, into) => {
    for (const wanted of [-7.3, 0, 0.02, 12, -80]) {
      const found = nearestExchange(
        sortedSums(girth, mine, out),
        sortedSums(girth, theirs, into),
        wanted,
      )!;
      expect(found.out).toHaveLength(out);
      expect(found.into).toHaveLength(into);
      expect(found.lowersBy).toBeCloseTo(sum(found.out) - sum(found.into), 5);
      expect(Math.abs(found.lowersBy - wanted)).toBeCloseTo(nearestByTrying(wanted, out, into), 5);
    }
  });

  it('needs enough staves on both sides', () => {
    expect(nearestExchange(sortedSums(girth, [1], 2), sortedSums(girth, theirs, 2), 0)).toBeNull();
  });
});
