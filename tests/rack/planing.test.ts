import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closesAt, halfAngle } from '../../src/rack/closing.js';
import { leastPlaning, MOST_OF_A_STAVE, PLANE_STEP } from '../../src/rack/planing.js';

const job = (widths: readonly number[], diameter: number, limit = 50, keep = -1) =>
  leastPlaning({ widths, measured: 'blank', diameter, limit, keep });

describe('planing', () => {
  const ring = Array.from({ length: 28 }, (_, i) => 70 + (i % 5) * 3);
  const closes = closesAt(ring, 'blank')!;

  it('is nothing when the ring closes small enough', () => {
    expect(job(ring, closes + 0.01)).toEqual(ring.map(() => 0));
  });

  it('falls on one stave, the narrowest, and is what its share of the girth says', () => {
    const off = job(ring, closes - 1)!;
    const planed = off.flatMap((depth, i) => (depth > 0 ? [i] : []));
    expect(planed).toHaveLength(1);
    // a flat face turns off most angle for its width where it is narrowest: d(atan x) = dx / (1 + x^2)
    expect(ring[planed[0]!]).toBe(70);
    // 1 mm of diameter is pi mm of girth, a little more as faces lie outside the circle
    expect(off[planed[0]!]!).toBeGreaterThan(Math.PI);
    expect(off[planed[0]!]!).toBeLessThan(Math.PI * 1.03);
  });

  it('leaves the bung stave alone', () => {
    expect(job(ring, closes - 1, 50, 0)![0]).toBe(0);
  });

  it('goes to a second stave when one would lose a third of its width', () => {
    const off = job(ring, closes - 10)!;
    const deep = off.filter((depth) => depth > 0);
    expect(deep).toHaveLength(2);
    for (const [i, depth] of off.entries())
      expect(depth).toBeLessThanOrEqual(ring[i]! * MOST_OF_A_STAVE + 1e-9);
  });

  it("isn't found when the limit is too low", () => {
    expect(job(ring, closes - 1, 3)).toBeNull();
  });

  it('closes the ring, within one step of the least', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 120, max: 200 }), { minLength: 20, maxLength: 32 }),
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        (halves, over) => {
          const widths = halves.map((half) => half / 2);
          const diameter = closesAt(widths, 'blank')! - over;
          const off = job(widths, diameter)!;
          const planed = widths.map((width, i) => width - off[i]!);
          expect(closesAt(planed, 'blank')!).toBeLessThanOrEqual(diameter + 1e-9);
          // a step less on the planed stave leaves it too large
          const at = off.findIndex((depth) => depth > 0);
          const less = planed.with(at, planed[at]! + PLANE_STEP);
          expect(closesAt(less, 'blank')!).toBeGreaterThan(diameter - 1e-9);
          const excess = widths.reduce((sum, w) => sum + halfAngle(w, diameter, 'blank'), -Math.PI);
          expect(excess).toBeGreaterThan(0);
        },
      ),
      { seed: 3, numRuns: 60 },
    );
  });
});
