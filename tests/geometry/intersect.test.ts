import fc from 'fast-check';
import { expect, test } from 'vitest';
import { circle, line, polygon } from '../../src/geometry/curve.js';
import {
  crossBetween,
  crossLine,
  crossRectangle,
  meetsRectangle,
} from '../../src/geometry/intersect.js';
import { contains, distanceTo } from '../../src/geometry/nearest.js';
import { anyCurve, point, roundish, seeded } from './arbitrary.js';
import { pointsAlong } from './sampling.js';

const round = circle({ x: 0, y: 0 }, 10);

test('a line crosses a circle where Pythagoras says', () => {
  const [first, second, ...more] = crossLine(round, { x: -50, y: 6 }, { x: 1, y: 6 });
  expect(more).toEqual([]);
  expect(first!.x).toBeCloseTo(-8, 12);
  expect(second!.x).toBeCloseTo(8, 12);
  expect(second!.y).toBeCloseTo(6, 12);
});

test('touching gives one point, missing gives none, and a vertex is not counted twice', () => {
  expect(crossLine(round, { x: -3, y: 10 }, { x: 3, y: 10 }).length).toBe(1);
  expect(crossLine(round, { x: -3, y: 10.001 }, { x: 3, y: 10.001 })).toEqual([]);
  const through = crossLine(round, { x: -3, y: 0 }, { x: 3, y: 0 });
  expect(through.map(({ x }) => Math.round(x))).toEqual([-10, 10]);
});

test('between two points only what lies between them counts, ends included', () => {
  expect(crossBetween(round, { x: 0, y: 6 }, { x: 20, y: 6 }).length).toBe(1);
  expect(crossBetween(round, { x: 0, y: 0 }, { x: 9, y: 0 })).toEqual([]);
  expect(crossBetween(round, { x: 0, y: 0 }, { x: 10, y: 0 }).length).toBe(1);
});

test('parallel lines do not cross', () => {
  const level = line({ x: 0, y: 0 }, { x: 10, y: 0 });
  expect(crossLine(level, { x: 0, y: 1 }, { x: 1, y: 1 })).toEqual([]);
});

test('an arc of nearly infinite radius is crossed like a line', () => {
  const flat = {
    closed: false,
    vertices: [
      { x: -500, y: 0, bulge: 1e-7 },
      { x: 500, y: 0, bulge: 0 },
    ],
  };
  const [hit] = crossLine(flat, { x: 0, y: -3 }, { x: 0, y: 3 });
  expect(hit!.y).toBeCloseTo(-1e-7 * 500, 9);
});

test('rectangles: crossed, enclosed, enclosing, apart', () => {
  const box = (minX: number, minY: number, maxX: number, maxY: number) => ({
    minX,
    minY,
    maxX,
    maxY,
  });
  expect(crossRectangle(round, box(0, 0, 20, 20)).length).toBe(2);
  expect(meetsRectangle(round, box(-20, -20, 20, 20))).toBe(true);
  expect(meetsRectangle(round, box(-1, -1, 1, 1))).toBe(false);
  expect(meetsRectangle(round, box(7.5, 7.5, 20, 20))).toBe(false);
  expect(meetsRectangle(round, box(7, 7, 20, 20))).toBe(true);
  // an edge that only the bow of an arc reaches
  expect(meetsRectangle(round, box(-3, 9.9, 3, 20))).toBe(true);
  expect(meetsRectangle(polygon([]), box(0, 0, 1, 1))).toBe(false);
});

test('every crossing lies on both, and none is missed', () => {
  fc.assert(
    fc.property(anyCurve, point, point, (curve, a, b) => {
      fc.pre(Math.hypot(a.x - b.x, a.y - b.y) > 1);
      const side = (p: { x: number; y: number }) =>
        ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);
      const found = crossLine(curve, a, b);
      for (const p of found) {
        expect(Math.abs(side(p))).toBeLessThan(1e-6);
        expect(distanceTo(curve, p)).toBeLessThan(1e-5);
      }
      // wherever a dense polyline changes sides there is a crossing near
      const dense = [
        ...pointsAlong(curve, 100),
        curve.closed ? curve.vertices[0]! : curve.vertices.at(-1)!,
      ];
      dense.slice(1).forEach((p, i) => {
        const q = dense[i]!;
        if (side(p) * side(q) >= 0) return;
        const step = Math.hypot(p.x - q.x, p.y - q.y);
        const near = found.some((hit) => Math.hypot(hit.x - p.x, hit.y - p.y) < step + 1e-3);
        expect(near).toBe(true);
      });
    }),
    { ...seeded, numRuns: 150 },
  );
});

test('a line from inside a closed curve to far outside crosses it an odd number of times', () => {
  fc.assert(
    fc.property(
      roundish,
      point,
      fc.double({ min: 0, max: 6.28, noNaN: true }),
      (curve, p, angle) => {
        fc.pre(contains(curve, p) && distanceTo(curve, p) > 0.1);
        const far = { x: p.x + 2000 * Math.cos(angle), y: p.y + 2000 * Math.sin(angle) };
        expect(crossBetween(curve, p, far).length % 2).toBe(1);
      },
    ),
    { ...seeded, numRuns: 1000 },
  );
});
