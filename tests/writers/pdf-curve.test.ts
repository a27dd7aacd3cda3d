import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/curve.js';
import { arc, circle, line } from '../../src/geometry/curve.js';
import { cubicCount, cubicTolerance, pathOperators } from '../../src/writers/pdf-curve.js';

/** Points along the path that the operators draw. */
function pointsOn(path: string): Point[] {
  const points: Point[] = [];
  let at: Point = { x: NaN, y: NaN };
  for (const [, values, operator] of path.matchAll(/((?:-?[\d.]+ )*)([mlch])/g)) {
    const n = values!.trim().split(' ').map(Number);
    if (operator === 'm' || operator === 'l') at = { x: n[0]!, y: n[1]! };
    if (operator === 'c') {
      const from = at;
      for (let t = 0; t <= 1; t += 1 / 64) {
        const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
        points.push({
          x: a * from.x + b * n[0]! + c * n[2]! + d * n[4]!,
          y: a * from.y + b * n[1]! + c * n[3]! + d * n[5]!,
        });
      }
      at = { x: n[4]!, y: n[5]! };
    }
  }
  return points;
}

const radii = fc.double({ min: 0.5, max: 20_000, noNaN: true });
const angles = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
const sweeps = fc.double({ min: 0.01, max: 6.2, noNaN: true });

describe('an arc in a PDF', () => {
  it('lies within 0.0005 mm of the true one, rounding aside', () => {
    fc.assert(
      fc.property(radii, angles, sweeps, fc.boolean(), (radius, from, sweep, left) => {
        const to = left ? from + sweep : from - sweep;
        const points = pointsOn(pathOperators(arc({ x: 3, y: -4 }, radius, from, to)));
        const errors = points.map(({ x, y }) => Math.abs(Math.hypot(x - 3, y + 4) - radius));
        expect(Math.max(...errors)).toBeLessThan(cubicTolerance + 0.0002);
      }),
      { seed: 4 },
    );
  });

  it('runs from end to end, the way it should', () => {
    const points = pointsOn(pathOperators(arc({ x: 0, y: 0 }, 100, 0, 2)));
    const angleOf = ({ x, y }: Point) => Math.atan2(y, x);
    points.slice(1).forEach((point, i) => {
      expect(angleOf(point)).toBeGreaterThanOrEqual(angleOf(points[i]!) - 1e-6);
    });
    expect(angleOf(points.at(-1)!)).toBeCloseTo(2, 5);
  });

  it('needs no more cubics than it must: 12 or so for a small circle, more for a large one', () => {
    expect(cubicCount(100, Math.PI / 2)).toBe(3);
    expect(cubicCount(2000, Math.PI / 2)).toBe(4);
    // the arc of a stave's edge: 1 m long on a radius of 3 m
    expect(cubicCount(3000, 1 / 3)).toBe(1);
    expect(pathOperators(circle({ x: 0, y: 0 }, 100)).match(/c/g)).toHaveLength(12);
  });
});

it('a curve of no length is no path', () => {
  expect(pathOperators(line({ x: 1, y: 1 }, { x: 1, y: 1 }))).toBe('');
});
