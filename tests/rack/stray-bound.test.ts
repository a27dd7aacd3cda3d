/** A bound on what sets stray, against how they close. */
import { describe, expect, it } from 'vitest';
import { closesAt, halfAngle, type Measured } from '../../src/rack/closing.js';
import { makePool } from '../../src/rack/pool.js';
import { seeded } from '../../src/rack/random.js';
import { StrayBound } from '../../src/rack/stray-bound.js';
import { sum } from '../../src/rack/sum.js';
import { asked, stockOf, widthsOf } from './racks.js';

const cases = (['blank', 'backed'] as const).flatMap((measured) =>
  [
    { name: 'of casks', from: 60, to: 100, size: 27 },
    { name: 'hardly apart', from: 78, to: 79, size: 27 },
    { name: 'all alike', from: 79, to: 79, size: 27 },
    { name: 'of small kegs', from: 90, to: 330, size: 10 },
  ].map((shape) => ({ measured, ...shape })),
);

/** Two sets whose widths sum to about two rings of a diameter near 678 mm. */
function rackOf({ from, to, size, measured }: (typeof cases)[number], seed: number) {
  const random = seeded(seed);
  const drawn = widthsOf({ count: 2 * size, from, to, step: 0.1, seed });
  // each set to close within the tolerance
  const sets = [drawn.slice(0, size), drawn.slice(size)].map((widths) => {
    const wanted = 678 + 2.9 * (random.unit() - 0.5);
    const scale = wanted / closesAt(widths, measured)!;
    return widths.map((width) => width * scale);
  });
  const request = asked({ measured, bung: null, vessels: 2, count: { min: 3, max: 40 } });
  return { sets, pool: makePool(stockOf(sets.flat()).staves, request) };
}

const sums = (widths: readonly number[], measured: Measured) => ({
  count: widths.length,
  width: sum(widths),
  girth: 678 * sum(widths.map((width) => halfAngle(width, 678, measured))),
});

describe('the bound on what a set strays', () => {
  it.each(cases)('is no more than it strays, and hardly less: $measured $name', (shape) => {
    const { measured } = shape;
    for (let seed = 1; seed <= 40; seed++) {
      const { sets, pool } = rackOf(shape, seed);
      const bound = new StrayBound(pool, [...pool.staves.keys()]);
      for (const set of sets) {
        const strays = Math.abs(closesAt(set, measured)! - 678);
        const least = bound.of(sums(set, measured));
        expect(least).toBeLessThanOrEqual(strays + 1e-9);
        expect(least).toBeGreaterThan(strays * (measured === 'blank' ? 0.997 : 0.993) - 1e-9);
      }
    }
  });

  it('is within a thousandth of a hundredth of a millimetre for a cask', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const { sets, pool } = rackOf(cases[0]!, seed);
      const bound = new StrayBound(pool, [...pool.staves.keys()]);
      for (const set of sets)
        expect(bound.of(sums(set, 'blank'))).toBeCloseTo(
          Math.abs(closesAt(set, 'blank')! - 678),
          4,
        );
    }
  });

  it.each(cases)('holds for two sets whose girth lies in a range: $measured $name', (shape) => {
    const { measured } = shape;
    const random = seeded(5);
    for (let seed = 1; seed <= 40; seed++) {
      const { sets, pool } = rackOf(shape, seed);
      const bound = new StrayBound(pool, [...pool.staves.keys()]);
      const [first, second] = sets.map((set) => sums(set, measured)) as [
        ReturnType<typeof sums>,
        ReturnType<typeof sums>,
      ];
      const girth = first.girth + second.girth;
      const [below, above] = [4 * random.unit(), 4 * random.unit()];
      const range = { low: first.girth - below, high: first.girth + above };
      const least = bound.ofPair(first, second, girth, range);
      const strays = sum(sets.map((set) => Math.abs(closesAt(set, measured)! - 678)));
      expect(least).toBeLessThanOrEqual(strays + 1e-9);
      // of such sums of widths, no girth in the range gives less
      for (let place = 0; place <= 50; place++) {
        const at = range.low + (place / 50) * (range.high - range.low);
        const there =
          bound.of({ ...first, girth: at }) + bound.of({ ...second, girth: girth - at });
        expect(least).toBeLessThanOrEqual(there + 1e-12);
      }
    }
  });
});
