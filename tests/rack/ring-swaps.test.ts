/** Told from running sums against walking round the ring. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { closesAt, halfAngle } from '../../src/rack/closing.js';
import { measureRing, ringFacts } from '../../src/rack/ring-measure.js';
import { RingSums } from '../../src/rack/ring-swaps.js';
import { widthsOf } from './racks.js';

const ringOf = fc.record({
  seed: fc.integer({ min: 1, max: 1000 }),
  count: fc.integer({ min: 5, max: 30 }),
  headJoints: fc.array(fc.double({ min: 0, max: 6.2, noNaN: true }), { maxLength: 6 }),
});

it('measures an exchange of two places as measuring the whole ring does', () => {
  fc.assert(
    fc.property(ringOf, ({ seed, count, headJoints }) => {
      const widths = widthsOf({ count, from: 60, to: 100, step: 1, seed });
      const diameter = closesAt(widths, 'blank')!;
      const angles = widths.map((width) => halfAngle(width, diameter, 'blank'));
      const facts = ringFacts(widths, angles, diameter, headJoints);
      const order = [...widths.keys()];
      const sums = new RingSums(facts, order);
      for (let a = 1; a < count; a++)
        for (let b = a + 1; b < count; b++) {
          const swapped = order.with(a, b).with(b, a);
          const { measure } = measureRing(facts, swapped);
          const told = sums.measureAfter(a, b, Infinity);
          if (headJoints.length === 0) expect(told).toBeCloseTo(measure, 7);
          expect(told).toBeLessThan(measure + 1e-7);
          expect(sums.measureAfter(a, b, measure + 1e-7)).toBe(told);
          expect(sums.measureAfter(a, b, -1)).toBe(Infinity);
        }
    }),
    { seed: 3, numRuns: 40 },
  );
});
