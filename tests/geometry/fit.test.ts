import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Vertex } from '../../src/geometry/curve.js';
import type { SmoothCurve } from '../../src/geometry/fit.js';
import { fitArcs, fitTangentArcs } from '../../src/geometry/fit.js';
import { segmentArc, segmentsOf } from '../../src/geometry/segment.js';
import { farthest, pointsAlong } from './sampling.js';

/** A stave's edge: half-width 38.2 mm in the middle, 32.2 at the ends, of an arc-shaped profile. */
const staveEdge: SmoothCurve = {
  at: (x) => ({ x, y: 38.2 - 240 * (1 - Math.cos(x / 2133)) }),
  tangent: (x) => ({ x: 1, y: -(240 / 2133) * Math.sin(x / 2133) }),
};

function wave(y: (x: number) => number): SmoothCurve {
  const h = 1e-4;
  return {
    at: (x) => ({ x, y: y(x) }),
    tangent: (x) => ({ x: 2 * h, y: y(x + h) - y(x - h) }),
  };
}

function ellipsePath(a: number, b: number): SmoothCurve {
  return {
    at: (u) => ({ x: a * Math.cos(u), y: b * Math.sin(u) }),
    tangent: (u) => ({ x: -a * Math.sin(u), y: b * Math.cos(u) }),
  };
}

/** Largest distance between the curve and the fit, measured both ways on dense polylines. */
function error(curve: SmoothCurve, from: number, to: number, run: Vertex[]): number {
  const exact = Array.from({ length: 2001 }, (_, i) => curve.at(from + ((to - from) * i) / 2000));
  const arcs = [...pointsAlong({ closed: false, vertices: run }, 200), run.at(-1)!];
  return Math.max(farthest(arcs, exact), farthest(exact, arcs));
}

function largestKink(run: Vertex[]): number {
  const segments = segmentsOf({ closed: false, vertices: run });
  return Math.max(
    0,
    ...segments.slice(1).map(({ fromTangent: b }, i) => {
      const a = segments[i]!.toTangent;
      return Math.abs(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y));
    }),
  );
}

describe('a wine cask stave edge', () => {
  const run = fitArcs(staveEdge, -480, 480);

  test('takes no more than six arcs and stays within 0.005 mm', () => {
    expect(run.length - 1).toBeLessThanOrEqual(6);
    expect(error(staveEdge, -480, 480, run)).toBeLessThan(0.005);
  });

  test('starts and ends exactly where the curve does, with nothing after the last vertex', () => {
    expect(run[0]).toMatchObject(staveEdge.at(-480));
    expect(run.at(-1)).toEqual({ ...staveEdge.at(480), bulge: 0 });
  });

  test('needs few looks at the curve', () => {
    let looks = 0;
    fitArcs({ ...staveEdge, at: (u) => (looks++, staveEdge.at(u)) }, -480, 480);
    expect(looks).toBeLessThan(100);
  });

  test('is the same on both sides of the middle', () => {
    const fine = fitArcs(staveEdge, -480, 480, 0.0002);
    expect(fine.length).toBeGreaterThan(3);
    fine.forEach((vertex, i) => {
      const twin = fine[fine.length - 1 - i]!;
      expect(vertex.x).toBeCloseTo(-twin.x, 6);
      expect(vertex.y).toBeCloseTo(twin.y, 8);
    });
  });

  test('keeps its own direction at the ends when asked', () => {
    const tangent = fitTangentArcs(staveEdge, -480, 480);
    const first = segmentsOf({ closed: false, vertices: tangent })[0]!;
    expect(first.fromTangent.y / first.fromTangent.x).toBeCloseTo(
      (240 / 2133) * Math.sin(480 / 2133),
      7,
    );
    expect(error(staveEdge, -480, 480, tangent)).toBeLessThan(0.005);
  });
});

test('a straight curve gives one straight segment', () => {
  const straight: SmoothCurve = {
    at: (u) => ({ x: 3 * u, y: 4 * u }),
    tangent: () => ({ x: 3, y: 4 }),
  };
  expect(fitArcs(straight, 0, 10)).toEqual([
    { x: 0, y: 0, bulge: 0 },
    { x: 30, y: 40, bulge: 0 },
  ]);
});

test('a true arc gives one arc, of its own radius', () => {
  const run = fitArcs(ellipsePath(287, 287), 0.2, 2.1);
  expect(run.length).toBe(2);
  expect(segmentArc(run[0]!, run[1]!)?.radius).toBeCloseTo(287, 8);
  expect(fitTangentArcs(ellipsePath(287, 287), 0.2, 2.1).length).toBe(2);
});

test('a full circle gives two halves, and one walked round twice is not mistaken for a short arc', () => {
  const full = fitArcs(ellipsePath(100, 100), 0, 2 * Math.PI);
  expect(full.length - 1).toBe(2);
  const twice = fitArcs(ellipsePath(100, 100), 0, 4 * Math.PI + 1);
  const length = segmentsOf({ closed: false, vertices: twice }).reduce(
    (sum, s) => sum + s.length,
    0,
  );
  expect(length).toBeCloseTo(100 * (4 * Math.PI + 1), 6);
});

test('a curve walked backwards is the same curve', () => {
  const run = fitArcs(
    wave((x) => x ** 3 / 1e4),
    100,
    -60,
  );
  expect(run[0]!.x).toBe(100);
  expect(run.at(-1)!.x).toBe(-60);
  expect(
    error(
      wave((x) => x ** 3 / 1e4),
      100,
      -60,
      run,
    ),
  ).toBeLessThan(0.005);
});

test.each([
  ['one inflection', wave((x) => x ** 3 / 1e4), -100, 100],
  ['many inflections', wave((x) => 5 * Math.sin(x / 10)), 0, 300],
  ['an ellipse', ellipsePath(300, 200), 0, 2 * Math.PI],
  ['a thin ellipse', ellipsePath(300, 20), 0, 2 * Math.PI],
  ['a curve straight at one end', wave((x) => 200 * Math.exp(-x / 50)), 0, 400],
])('%s: within the tolerance, tangent throughout', (_, curve, from, to) => {
  for (const tolerance of [0.2, 0.005]) {
    const run = fitArcs(curve, from, to, tolerance);
    expect(error(curve, from, to, run)).toBeLessThan(tolerance);
    expect(largestKink(run)).toBeLessThan(1e-7);
  }
});

test("few arcs: biarcs err by k' h^3 / 324, so a curve asks for the integral of cbrt(k' / 324 tolerance)", () => {
  // a clothoid, k = s / 10^4: 400 mm long at k' = 1e-4 needs 15.8 biarcs at 0.005 mm
  const clothoid: SmoothCurve = {
    at: (s) => integrated(s),
    tangent: (s) => ({ x: Math.cos(s ** 2 / 2e4), y: Math.sin(s ** 2 / 2e4) }),
  };
  const run = fitTangentArcs(clothoid, -200, 200);
  const biarcs = 400 * Math.cbrt(1e-4 / 324 / 0.005);
  expect(run.length - 1).toBeLessThanOrEqual(2 * Math.ceil(biarcs) + 2);
});

/** The clothoid by Simpson's rule. */
function integrated(s: number) {
  const steps = 200;
  const h = s / steps;
  let [x, y] = [0, 0];
  for (let i = 0; i <= steps; i++) {
    const weight = ((i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2) * h) / 3;
    x += weight * Math.cos((i * h) ** 2 / 2e4);
    y += weight * Math.sin((i * h) ** 2 / 2e4);
  }
  return { x, y };
}

test('any stave-like edge stays within any tolerance', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      number(20, 60),
      number(0, 12),
      number(-8, 8),
      number(-4, 4),
      number(100, 900),
      fc.constantFrom(0.001, 0.005, 0.05),
      (width, square, slope, cubic, half, tolerance) => {
        const edge = wave((x) => {
          const u = x / half;
          return width - square * u * u + slope * u + cubic * u ** 3 - 0.1 * square * u ** 4;
        });
        const run = fitArcs(edge, -half, half, tolerance);
        // the exact curve is itself drawn as 2000 chords here, up to 2e-5 mm off
        expect(error(edge, -half, half, run)).toBeLessThan(tolerance);
        expect(largestKink(run)).toBeLessThan(1e-7);
      },
    ),
    { seed: 7, numRuns: 25 },
  );
});

test('nonsense is refused, not fitted', () => {
  expect(() => fitArcs(staveEdge, 1, 1)).toThrow(RangeError);
  expect(() => fitArcs(staveEdge, 0, Infinity)).toThrow(RangeError);
  expect(() =>
    fitArcs(
      wave(() => NaN),
      0,
      1,
    ),
  ).toThrow(RangeError);
  const still: SmoothCurve = { at: (x) => ({ x, y: x * x }), tangent: () => ({ x: 0, y: 0 }) };
  expect(() => fitTangentArcs(still, 0, 1)).toThrow(RangeError);
});
