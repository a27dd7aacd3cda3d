import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closingDiameter, ringOf } from '../../src/vessel/ring.js';
import { arbitraryVessel, between, bucket, changed, wineCask } from './specs.js';

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
const anyWidths = fc.array(between(20, 150), {
  minLength: 3,
  maxLength: 80,
});

describe('closingDiameter', () => {
  it('of equal widths is that of the circle inside a regular polygon', () => {
    for (const n of [3, 4, 6, 28, 80])
      expect(closingDiameter(new Array<number>(n).fill(70))).toBeCloseTo(
        70 / Math.tan(Math.PI / n),
        9,
      );
  });

  it('of half-widths 1, 2 and 3 is 2, since atan 1 + atan 2 + atan 3 = pi', () => {
    expect(closingDiameter([2, 4, 6])).toBeCloseTo(2, 11);
  });

  it('is the circle that all flat faces touch when the ring is complete', () => {
    fc.assert(
      fc.property(anyWidths, (widths) => {
        const diameter = closingDiameter(widths);
        expect(sum(widths.map((width) => Math.atan(width / diameter)))).toBeCloseTo(Math.PI, 10);
        expect(diameter).toBeLessThan(sum(widths) / Math.PI);
      }),
    );
  });

  it('asks nothing of the order, scales with the widths, and grows with each', () => {
    fc.assert(
      fc.property(anyWidths, (widths) => {
        const diameter = closingDiameter(widths);
        expect(closingDiameter([...widths].reverse())).toBeCloseTo(diameter, 8);
        expect(closingDiameter(widths.map((w) => 2.5 * w))).toBeCloseTo(2.5 * diameter, 7);
        expect(closingDiameter([widths[0]! + 1, ...widths.slice(1)])).toBeGreaterThan(diameter);
      }),
    );
  });

  it('is small, but still found, when one stave dominates', () => {
    const widths = [1000, 10, 10, 10, 10, 10];
    const diameter = closingDiameter(widths);
    expect(sum(widths.map((width) => Math.atan(width / diameter)))).toBeCloseTo(Math.PI, 11);
    expect(diameter).toBeLessThan(35);
  });

  it('does not exist for two staves', () => {
    expect(closingDiameter([70, 70])).toBeNaN();
    expect(closingDiameter([])).toBeNaN();
  });

  it('differs from the sum of widths over pi: by 2.86 mm on 28 staves', () => {
    const alpha = Math.PI / 28;
    const widths = new Array<number>(28).fill(678 * Math.tan(alpha));
    expect(closingDiameter(widths)).toBeCloseTo(678, 9);
    // tan(x) = x + x^3/3 + 2 x^5/15 + ...
    const excess = 678 * (alpha ** 2 / 3 + (2 * alpha ** 4) / 15);
    expect(sum(widths) / Math.PI - 678).toBeCloseTo(excess, 3);
    expect(excess).toBeCloseTo(2.86, 2);
  });

  it('is some 4.7 mm too small when widths across backed faces are taken for blanks', () => {
    const misread = (alphas: number[]): number =>
      678 - closingDiameter(alphas.map((alpha) => 678 * Math.sin(alpha)));
    const equal = new Array<number>(28).fill(Math.PI / 28);
    // to the second order D alpha^2 / 2; a spread of widths adds three times its squared coefficient of variation
    expect(misread(equal)).toBeCloseTo(678 * (1 - Math.cos(Math.PI / 28)), 6);
    expect(misread(equal)).toBeCloseTo(4.26, 2);
    const shares = Array.from({ length: 28 }, (_, i) => 0.68 + (0.64 * i) / 27);
    expect(misread(shares.map((share) => (share * Math.PI) / 28))).toBeCloseTo(4.7, 1);
  });
});

describe('ringOf', () => {
  it('splits pi evenly for a count', () => {
    const ring = ringOf(wineCask);
    expect(ring.alphas).toHaveLength(28);
    expect(new Set(ring.alphas)).toEqual(new Set([Math.PI / 28]));
    expect(ring.closesAt).toBe(678);
    expect(ring.sumOfTangents).toBeCloseTo(28 * Math.tan(Math.PI / 28), 12);
    expect(ringOf(bucket).closesAt).toBe(320);
  });

  it('keeps the widths of a mixed set in ring order', () => {
    const widths = [60, 100, 60, 90, 80, 70, 75, 85];
    const ring = ringOf(changed(wineCask, { staves: { widths, count: 8 } }));
    ring.alphas.forEach((alpha, i) =>
      expect(ring.closesAt * Math.tan(alpha)).toBeCloseTo(widths[i]!, 9),
    );
    expect(ring.widestAlpha).toBe(ring.alphas[1]);
  });

  it('closes: half-angles sum to pi, and the polygon has the circle inside it', () => {
    fc.assert(
      fc.property(arbitraryVessel, (spec) => {
        const ring = ringOf(spec);
        expect(sum(ring.alphas)).toBeCloseTo(Math.PI, 10);
        expect(ring.sumOfTangents).toBeGreaterThan(Math.PI);
        expect(ring.alphas).toHaveLength(spec.staves.count);
      }),
    );
  });
});
