import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.js';
import { arc, circle, line, polygon } from '../../src/geometry/curve.js';
import { contains, distanceTo, nearestOn } from '../../src/geometry/nearest.js';
import { rotate } from '../../src/geometry/transform.js';
import { anyCurve, point, seeded } from './arbitrary.js';
import { pointsAlong } from './sampling.js';

describe('distance', () => {
  test('from a circle, inside and out', () => {
    expect(distanceTo(circle({ x: 0, y: 0 }, 10), { x: 6, y: 8.5 })).toBeCloseTo(
      Math.hypot(6, 8.5) - 10,
      12,
    );
    expect(distanceTo(circle({ x: 0, y: 0 }, 10), { x: 1, y: 0 })).toBeCloseTo(9, 12);
    expect(distanceTo(circle({ x: 0, y: 0 }, 10), { x: 0, y: 0 })).toBeCloseTo(10, 6);
  });

  test('past the end of an arc or a line it is measured to the end', () => {
    const quarter = arc({ x: 0, y: 0 }, 10, 0, Math.PI / 2);
    expect(nearestOn(quarter, { x: 13, y: -4 }).point).toMatchObject({ x: 10 });
    expect(distanceTo(quarter, { x: 13, y: -4 })).toBeCloseTo(5, 12);
    expect(distanceTo(line({ x: 0, y: 0 }, { x: 10, y: 0 }), { x: 13, y: 4 })).toBe(5);
  });

  test('past the gap of an arc of more than half a circle', () => {
    const most: Curve = {
      closed: false,
      vertices: [
        { x: 0, y: 10, bulge: Math.tan((3 * Math.PI) / 8) },
        { x: 10, y: 0, bulge: 0 },
      ],
    };
    expect(distanceTo(most, { x: -20, y: 0 })).toBeCloseTo(10, 12);
    expect(distanceTo(most, { x: 10, y: 10 })).toBeCloseTo(10, 12);
  });

  test('a curve of one point, and of none', () => {
    expect(distanceTo({ closed: true, vertices: [{ x: 3, y: 4, bulge: 0 }] }, { x: 0, y: 0 })).toBe(
      5,
    );
    expect(() => nearestOn({ closed: false, vertices: [] }, { x: 0, y: 0 })).toThrow(RangeError);
  });

  test('agrees with dense sampling', () => {
    fc.assert(
      fc.property(anyCurve, point, (curve, p) => {
        const dense = [...pointsAlong(curve, 400), curve.vertices.at(-1)!];
        const sampled = Math.min(...dense.map((q) => Math.hypot(p.x - q.x, p.y - q.y)));
        const found = nearestOn(curve, p);
        expect(found.distance).toBeLessThan(sampled + 1e-5);
        expect(found.distance).toBeGreaterThan(sampled - 5);
        expect(distanceTo(curve, found.point)).toBeLessThan(1e-5);
      }),
      { ...seeded, numRuns: 150 },
    );
  });
});

describe('containment', () => {
  test('a circle of four arcs: points on the chords and level with the vertices are inside', () => {
    const round = circle({ x: 0, y: 0 }, 10);
    for (let i = 0; i < 40; i++) {
      const angle = (i * Math.PI) / 20;
      expect(contains(round, { x: 9.99 * Math.cos(angle), y: 9.99 * Math.sin(angle) })).toBe(true);
      expect(contains(round, { x: 10.01 * Math.cos(angle), y: 10.01 * Math.sin(angle) })).toBe(
        false,
      );
    }
    for (const [x, y] of [
      [5, 5],
      [-5, 5],
      [-5, -5],
      [5, -5],
      [0, 0],
      [2, 0],
      [0, 7],
    ]) {
      expect(contains(round, { x: x!, y: y! })).toBe(true);
    }
  });

  test('two half circles, and a bite out of a square', () => {
    const halves: Curve = {
      closed: true,
      vertices: [
        { x: -5, y: 0, bulge: 1 },
        { x: 5, y: 0, bulge: 1 },
      ],
    };
    expect(contains(halves, { x: 0, y: 0 })).toBe(true);
    expect(contains(halves, { x: 0, y: 4.9 })).toBe(true);
    expect(contains(halves, { x: -6, y: 0 })).toBe(false);
    const square = polygon([
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 0, y: 10 },
    ]);
    const bitten = {
      closed: true,
      vertices: square.vertices.map((v, i) => (i === 1 ? { ...v, bulge: -0.5 } : v)),
    };
    expect(contains(square, { x: 9, y: 5 })).toBe(true);
    expect(contains(bitten, { x: 9, y: 5 })).toBe(false);
    expect(contains(bitten, { x: 7.4, y: 5 })).toBe(true);
  });

  test('agrees with the winding of a dense polyline', () => {
    fc.assert(
      fc.property(
        anyCurve,
        point,
        fc.double({ min: 0, max: 6.3, noNaN: true }),
        (curve, p, angle) => {
          const closed = { ...curve, closed: true };
          fc.pre(distanceTo(closed, p) > 1);
          const dense = pointsAlong(closed, 300);
          expect(contains(closed, p)).toBe(evenOdd(dense, p));
          const turned = rotate(closed, angle, p);
          expect(contains(turned, p)).toBe(contains(closed, p));
        },
      ),
      { ...seeded, numRuns: 150 },
    );
  });
});

function evenOdd(points: readonly Point[], p: Point): boolean {
  let inside = false;
  points.forEach((a, i) => {
    const b = points[(i + 1) % points.length]!;
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) {
      inside = !inside;
    }
  });
  return inside;
}
