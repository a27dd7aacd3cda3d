import { expect, test } from 'vitest';
import { arc } from '../../src/geometry/curve.js';
import { closedFrom, joinCurves } from '../../src/geometry/join.js';
import { signedArea } from '../../src/geometry/measure.js';

const upper = arc({ x: 0, y: 0 }, 10, 0, Math.PI).vertices;
const lower = arc({ x: 0, y: 0 }, 10, Math.PI, 2 * Math.PI).vertices;

test('two half circles make one closed circle without a doubled point', () => {
  const whole = closedFrom([upper, lower]);
  expect(whole.closed).toBe(true);
  expect(whole.vertices.length).toBe(4);
  expect(whole.vertices.every(({ bulge }) => bulge > 0)).toBe(true);
  expect(signedArea(whole)).toBeCloseTo(Math.PI * 100, 9);
});

test('runs that do not meet are joined by straight lines', () => {
  const slot = closedFrom([upper, lower.map((v) => ({ ...v, y: v.y - 7 }))]);
  expect(slot.vertices.length).toBe(6);
  expect(signedArea(slot)).toBeCloseTo(Math.PI * 100 + 20 * 7, 9);
});

test('an open join keeps its ends, and points a millionth of a millimetre apart become one', () => {
  const nudged = lower.map((v) => ({ ...v, x: v.x + 2e-7 }));
  const open = joinCurves([upper, nudged]);
  expect(open.closed).toBe(false);
  expect(open.vertices.length).toBe(5);
  expect(open.vertices.at(-1)!.bulge).toBe(0);
});

test('nothing joined is an empty curve; one point stays a point', () => {
  expect(joinCurves([]).vertices).toEqual([]);
  expect(closedFrom([[{ x: 1, y: 2, bulge: 0 }]]).vertices.length).toBe(1);
});
