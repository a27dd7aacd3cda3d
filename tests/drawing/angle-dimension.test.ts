import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleDimension } from '../../src/drawing/angle-dimension.js';
import { merge, strokes } from '../../src/drawing/build.js';
import { overlaps } from '../../src/drawing/overlap.js';
import { line } from '../../src/geometry/curve.js';
import { segmentsOf } from '../../src/geometry/segment.js';

const vertex = { x: 7, y: -4 };
const polar = (radius: number, angle: number) => ({
  x: vertex.x + radius * Math.cos(angle),
  y: vertex.y + radius * Math.sin(angle),
});

describe('the dimension of an angle', () => {
  it('is an arc of its radius over just that angle', () => {
    const { strokes: drawn } = angleDimension('60°', vertex, 30, 0.2, 0.2 + Math.PI / 3);
    const segments = segmentsOf(drawn[0]!.curve);
    expect(segments.reduce((sum, s) => sum + s.sweep, 0)).toBeCloseTo(Math.PI / 3, 9);
    for (const segment of segments) expect(1 / segment.curvature).toBeCloseTo(30, 9);
  });

  it('runs on outside where the sides leave no room', () => {
    const { strokes: drawn } = angleDimension('6.4°', vertex, 40, 0, 0.112);
    const sweep = segmentsOf(drawn[0]!.curve).reduce((sum, s) => sum + s.sweep, 0);
    expect(sweep).toBeCloseTo(0.112 + 2 * (6 / 40), 9);
  });

  it('has extension lines only where the sides end short of the arc', () => {
    const short = angleDimension('45°', vertex, 30, 0, Math.PI / 4, { sides: [10, 50] });
    const lines = short.strokes.filter(({ curve }) => curve.vertices.length === 2);
    const straight = lines.filter(({ curve }) => curve.vertices[0]!.bulge === 0);
    expect(straight).toHaveLength(1);
    expect(straight[0]!.curve.vertices[0]!.x).toBeCloseTo(vertex.x + 11, 9);
    expect(straight[0]!.curve.vertices[1]!.x).toBeCloseTo(vertex.x + 31.5, 9);
  });

  it('has arrowheads whose points lie on the sides and whose middles lie on the arc', () => {
    const { strokes: drawn } = angleDimension('60°', vertex, 30, 0, Math.PI / 3);
    const [, first, second] = drawn.map(({ curve }) => curve.vertices);
    expect(first![1]).toMatchObject({ x: vertex.x + 30, y: vertex.y });
    expect(second![1]!.y).toBeCloseTo(vertex.y + 30 * Math.sin(Math.PI / 3), 9);
    const middle = { x: (first![0]!.x + first![2]!.x) / 2, y: (first![0]!.y + first![2]!.y) / 2 };
    expect(Math.hypot(middle.x - vertex.x, middle.y - vertex.y)).toBeCloseTo(30, 1);
    expect(middle.y).toBeGreaterThan(vertex.y);
  });

  it('has text that is the right way up and clear of arc, arrows and sides', () => {
    const any = fc.record({
      from: fc.double({ min: -4, max: 4, noNaN: true }),
      sweep: fc.double({ min: 0.02, max: 3, noNaN: true }),
      radius: fc.double({ min: 15, max: 120, noNaN: true }),
      text: fc.constantFrom('6.43°', '135.0°', '12.9° = 22.8 per 100'),
      height: fc.constantFrom(2.5, 3.5),
    });
    fc.assert(
      fc.property(any, ({ from, sweep, radius, text, height }) => {
        const to = from + sweep;
        const part = angleDimension(text, vertex, radius, from, to, { height });
        const sides = strokes(
          'outline',
          line(vertex, polar(3 * radius, from)),
          line(vertex, polar(3 * radius, to)),
        );
        expect(Math.abs(part.letterings[0]!.angle)).toBeLessThanOrEqual(Math.PI / 2 + 1e-6);
        expect(overlaps(merge(part, sides))).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });
});
