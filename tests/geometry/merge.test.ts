import { expect, test } from 'vitest';
import { arc, polyline } from '../../src/geometry/curve.js';
import { mergeArcs } from '../../src/geometry/merge.js';

test('pieces of one circle become one arc, up to half a circle', () => {
  const pieces = [0, 0.3, 0.9, 1.4].flatMap((from, i, all) =>
    i === 0 ? [] : arc({ x: 0, y: 0 }, 10, all[i - 1]!, from).vertices.slice(0, 1),
  );
  const end = arc({ x: 0, y: 0 }, 10, 0.9, 1.4).vertices[1]!;
  const merged = mergeArcs([...pieces, end]);
  expect(merged.length).toBe(2);
  expect(merged[0]!.bulge).toBeCloseTo(Math.tan(1.4 / 4), 12);
  expect(mergeArcs(arc({ x: 0, y: 0 }, 10, 0, 2 * Math.PI).vertices).length).toBe(3);
});

test('pieces of one straight line become one', () => {
  const run = polyline([
    { x: 0, y: 0 },
    { x: 1, y: 1 },
    { x: 5, y: 5 },
  ]).vertices;
  expect(mergeArcs(run)).toEqual([run[0], run[2]]);
});

test('corners, turns back and different radii stay', () => {
  const corner = polyline([
    { x: 0, y: 0 },
    { x: 1, y: 0 },
    { x: 1, y: 1 },
  ]).vertices;
  expect(mergeArcs(corner)).toEqual(corner);
  const back = polyline([
    { x: 0, y: 0 },
    { x: 9, y: 0 },
    { x: 4, y: 0 },
  ]).vertices;
  expect(mergeArcs(back)).toEqual(back);
  const quarter = Math.tan(Math.PI / 8);
  const radii = [
    { x: 10, y: 0, bulge: quarter },
    { x: 0, y: 10, bulge: quarter },
    { x: -11, y: -1, bulge: 0 },
  ];
  expect(mergeArcs(radii)).toEqual(radii);
  expect(mergeArcs([])).toEqual([]);
});
