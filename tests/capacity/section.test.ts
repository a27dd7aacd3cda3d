import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygonSection, roundSection } from '../../src/capacity/section.js';
import { simpson, spread } from '../vessel/numeric.js';

interface Point {
  x: number;
  y: number;
}

/** Area of a convex polygon below a level, by clipping its outline. */
function clippedArea(outline: readonly Point[], level: number): number {
  const kept = outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const crossing = (a.y - level) * (b.y - level) < 0;
    const share = (level - a.y) / (b.y - a.y);
    const cut = crossing ? [{ x: a.x + share * (b.x - a.x), y: level }] : [];
    return a.y <= level ? [a, ...cut] : cut;
  });
  return (
    kept.reduce((sum, a, i) => {
      const b = kept[(i + 1) % kept.length]!;
      return sum + a.x * b.y - b.x * a.y;
    }, 0) / 2
  );
}

/** A regular polygon round the unit circle, the middle of a side at the top. */
const regular = (n: number): Point[] =>
  Array.from({ length: n }, (_, i) => {
    const angle = Math.PI / 2 + ((2 * i + 1) * Math.PI) / n;
    const r = 1 / Math.cos(Math.PI / n);
    return { x: r * Math.cos(angle), y: r * Math.sin(angle) };
  });
const equal = (n: number): number[] => new Array<number>(n).fill(Math.PI / n);

describe('round section', () => {
  // A gauger's table of segments of a circle of diameter 1 (19th century; the values are right to 1.2e-6)
  it.each([
    [0.29, 0.189047],
    [0.3, 0.198168],
    [0.32, 0.216666],
    [0.35, 0.24498],
    [0.4, 0.293369],
    [0.43, 0.322928],
  ])('agrees with the table of segments at a height of %d', (height, area) => {
    expect(Math.abs(roundSection.areaBelow(2 * height - 1) / 4 - area)).toBeLessThan(1.3e-6);
  });

  it('is nothing below, half at the axis, and whole above', () => {
    expect(roundSection.areaBelow(-1)).toBe(0);
    expect(roundSection.areaBelow(-7)).toBe(0);
    expect(roundSection.areaBelow(0)).toBeCloseTo(Math.PI / 2, 15);
    expect(roundSection.areaBelow(1)).toBeCloseTo(Math.PI, 15);
    expect(roundSection.areaBelow(7)).toBeCloseTo(Math.PI, 15);
  });

  it('is the integral of its chords', () => {
    for (const level of [-0.9, -0.3, 0.5]) {
      // y = -cos(u), chord 2 sin(u), dy = sin(u) du
      const exact = simpson((u) => 2 * Math.sin(u) ** 2, 0, Math.acos(-level));
      expect(roundSection.areaBelow(level)).toBeCloseTo(exact, 12);
    }
  });
});

describe('polygon section', () => {
  it('of four staves is a square on its side: the area below grows evenly', () => {
    const square = polygonSection(equal(4), 0);
    expect(square.below).toBeCloseTo(1, 12);
    expect(square.above).toBeCloseTo(1, 12);
    for (const level of [-1, -0.5, 0, 0.25, 1])
      expect(square.areaBelow(level)).toBeCloseTo(2 * (level + 1), 12);
  });

  it.each([5, 6, 7, 28, 80])('of %d equal staves is a regular polygon, clipped', (n) => {
    const section = polygonSection(equal(n), n - 1);
    for (const level of spread(-1.2, 1.2, 25))
      expect(section.areaBelow(level)).toBeCloseTo(clippedArea(regular(n), level), 11);
    expect(section.above).toBeCloseTo(1, 12);
    // an odd count has a corner at the bottom
    expect(section.below).toBeCloseTo(n % 2 === 0 ? 1 : 1 / Math.cos(Math.PI / n), 12);
  });

  const shares = fc.array(fc.integer({ min: 50, max: 150 }), { minLength: 5, maxLength: 40 });
  const mixed = (parts: readonly number[]): number[] => {
    const sum = parts.reduce((a, b) => a + b, 0);
    return parts.map((part) => (Math.PI * part) / sum);
  };

  it('of any ring grows from nothing to the sum of tangents', () => {
    fc.assert(
      fc.property(shares, fc.nat(39), (parts, index) => {
        const alphas = mixed(parts);
        const section = polygonSection(alphas, index % alphas.length);
        const levels = spread(-section.below, section.above, 40);
        const areas = levels.map((level) => section.areaBelow(level));
        areas.slice(1).forEach((area, i) => expect(area).toBeGreaterThanOrEqual(areas[i]! - 1e-12));
        expect(areas[0]).toBeCloseTo(0, 12);
        const all = alphas.reduce((sum, alpha) => sum + Math.tan(alpha), 0);
        expect(areas.at(-1)).toBeCloseTo(all, 10);
      }),
    );
  });

  it('of any ring contains the circle that its faces touch, and so little more as its corners', () => {
    fc.assert(
      fc.property(shares, (parts) => {
        const alphas = mixed(parts);
        const section = polygonSection(alphas, 0);
        const corners = alphas.reduce((sum, alpha) => sum + Math.tan(alpha), 0) - Math.PI;
        for (const level of spread(-0.99, 0.99, 12)) {
          const more = section.areaBelow(level) - roundSection.areaBelow(level);
          expect(more).toBeGreaterThan(-1e-12);
          expect(more).toBeLessThanOrEqual(corners + 1e-12);
        }
      }),
    );
  });

  it('has the middle of the stave at the top, whichever it is', () => {
    const alphas = mixed([60, 100, 70, 80, 90, 65, 75]);
    const turned = [...alphas.slice(1), alphas[0]!];
    for (const level of [-0.7, 0, 0.8]) {
      expect(polygonSection(alphas, 1).areaBelow(level)).toBeCloseTo(
        polygonSection(turned, 0).areaBelow(level),
        12,
      );
    }
    // just below the top the chord is that face, as wide as the stave
    const chord = (2 * Math.tan(alphas[1]!)) as number;
    const [a, b] = [1 - 1e-6, 1 - 2e-6].map((level) => polygonSection(alphas, 1).areaBelow(level));
    expect((a! - b!) / 1e-6).toBeCloseTo(chord, 4);
  });
});
