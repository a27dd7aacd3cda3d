import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closesAt } from '../../src/rack/closing.js';
import { makePool } from '../../src/rack/pool.js';
import { closingWindows, sharedWindow } from '../../src/rack/window.js';
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

describe('the shared window of two sets', () => {
  it.each(['blank', 'backed'] as const)(
    'holds any two that stray by so much together (%s)',
    (measured) => {
      let tightest = Infinity;
      fc.assert(
        fc.property(
          fc.integer({ min: 1, max: 5000 }),
          fc.double({ min: -0.3, max: 0.3, noNaN: true }),
          (seed, off) => {
            // two sets scaled so that one closes `off` from the diameter and the other at what 0.3 mm leaves
            const strays = [off, seed % 2 ? Math.abs(off) - 0.3 : 0.3 - Math.abs(off)];
            const widths = strays.map((stray, k) => {
              const some = widthsOf({
                count: 28,
                from: 60,
                to: 100,
                step: 0.01,
                seed: seed + 9999 * k,
              });
              const scale = (678 + stray) / closesAt(some, measured)!;
              return some.map((w) => w * scale);
            });
            const request = asked({ diameter: 678, measured, bung: null });
            const pool = makePool(stockOf(widths.flat()).staves, request);
            const girths = widths.map((some) =>
              some.reduce(
                (sum, w) =>
                  sum + 678 * (measured === 'blank' ? Math.atan(w / 678) : Math.asin(w / 678)),
                0,
              ),
            );
            const { sum, apart } = sharedWindow(pool, 0.3);
            const together = girths[0]! + girths[1]!;
            expect(together).toBeGreaterThanOrEqual(sum.low);
            expect(together).toBeLessThanOrEqual(sum.high);
            expect(Math.abs(girths[0]! - girths[1]!)).toBeLessThanOrEqual(apart);
            tightest = Math.min(tightest, together - sum.low, sum.high - together);
          },
        ),
        { seed: 8, numRuns: 200 },
      );
      // no wider than it must be: some pairs come near its ends
      expect(tightest).toBeLessThan(0.03);
    },
  );
});
