import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Curve, Point } from '../../src/geometry/curve.js';
import { arc, circle, line } from '../../src/geometry/curve.js';
import * as transform from '../../src/geometry/transform.js';
import { anyCurve, seeded } from './arbitrary.js';
import { pointsAlong } from './sampling.js';

/** Every point of the moved curve is the moved point of the curve. */
function movesLike(move: (curve: Curve) => Curve, point: (p: Point) => Point): void {
  fc.assert(
    fc.property(anyCurve, (curve) => {
      const expected = pointsAlong(curve, 5).map(point);
      const off = pointsAlong(move(curve), 5).map((p, i) =>
        Math.hypot(p.x - expected[i]!.x, p.y - expected[i]!.y),
      );
      expect(off.length).toBe(expected.length);
      expect(Math.max(...off)).toBeLessThan(1e-6);
    }),
    seeded,
  );
}

test('translate, rotate, mirror and scale move every point of lines and arcs', () => {
  movesLike(
    (c) => transform.translate(c, 3, -70),
    ({ x, y }) => ({ x: x + 3, y: y - 70 }),
  );
  movesLike(
    (c) => transform.mirrorX(c),
    ({ x, y }) => ({ x: -x, y }),
  );
  movesLike(
    (c) => transform.mirrorY(c),
    ({ x, y }) => ({ x, y: -y }),
  );
  movesLike(
    (c) => transform.scale(c, 1.7),
    ({ x, y }) => ({ x: 1.7 * x, y: 1.7 * y }),
  );
  const [c, s] = [Math.cos(2), Math.sin(2)];
  movesLike(
    (curve) => transform.rotate(curve, 2, { x: 10, y: 20 }),
    ({ x, y }) => ({ x: 10 + c * (x - 10) - s * (y - 20), y: 20 + s * (x - 10) + c * (y - 20) }),
  );
});

test('a quarter turn takes the x axis to the y axis', () => {
  const { vertices } = transform.rotate(line({ x: 1, y: 0 }, { x: 2, y: 0 }), Math.PI / 2);
  expect(vertices[0]!.x).toBeCloseTo(0, 12);
  expect(vertices[0]!.y).toBeCloseTo(1, 12);
});

test('reversed, the same points come in the other order', () => {
  fc.assert(
    fc.property(anyCurve, (curve) => {
      const forwards = pointsAlong(curve, 4);
      const backwards = pointsAlong(transform.reverse(curve), 4);
      // a sample of a segment at 1/4 is its sample at 3/4 from the other end
      const count = forwards.length;
      forwards.forEach((p, i) => {
        const twin = backwards[(count - i) % count]!;
        if (i > 0) expect(Math.hypot(p.x - twin.x, p.y - twin.y)).toBeLessThan(1e-6);
      });
    }),
    seeded,
  );
});

test('reversed twice is unchanged', () => {
  fc.assert(
    fc.property(anyCurve, (curve) => {
      expect(transform.reverse(transform.reverse(curve))).toEqual(curve);
    }),
    seeded,
  );
});

test('a reversed circle starts where it did and turns clockwise; a reversed arc ends with bulge 0', () => {
  const reversed = transform.reverse(circle({ x: 0, y: 0 }, 5));
  expect(reversed.vertices[0]).toMatchObject({ x: 5, y: 0 });
  expect(reversed.vertices.every(({ bulge }) => bulge < 0)).toBe(true);
  const back = transform.reverse(arc({ x: 0, y: 0 }, 5, 0, 1));
  expect(back.vertices.map(({ bulge }) => Math.sign(bulge))).toEqual([-1, 0]);
});

test('nothing turns into -0', () => {
  const flat = line({ x: 0, y: 0 }, { x: 0, y: 0 });
  for (const moved of [transform.mirrorX(flat), transform.mirrorY(flat), transform.reverse(flat)]) {
    for (const { x, y, bulge } of moved.vertices) {
      expect([x, y, bulge].some((value) => Object.is(value, -0))).toBe(false);
    }
  }
});

test('empty curves stay empty', () => {
  expect(transform.reverse({ closed: true, vertices: [] }).vertices).toEqual([]);
  expect(transform.reverse({ closed: false, vertices: [] }).vertices).toEqual([]);
});
