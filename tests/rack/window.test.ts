import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closesAt } from '../../src/rack/closing.js';
import { makePool } from '../../src/rack/pool.js';
import { closingWindows } from '../../src/rack/window.js';
import { asked, stockOf, widthsOf } from './racks.js';

describe('the windows of girth sums', () => {
  it.each(['blank', 'backed'] as const)(
    'never take in a ring that stays open, nor leave out one that closes (%s)',
    (measured) => {
      let [closed, open] = [0, 0];
      fc.assert(
        fc.property(
          fc.integer({ min: 1, max: 5000 }),
          fc.double({ min: -3, max: 3, noNaN: true }),
          (seed, off) => {
            const widths = widthsOf({ count: 28, from: 60, to: 100, step: 0.01, seed });
            const diameter = closesAt(widths, measured)! + off;
            const request = asked({ diameter, measured, bung: null });
            const pool = makePool(stockOf(widths).staves, request);
            const girth = pool.girth.reduce((sum, share) => sum + share, 0);
            const { inner, outer } = closingWindows(pool, 1.5, 0);
            if (girth >= inner.low && girth <= inner.high)
              expect(Math.abs(off)).toBeLessThanOrEqual(1.5);
            if (girth < outer.low || girth > outer.high) expect(Math.abs(off)).toBeGreaterThan(1.5);
            if (Math.abs(off) <= 1.5) closed++;
            else open++;
          },
        ),
        { seed: 8, numRuns: 200 },
      );
      expect(Math.min(closed, open)).toBeGreaterThan(10);
    },
  );
});
