import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.js';
import { arc, circle, line, polygon } from '../../src/geometry/curve.js';
import { boundsOf, lengthOf, placeAtLength, signedArea } from '../../src/geometry/measure.js';
import { reverse, scale, translate } from '../../src/geometry/transform.js';
import { anyCurve, seeded } from './arbitrary.js';
import { pointsAlong } from './sampling.js';

const triangle = polygon([
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 0, y: 3 },
]);

test('circles and a 3-4-5 triangle', () => {
  expect(lengthOf(circle({ x: 7, y: 8 }, 278.2))).toBeCloseTo(2 * Math.PI * 278.2, 9);
  expect(signedArea(circle({ x: 7, y: 8 }, 278.2))).toBeCloseTo(Math.PI * 278.2 ** 2, 6);
  expect(lengthOf(triangle)).toBe(12);
  expect(signedArea(triangle)).toBe(6);
  expect(signedArea(reverse(triangle))).toBe(-6);
});

test("a segment of a circle of diameter 1 and height .3 has the area .198168 (19th-century gauger's table)", () => {
  const half = Math.acos(0.4);
  const bow: Curve = { ...arc({ x: 0, y: 0 }, 0.5, -half, half), closed: true };
  expect(signedArea(bow)).toBeCloseTo(0.198168, 5);
});

test('a bow of very small rise has two thirds of its rectangle', () => {
  const bow: Curve = {
    closed: true,
    vertices: [
      { x: 0, y: 0, bulge: 2e-5 },
      { x: 1000, y: 0, bulge: 0 },
    ],
  };
  expect(signedArea(bow)).toBeCloseTo((2 / 3) * 1000 * 0.01, 6);
});

test('area and length agree with dense polylines', () => {
  fc.assert(
    fc.property(anyCurve, (curve) => {
      const dense = pointsAlong(curve, 200);
      if (!curve.closed) dense.push(curve.vertices.at(-1)!);
      expect(Math.abs(signedArea(curve) - shoelace(dense))).toBeLessThan(60);
      const chords = dense.slice(1).reduce((sum, p, i) => sum + apart(p, dense[i]!), 0);
      const closing = curve.closed ? apart(dense[0]!, dense.at(-1)!) : 0;
      expect(Math.abs(lengthOf(curve) - chords - closing)).toBeLessThan(2e-4 * (1 + chords));
    }),
    { ...seeded, numRuns: 100 },
  );
});

function shoelace(points: readonly Point[]): number {
  return points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

test('areas grow with the square, lengths with the first power, and neither with the place', () => {
  fc.assert(
    fc.property(anyCurve, fc.double({ min: 0.1, max: 9, noNaN: true }), (curve, factor) => {
      fc.pre(lengthOf(curve) > 1);
      const moved = translate(scale(curve, factor), 1e4, -1e4);
      expect(lengthOf(moved) / lengthOf(curve)).toBeCloseTo(factor, 6);
      expect(Math.abs(signedArea(moved) - factor ** 2 * signedArea(curve))).toBeLessThan(0.01);
    }),
    seeded,
  );
});

test('bounds reach the outermost points of arcs, not just their ends', () => {
  expect(boundsOf(arc({ x: 0, y: 0 }, 10, -1, 1))).toMatchObject({ maxX: 10 });
  const bounds = boundsOf(circle({ x: 1, y: 2 }, 10), line({ x: 50, y: 0 }, { x: 60, y: 1 }))!;
  expect(bounds.minX).toBeCloseTo(-9, 12);
  expect(bounds.maxY).toBeCloseTo(12, 12);
  expect(bounds.maxX).toBe(60);
  expect(boundsOf()).toBeNull();
});

test('bounds hold every point and are touched on every side', () => {
  fc.assert(
    fc.property(anyCurve, (curve) => {
      const bounds = boundsOf(curve)!;
      const dense = [...pointsAlong(curve, 400), curve.vertices.at(-1)!];
      const [xs, ys] = [dense.map(({ x }) => x), dense.map(({ y }) => y)];
      expect(bounds.minX).toBeLessThan(Math.min(...xs) + 1e-6);
      expect(bounds.maxY).toBeGreaterThan(Math.max(...ys) - 1e-6);
      expect(bounds.minX).toBeGreaterThan(Math.min(...xs) - 0.05);
      expect(bounds.maxY).toBeLessThan(Math.max(...ys) + 0.05);
    }),
    { ...seeded, numRuns: 100 },
  );
});

test('places at a length: ends, middle, and past the ends', () => {
  const quarter = arc({ x: 0, y: 0 }, 10, 0, Math.PI / 2);
  const middle = placeAtLength(quarter, (10 * Math.PI) / 4);
  expect(middle.point.x).toBeCloseTo(10 * Math.SQRT1_2, 12);
  expect(middle.tangent.x).toBeCloseTo(-Math.SQRT1_2, 12);
  expect(placeAtLength(line({ x: 0, y: 0 }, { x: 5, y: 0 }), 8).point.x).toBe(8);
  expect(placeAtLength(triangle, 4 + 2.5).point).toMatchObject({ x: 2 });
  expect(placeAtLength(triangle, 11).point).toEqual({ x: 0, y: 1 });
  expect(() => placeAtLength({ closed: false, vertices: [] }, 0)).toThrow(RangeError);
});
