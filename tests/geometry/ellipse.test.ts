import { expect, test } from 'vitest';
import { ellipse } from '../../src/geometry/ellipse.js';
import { boundsOf, lengthOf, signedArea } from '../../src/geometry/measure.js';
import { segmentsOf } from '../../src/geometry/segment.js';
import { pointsAlong } from './sampling.js';

/** Distance from an ellipse about the origin, by Newton's method on the parameter. */
function distanceFromEllipse(a: number, b: number, x: number, y: number): number {
  let u = Math.atan2(y * a, x * b);
  for (let i = 0; i < 50; i++) {
    const [c, s] = [Math.cos(u), Math.sin(u)];
    const slope = (a * c - x) * -a * s + (b * s - y) * b * c;
    const bend = a * a * s * s - (a * c - x) * a * c + b * b * c * c - (b * s - y) * b * s;
    u -= slope / bend;
  }
  return Math.hypot(a * Math.cos(u) - x, b * Math.sin(u) - y);
}

test.each([
  [300, 200],
  [200, 300],
  [300, 299.9],
  [300, 40],
  [5, 3],
])('half-axes %f and %f: true to 0.005 mm, closed, smooth, the same in all quarters', (a, b) => {
  const oval = ellipse({ x: 0, y: 0 }, a, b);
  for (const { x, y } of pointsAlong(oval, 50)) {
    expect(distanceFromEllipse(a, b, x, y)).toBeLessThan(0.005);
  }
  const segments = segmentsOf(oval);
  segments.forEach(({ toTangent: t }, i) => {
    const next = segments[(i + 1) % segments.length]!.fromTangent;
    expect(Math.abs(t.x * next.y - t.y * next.x)).toBeLessThan(1e-7);
  });
  expect(signedArea(oval)).toBeCloseTo(Math.PI * a * b, -1);
  const bounds = boundsOf(oval)!;
  expect(bounds.maxX).toBeCloseTo(a, 2);
  expect(bounds.minY).toBeCloseTo(-b, 2);
  expect(bounds.maxX).toBeCloseTo(-bounds.minX, 9);
});

test('its length is the tabulated one: 4 E(k) for half-axes 1 and 1/2 is 4.84422 (from memory)', () => {
  expect(lengthOf(ellipse({ x: 7, y: 9 }, 1000, 500))).toBeCloseTo(4844.22, 1);
});

test('equal half-axes give a true circle; no half-axis is refused', () => {
  expect(ellipse({ x: 1, y: 2 }, 5, 5).vertices.length).toBe(4);
  expect(() => ellipse({ x: 0, y: 0 }, 0, 5)).toThrow(RangeError);
});
