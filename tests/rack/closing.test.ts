import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closesAt, halfAngle, halfAngleSlope, widthAt } from '../../src/rack/closing.js';

const measures = ['blank', 'backed'] as const;

describe('the closing diameter', () => {
  // n equal flat faces circumscribe a circle (width = D tan(pi/n)), n equal chords are inscribed in one (D sin(pi/n))
  it.each([3, 4, 6, 28])('of %d equal staves is that of the regular polygon', (n) => {
    const equal = (width: number): number[] => new Array<number>(n).fill(width);
    expect(closesAt(equal(700 * Math.tan(Math.PI / n)), 'blank')).toBeCloseTo(700, 9);
    expect(closesAt(equal(700 * Math.sin(Math.PI / n)), 'backed')).toBeCloseTo(700, 9);
  });

  // the three sides of a triangle as chords: an acute one, 13-14-15, has the circumscribed diameter abc / (2 area)
  it('of three chords is that of the circle round the triangle', () => {
    expect(closesAt([13, 14, 15], 'backed')).toBeCloseTo((13 * 14 * 15) / (2 * 84), 9);
  });

  it("doesn't exist for fewer than three, nor for one wider than the rest reach", () => {
    expect(closesAt([80, 80], 'blank')).toBeNull();
    expect(closesAt([80, 1, 1], 'backed')).toBeNull();
    expect(closesAt([], 'blank')).toBeNull();
  });

  it('differs by more than any tolerance between the two ways to measure 28 staves', () => {
    const equal = new Array<number>(28).fill(76.4);
    expect(closesAt(equal, 'backed')! - closesAt(equal, 'blank')!).toBeCloseTo(
      // 1/sin - 1/tan of an angle is the tangent of its half
      76.4 * Math.tan(Math.PI / 56),
      9,
    );
    const mixed = Array.from({ length: 28 }, (_, i) => 76.4 + (i % 2 ? 18 : -18));
    expect(closesAt(mixed, 'backed')! - closesAt(mixed, 'blank')!).toBeGreaterThan(4.5);
  });

  const widths = fc.array(fc.double({ min: 40, max: 120, noNaN: true }), {
    minLength: 5,
    maxLength: 60,
  });

  it.each(measures)('turns the ring once (%s)', (measured) => {
    fc.assert(
      fc.property(widths, (ring) => {
        const diameter = closesAt(ring, measured)!;
        const turned = ring.reduce((sum, w) => sum + halfAngle(w, diameter, measured), 0);
        expect(turned).toBeCloseTo(Math.PI, 10);
      }),
      { seed: 5, numRuns: 100 },
    );
  });

  it.each(measures)('scales with the widths, and grows with each (%s)', (measured) => {
    fc.assert(
      fc.property(widths, fc.double({ min: 0.2, max: 5, noNaN: true }), (ring, by) => {
        const diameter = closesAt(ring, measured)!;
        const scaled = ring.map((w) => w * by);
        expect(closesAt(scaled, measured)! / diameter).toBeCloseTo(by, 9);
        expect(closesAt(ring.with(0, ring[0]! + 1), measured)!).toBeGreaterThan(diameter);
      }),
      { seed: 6, numRuns: 100 },
    );
  });

  it('of two rings at once is their own when they are alike', () => {
    const ring = [70, 80, 90, 75, 85, 60, 95];
    expect(closesAt([...ring, ...ring], 'blank', 2)).toBeCloseTo(closesAt(ring, 'blank')!, 9);
  });
});

describe('a width', () => {
  it.each(measures)('comes back from the half-angle that it takes up (%s)', (measured) => {
    expect(widthAt(halfAngle(76.4, 678, measured), 678, measured)).toBeCloseTo(76.4, 10);
  });

  // tan 30 degrees = 1/sqrt(3), sin 30 degrees = 1/2
  it('of a known angle is known', () => {
    expect(halfAngle(100, 100 * Math.sqrt(3), 'blank')).toBeCloseTo(Math.PI / 6, 12);
    expect(halfAngle(100, 200, 'backed')).toBeCloseTo(Math.PI / 6, 12);
  });
});

it.each(measures)('a %s half-angle’s slope is its difference', (measured) => {
  for (const width of [30, 70, 140]) {
    const apart = 1e-3;
    const [less, more] = [width - apart, width + apart].map((w) => halfAngle(w, 678, measured));
    const slope = halfAngleSlope(width, 678, measured);
    expect(slope / ((more! - less!) / (2 * apart))).toBeCloseTo(1, 6);
  }
});
