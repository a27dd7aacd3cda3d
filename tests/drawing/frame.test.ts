import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frameAt, readable } from '../../src/drawing/frame.js';

const number = fc.double({ min: -1000, max: 1000, noNaN: true });
const angles = fc.double({ min: -20, max: 20, noNaN: true });

describe('a frame', () => {
  it('takes its origin and its x axis where it is told', () => {
    const { outward } = frameAt({ x: 10, y: 20 }, Math.PI / 2);
    expect(outward({ x: 0, y: 0 })).toEqual({ x: 10, y: 20 });
    expect(outward({ x: 3, y: 0 }).y).toBeCloseTo(23, 12);
  });

  it('undoes inward what it does outward', () => {
    fc.assert(
      fc.property(number, number, number, angles, (x, y, originX, angle) => {
        const { inward, outward } = frameAt({ x: originX, y: 5 }, angle);
        const back = inward(outward({ x, y }));
        expect(back.x).toBeCloseTo(x, 8);
        expect(back.y).toBeCloseTo(y, 8);
      }),
    );
  });
});

describe('a readable direction', () => {
  it('is the same line, never upside down nor read from the left', () => {
    fc.assert(
      fc.property(angles, (angle) => {
        const direction = readable(angle);
        expect(Math.abs(Math.sin(direction - angle))).toBeLessThan(1e-9);
        expect(direction).toBeGreaterThan(-Math.PI / 2);
        expect(direction).toBeLessThan(Math.PI / 2 + 1e-8);
      }),
    );
  });

  it('of an upright line runs upwards', () => {
    expect(readable(Math.PI / 2)).toBeCloseTo(Math.PI / 2, 12);
    expect(readable(-Math.PI / 2)).toBeCloseTo(Math.PI / 2, 12);
    expect(readable(Math.PI)).toBeCloseTo(0, 12);
  });
});
