/** What the proof measures with: crossings, samples and doubled lines, on shapes whose answer is known. */
import { describe, expect, test } from 'vitest';
import { arc, circle, line, polygon, type Curve } from '../../src/geometry/curve.js';
import { segmentsOf } from '../../src/geometry/segment.js';
import { crossings, samplesOf, transposed } from '../../src/proof/contour.js';
import { doubledLine } from '../../src/proof/doubled.js';

describe('crossings', () => {
  const ring = segmentsOf(circle({ x: 1, y: 2 }, 5));

  test.each([-3.9, 0, 1, 3, 5.999])('a circle at x = %d', (x) => {
    const half = Math.sqrt(25 - (x - 1) ** 2);
    const found = crossings(ring, x);
    expect(Math.max(...found)).toBeCloseTo(2 + half, 8);
    expect(Math.min(...found)).toBeCloseTo(2 - half, 8);
  });

  test('nothing beyond it', () => expect(crossings(ring, 6.1)).toEqual([]));

  test('level lines by the turned contour', () => {
    const turned = segmentsOf(transposed(circle({ x: 1, y: 2 }, 5)));
    expect(Math.max(...crossings(turned, 5))).toBeCloseTo(1 + 4, 8);
  });
});

test('samples lie on the curve and look along it', () => {
  for (const { point, tangent } of samplesOf(circle({ x: 0, y: 0 }, 7))) {
    expect(Math.hypot(point.x, point.y)).toBeCloseTo(7, 9);
    expect(point.x * tangent.x + point.y * tangent.y).toBeCloseTo(0, 9);
  }
});

describe('doubled lines', () => {
  const on = (layer: string, ...curves: Curve[]): { layer: string; curve: Curve }[] =>
    curves.map((curve) => ({ layer, curve }));
  const a = { x: 0, y: 0 };
  const b = { x: 10, y: 0 };
  const square = polygon([a, b, { x: 10, y: 10 }, { x: 0, y: 10 }]);

  test.each<[string, Curve, Curve]>([
    ['a line twice', line(a, b), line(a, b)],
    ['and back', line(a, b), line(b, a)],
    ['in part', line(a, b), line({ x: 4, y: 0 }, { x: 20, y: 0 })],
    ['inside', line(a, b), line({ x: 4, y: 0 }, { x: 5, y: 0 })],
    ['a hair beside', line(a, b), line({ x: 0, y: 0.001 }, { x: 10, y: 0.001 })],
    ['a circle twice', circle(a, 5), circle(a, 5)],
    ['an arc on its circle', circle(a, 5), arc(a, 5, 0.3, 0.5)],
    ['a square and one of its sides', square, line(b, { x: 10, y: 10 })],
    [
      'squares side by side',
      square,
      polygon([b, { x: 20, y: 0 }, { x: 20, y: 10 }, { x: 10, y: 10 }]),
    ],
  ])('%s', (_name, one, other) => {
    expect(doubledLine(on('outline', one, other))).toMatchObject({ layer: 'outline' });
    expect(doubledLine(on('outline', other, one))).toMatchObject({ layer: 'outline' });
    expect(doubledLine([...on('outline', one), ...on('joint', other)])).toBeNull();
  });

  test.each<[string, Curve, Curve]>([
    ['crossing lines', line(a, b), line({ x: 5, y: -5 }, { x: 5, y: 5 })],
    ['end to end', line(a, b), line(b, { x: 20, y: 0 })],
    ['side by side, 0.01 mm apart', line(a, b), line({ x: 0, y: 0.01 }, { x: 10, y: 0.01 })],
    ['a line that touches a circle', circle(a, 5), line({ x: 5, y: -5 }, { x: 5, y: 5 })],
    ['circles that touch', circle(a, 5), circle(b, 5)],
    ['circles about one point', circle(a, 5), circle(a, 5.01)],
    ['lines in a row', line(a, b), line({ x: 11, y: 0 }, { x: 20, y: 0 })],
  ])('not: %s', (_name, one, other) => {
    expect(doubledLine(on('outline', one, other))).toBeNull();
    expect(doubledLine(on('outline', other, one))).toBeNull();
  });

  test('where parts may touch', () => {
    const beside = polygon([b, { x: 20, y: 0 }, { x: 20, y: 10 }, { x: 10, y: 10 }]);
    const shared = on('outline', square, beside);
    expect(doubledLine(shared, ({ x }) => Math.abs(x - 10) < 0.01)).toBeNull();
    expect(doubledLine(shared)!.point.x).toBeCloseTo(10, 6);
  });
});
