import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closesAt, halfAngle } from '../../src/rack/closing.js';
import { seeded } from '../../src/rack/random.js';
import { orderRing } from '../../src/rack/ring.js';
import { measureRing, ringFacts, type RingFacts } from '../../src/rack/ring-measure.js';
import { widthsOf } from './racks.js';

function factsOf(widths: readonly number[], headJoints: readonly number[] = []): RingFacts {
  const diameter = closesAt(widths, 'blank')!;
  const angles = widths.map((width) => halfAngle(width, diameter, 'blank'));
  return ringFacts(widths, angles, diameter, headJoints);
}

const inOrder = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

describe('the measure of a ring', () => {
  it('is nothing for equal staves clear of the head joints', () => {
    const measure = measureRing(factsOf(new Array<number>(28).fill(76.4)), inOrder(28));
    expect(measure.measure).toBeCloseTo(0, 9);
    expect(measure.narrowPairs).toBe(0);
  });

  // one wide side: widths m + a cos(azimuth) have the first harmonic a, and it is measured as a
  it('tells how far widths are out of balance about the axis', () => {
    const widths = inOrder(28).map((i) => 76 + 5 * Math.cos((2 * Math.PI * i) / 28));
    expect(measureRing(factsOf(widths), inOrder(28)).imbalance).toBeCloseTo(5, 0);
    const alternating = inOrder(28).map((i) => 76 + (i % 2 ? 5 : -5));
    expect(measureRing(factsOf(alternating), inOrder(28)).imbalance).toBeCloseTo(0, 9);
  });

  // joints of staves that take turns, 5 over and 5 under the mean, stray by 2.5 to either side
  it('tells how far joints stray from even ones', () => {
    const alternating = inOrder(28).map((i) => 76 + (i % 2 ? 5 : -5));
    expect(measureRing(factsOf(alternating), inOrder(28)).unevenJoints).toBeCloseTo(5 / 2, 0);
  });

  it('counts pairs of narrow neighbours and low neighbours of the bung stave', () => {
    const widths = [100, 60, 61, 80, 80, 80, 80, 80];
    const facts = factsOf(widths);
    const { narrowPairs, lowNeighbours } = measureRing(facts, inOrder(8));
    expect(narrowPairs).toBe(1);
    expect(lowNeighbours).toBeCloseTo(facts.meanWidth - 60, 9);
    expect(measureRing(facts, [0, 3, 1, 4, 2, 5, 6, 7]).narrowPairs).toBe(0);
  });

  it('counts a joint in line with a joint of the head as one, and half when half of 6 mm away', () => {
    const widths = new Array<number>(28).fill(76.4);
    const first = Math.PI / 28;
    const at = (off: number): number =>
      measureRing(factsOf(widths, [first + off]), inOrder(28)).jointsInLine;
    expect(at(0)).toBeCloseTo(1, 9);
    expect(at(3 / 339)).toBeCloseTo(0.5, 2);
    expect(at(first)).toBe(0);
  });
});

describe('an order', () => {
  const order = (widths: readonly number[], first: number, run: readonly number[] = []) =>
    orderRing({ facts: factsOf(widths), first, run, starts: 3 }, seeded(1));

  it('holds every stave once, the bung stave first, and a standing run in its order', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (seed) => {
        const widths = widthsOf({ count: 27, from: 60, to: 100, step: 0.5, seed });
        const first = widths.indexOf(Math.max(...widths));
        const run = [3, 9, 1].filter((stave) => stave !== first);
        const found = order(widths, first, run).order;
        expect([...found].sort((a, b) => a - b)).toEqual(inOrder(27));
        expect(found[0]).toBe(first);
        expect([...found, ...found].join(' ')).toContain(run.join(' '));
      }),
      { seed: 2, numRuns: 10 },
    );
  });

  it('of an ordinary set has no narrow pair, no low neighbour, and widths in balance', () => {
    for (const seed of [1, 2, 3]) {
      const widths = widthsOf({ count: 28, from: 60, to: 100, step: 0.5, seed });
      const { measure } = order(widths, widths.indexOf(Math.max(...widths)));
      expect(measure.narrowPairs).toBe(0);
      expect(measure.lowNeighbours).toBe(0);
      expect(measure.imbalance).toBeLessThan(0.5);
    }
  });

  it('of seven staves is the best of all 720', () => {
    const widths = [100, 62, 95, 71, 66, 88, 79];
    const facts = factsOf(widths);
    let best = Infinity;
    const tryAll = (order: number[], rest: number[]): void => {
      if (rest.length === 0) best = Math.min(best, measureRing(facts, order).measure);
      for (const stave of rest)
        tryAll(
          [...order, stave],
          rest.filter((other) => other !== stave),
        );
    };
    tryAll([0], [1, 2, 3, 4, 5, 6]);
    const found = orderRing({ facts, first: 0, run: [], starts: 12 }, seeded(1));
    expect(found.measure.measure).toBeCloseTo(best, 9);
  });
});
