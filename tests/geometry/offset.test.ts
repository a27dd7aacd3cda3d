import type { Paths64 } from 'clipper2-ts';
import { EndType, JoinType, areaPaths, inflatePaths } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Curve } from '../../src/geometry/curve.js';
import { arc, circle, line, polygon, polyline } from '../../src/geometry/curve.js';
import { ellipse } from '../../src/geometry/ellipse.js';
import { lengthOf, signedArea } from '../../src/geometry/measure.js';
import { distanceTo } from '../../src/geometry/nearest.js';
import { offset } from '../../src/geometry/offset.js';
import { reverse } from '../../src/geometry/transform.js';
import { roundish, rounded, seeded } from './arbitrary.js';
import { pointsAlong } from './sampling.js';

function moved(curve: Curve, left: number): Curve {
  const result = offset(curve, left);
  if (!result.ok) throw new Error(`${result.reason} at ${result.segment}`);
  return result.curve;
}

describe('simple cases', () => {
  test('a line to its left, an arc about the same centre', () => {
    expect(moved(line({ x: 0, y: 0 }, { x: 10, y: 0 }), 3).vertices).toMatchObject([
      { x: 0, y: 3 },
      { x: 10, y: 3 },
    ]);
    const inner = moved(arc({ x: 0, y: 0 }, 10, 0, 1), 4);
    expect(inner.vertices[0]!.x).toBeCloseTo(6, 12);
    expect(lengthOf(inner)).toBeCloseTo(6, 12);
    expect(lengthOf(moved(arc({ x: 0, y: 0 }, 10, 0, 1), -4))).toBeCloseTo(14, 12);
  });

  test('a square grows and shrinks with sharp corners', () => {
    const square = polygon([
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 0, y: 10 },
    ]);
    expect(signedArea(moved(square, 2))).toBeCloseTo(36, 9);
    expect(signedArea(moved(square, -2))).toBeCloseTo(196, 9);
    expect(moved(square, -2).vertices[0]).toMatchObject({ x: -2, y: -2 });
    expect(signedArea(moved(reverse(square), -2))).toBeCloseTo(-36, 9);
  });

  test('an open right angle keeps its ends square', () => {
    const angle = polyline([
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
    ]);
    expect(moved(angle, 1).vertices).toMatchObject([
      { x: 0, y: 1 },
      { x: 9, y: 1 },
      { x: 9, y: 10 },
    ]);
    expect(moved(angle, -1).vertices).toMatchObject([
      { x: 0, y: -1 },
      { x: 11, y: -1 },
      { x: 11, y: 10 },
    ]);
  });

  test('an edge of 2,500 mm radius and more is moved like any other', () => {
    for (const radius of [2500, 19200, 1e7]) {
      const edge = arc(
        { x: 0, y: -radius },
        radius,
        Math.PI / 2 + 480 / radius,
        Math.PI / 2 - 480 / radius,
      );
      const inside = moved(edge, -5);
      expect(inside.vertices.length).toBe(edge.vertices.length);
      for (const p of pointsAlong(inside, 9)) expect(distanceTo(edge, p)).toBeCloseTo(5, 6);
    }
  });

  test('half a disc: the straight side meets the smaller arc where Pythagoras says', () => {
    const half: Curve = { ...arc({ x: 0, y: 0 }, 10, 0, Math.PI), closed: true };
    const smaller = moved(half, 2);
    expect(smaller.vertices[0]!.x).toBeCloseTo(Math.sqrt(64 - 4), 9);
    expect(smaller.vertices[0]!.y).toBeCloseTo(2, 9);
    const larger = moved(half, -2);
    expect(larger.vertices[0]!.x).toBeCloseTo(Math.sqrt(144 - 4), 9);
    expect(larger.vertices[0]!.y).toBeCloseTo(-2, 9);
  });
});

describe('refusals are values', () => {
  test('an arc that would invert, or shrink to a point', () => {
    expect(offset(circle({ x: 0, y: 0 }, 10), 12)).toEqual({
      ok: false,
      reason: 'arc-inverts',
      segment: 0,
    });
    expect(offset(circle({ x: 0, y: 0 }, 10), 10).ok).toBe(false);
    expect(offset(circle({ x: 0, y: 0 }, 10), -12).ok).toBe(true);
  });

  test('a side that its neighbours swallow', () => {
    const sliver = polygon([
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 1 },
      { x: 0, y: 1 },
    ]);
    expect(offset(sliver, 2)).toMatchObject({ ok: false, reason: 'segment-vanishes' });
  });

  test('a line that turns straight back', () => {
    const hairpin = polyline([
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 0, y: 0 },
    ]);
    expect(offset(hairpin, 1)).toEqual({ ok: false, reason: 'no-corner', segment: 1 });
  });

  test('an empty curve has an empty parallel', () => {
    expect(moved({ closed: false, vertices: [] }, 1).vertices).toEqual([]);
  });
});

test('Steiner: a convex smooth curve moved out by d gains d times its length and pi d^2', () => {
  fc.assert(
    fc.property(rounded, fc.double({ min: -60, max: 4.9, noNaN: true }), (curve, left) => {
      const result = moved(curve, left);
      const expected = signedArea(curve) - left * lengthOf(curve) + Math.PI * left * left;
      expect(signedArea(result)).toBeCloseTo(expected, 4);
      expect(lengthOf(result)).toBeCloseTo(lengthOf(curve) - 2 * Math.PI * left, 6);
    }),
    seeded,
  );
});

test('every point of the parallel of a smooth curve lies at the distance asked for', () => {
  const oval = ellipse({ x: 0, y: 0 }, 300, 200);
  for (const left of [-50, -1, 1, 40]) {
    for (const p of pointsAlong(moved(oval, left), 20)) {
      expect(distanceTo(oval, p)).toBeCloseTo(Math.abs(left), 6);
    }
  }
});

test('moved out and back again is the same curve', () => {
  fc.assert(
    fc.property(roundish, fc.double({ min: 0.1, max: 8, noNaN: true }), (curve, out) => {
      const outside = offset(curve, -out);
      fc.pre(outside.ok);
      const back = moved(outside.curve, out);
      back.vertices.forEach((v, i) => {
        const w = curve.vertices[i]!;
        expect(Math.hypot(v.x - w.x, v.y - w.y)).toBeLessThan(1e-5);
        expect(v.bulge).toBeCloseTo(w.bulge, 7);
      });
    }),
    seeded,
  );
});

test('second opinion: clipper2 on fine polylines of the same shapes finds the same areas', () => {
  const scale = 1e4;
  fc.assert(
    fc.property(roundish, fc.double({ min: -10, max: 6, noNaN: true }), (curve, left) => {
      const result = offset(curve, left);
      fc.pre(result.ok);
      const fine: Paths64 = [
        pointsAlong(curve, 60).map(({ x, y }) => ({
          x: Math.round(x * scale),
          y: Math.round(y * scale),
        })),
      ];
      const grown = inflatePaths(fine, -left * scale, JoinType.Miter, EndType.Polygon, 20);
      const area = Math.abs(areaPaths(grown)) / scale / scale;
      // 60 chords an arc, and clipper mitres prolong chords where ours prolong arcs
      expect(Math.abs(signedArea(result.curve) - area)).toBeLessThan(2e-3 * area);
    }),
    { ...seeded, numRuns: 100 },
  );
});
