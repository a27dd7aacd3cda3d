/** Test helper: random curves for fast-check. */
import fc from 'fast-check';
import type { Curve } from '../../src/geometry/curve.js';

export const seeded = { seed: 20240711, numRuns: 300 };

/** thousandths of a millimetre: points are one, or clearly two */
const coordinate = fc.integer({ min: -500_000, max: 500_000 }).map((n) => n / 1000);
const steep = fc.double({ min: 0.001, max: 0.9, noNaN: true });
const bulge = fc.oneof(
  fc.constant(0),
  steep,
  steep.map((b) => -b),
);
export const point = fc.record({ x: coordinate, y: coordinate });

/** Any chain of lines and arcs; it may cross itself. */
export const anyCurve: fc.Arbitrary<Curve> = fc
  .record({
    closed: fc.boolean(),
    vertices: fc.array(fc.record({ x: coordinate, y: coordinate, bulge }), {
      minLength: 3,
      maxLength: 9,
    }),
  })
  .map(({ closed, vertices }) => ({
    closed,
    vertices: vertices.map((v, i) => (closed || i < vertices.length - 1 ? v : { ...v, bulge: 0 })),
  }));

/** A closed counter-clockwise curve, star-shaped about the origin, whose sides bow outwards or inwards a little. */
export const roundish: fc.Arbitrary<Curve> = fc
  .array(
    fc.record({
      radius: fc.double({ min: 80, max: 160, noNaN: true }),
      bulge: fc.oneof(
        fc.constant(0),
        fc.double({ min: 0.001, max: 0.25, noNaN: true }),
        fc.double({ min: -0.1, max: -0.001, noNaN: true }),
      ),
    }),
    { minLength: 5, maxLength: 11 },
  )
  .map((sides) => ({
    closed: true,
    vertices: sides.map(({ radius, bulge: side }, i) => ({
      x: radius * Math.cos((2 * Math.PI * i) / sides.length),
      y: radius * Math.sin((2 * Math.PI * i) / sides.length),
      bulge: side,
    })),
  }));

/** A convex closed curve without corners: a polygon with its corners rounded. */
export const rounded: fc.Arbitrary<Curve> = fc
  .record({
    width: fc.double({ min: 50, max: 800, noNaN: true }),
    height: fc.double({ min: 50, max: 800, noNaN: true }),
    radius: fc.double({ min: 5, max: 24, noNaN: true }),
  })
  .map(({ width, height, radius }) => roundedRectangle(width, height, radius));

export function roundedRectangle(width: number, height: number, radius: number): Curve {
  const [w, h] = [width / 2, height / 2];
  const quarter = Math.SQRT2 - 1;
  const corners = [
    [w, h - radius, quarter],
    [w - radius, h, 0],
    [-w + radius, h, quarter],
    [-w, h - radius, 0],
    [-w, -h + radius, quarter],
    [-w + radius, -h, 0],
    [w - radius, -h, quarter],
    [w, -h + radius, 0],
  ] as const;
  return { closed: true, vertices: corners.map(([x, y, bulge]) => ({ x, y, bulge })) };
}
