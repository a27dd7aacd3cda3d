import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten } from '../../src/drawing/flatten.js';
import { arc, circle, polyline } from '../../src/geometry/curve.js';
import { distanceTo } from '../../src/geometry/nearest.js';

describe('flattening', () => {
  it('leaves straight segments as they are', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 5, y: 1 },
      { x: 9, y: -3 },
    ];
    expect(flatten(polyline(corners), 0.01)).toMatchObject(corners);
  });

  it('ends a closed curve where it began', () => {
    const points = flatten(circle({ x: 3, y: 4 }, 20), 0.01);
    expect(points.at(-1)).toEqual(points[0]);
  });

  it('keeps every chord within the tolerance of the arc, and uses most of it', () => {
    const radii = fc.double({ min: 20, max: 5000, noNaN: true });
    fc.assert(
      fc.property(radii, fc.double({ min: 0.5, max: 6, noNaN: true }), (radius, sweep) => {
        const curve = arc({ x: 0, y: 0 }, radius, 1, 1 + sweep);
        const points = flatten(curve, 0.01);
        const away = points.slice(1).map((to, i) => {
          const from = points[i]!;
          return distanceTo(curve, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
        });
        expect(Math.max(...away)).toBeLessThan(0.01);
        expect(Math.max(...away)).toBeGreaterThan(0.004);
      }),
    );
  });
});
