import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leftDistance, placeOn, segmentArc, segmentOf } from '../../src/geometry/segment.js';
import { anyCurve, point, seeded } from './arbitrary.js';
import { pointsAlong } from './sampling.js';

test('the bulge of a quarter circle is .414214 (DXF reference, LWPOLYLINE, bulge = tan(angle / 4))', () => {
  const arc = segmentArc({ x: 10, y: 0, bulge: 0.414214 }, { x: 0, y: 10 });
  expect(arc?.sweep).toBeCloseTo(Math.PI / 2, 5);
  // the printed bulge has six decimals, worth 1e-5 of the radius
  expect(arc?.radius).toBeCloseTo(10, 4);
  expect(arc?.centre.x).toBeCloseTo(0, 4);
  expect(arc?.centre.y).toBeCloseTo(0, 4);
  expect(arc?.startAngle).toBeCloseTo(0, 5);
});

test('a negative bulge turns clockwise', () => {
  const arc = segmentArc({ x: 0, y: 10, bulge: -(Math.SQRT2 - 1) }, { x: 10, y: 0 });
  expect(arc?.sweep).toBeCloseTo(-Math.PI / 2, 12);
  expect(arc?.centre.x).toBeCloseTo(0, 12);
  expect(arc?.startAngle).toBeCloseTo(Math.PI / 2, 12);
});

test('a half circle and more than half a circle', () => {
  const half = segmentArc({ x: 5, y: 0, bulge: 1 }, { x: -5, y: 0 });
  expect(half?.radius).toBeCloseTo(5, 12);
  expect(half?.sweep).toBeCloseTo(Math.PI, 12);
  const most = segmentArc({ x: 0, y: -5, bulge: Math.tan((3 * Math.PI) / 8) }, { x: -5, y: 0 });
  expect(most?.radius).toBeCloseTo(5, 12);
  expect(most?.centre.x).toBeCloseTo(0, 12);
});

test('straight segments have no circle', () => {
  expect(segmentArc({ x: 0, y: 0, bulge: 0 }, { x: 1000, y: 0 })).toBeNull();
  expect(segmentArc({ x: 0, y: 0, bulge: 1e-12 }, { x: 1000, y: 0 })).toBeNull();
});

test('the length of a very flat arc is its chord and the known correction 8 rise^2 / (3 chord)', () => {
  const [chord, rise] = [1000, 0.5];
  const { length } = segmentOf({ x: 0, y: 0, bulge: (2 * rise) / chord }, { x: chord, y: 0 });
  expect(length - chord).toBeCloseTo((8 * rise * rise) / (3 * chord), 8);
});

test('places on a segment are the points that centre and angle give', () => {
  fc.assert(
    fc.property(anyCurve, (curve) => {
      const [a, b] = curve.vertices;
      fc.pre(Math.hypot(a!.x - b!.x, a!.y - b!.y) > 1e-3);
      const segment = segmentOf(a!, b!);
      pointsAlong({ closed: false, vertices: [a!, { ...b!, bulge: 0 }] }, 7).forEach((p, i) => {
        const place = placeOn(segment, (segment.length * i) / 7);
        expect(Math.hypot(place.point.x - p.x, place.point.y - p.y)).toBeLessThan(1e-6);
      });
    }),
    seeded,
  );
});

test('the distance from a circle is the distance from its centre less the radius', () => {
  fc.assert(
    fc.property(point, fc.double({ min: 1, max: 1e4, noNaN: true }), (p, radius) => {
      // next to the centre half the digits are lost, as with any formula that starts at the circle
      fc.pre(Math.hypot(p.x, p.y) > radius / 1000);
      // leaves (radius, 0) upwards about the origin: the left is the inside
      const left = leftDistance({ x: radius, y: 0 }, { x: 0, y: 1 }, 1 / radius, p);
      expect(left).toBeCloseTo(radius - Math.hypot(p.x, p.y), 8);
    }),
    seeded,
  );
});

test('a circle of a million kilometres is a line to the last digit that matters', () => {
  expect(leftDistance({ x: 0, y: 0 }, { x: 1, y: 0 }, 1e-12, { x: 800, y: 3 })).toBeCloseTo(3, 6);
  expect(leftDistance({ x: 0, y: 0 }, { x: 1, y: 0 }, 0, { x: 800, y: -3 })).toBe(-3);
});
