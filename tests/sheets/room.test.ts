import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bounds } from '../../src/geometry/measure.js';
import { holds, meet } from '../../src/sheets/rectangle.js';
import { centred, lowerLeft, take, topLeft } from '../../src/sheets/room.js';

const whole: Bounds = { minX: 0, minY: 0, maxX: 200, maxY: 100 };
const boxes = fc
  .tuple(
    fc.integer({ min: 0, max: 180 }),
    fc.integer({ min: 0, max: 90 }),
    fc.integer({ min: 1, max: 60 }),
    fc.integer({ min: 1, max: 40 }),
  )
  .map(([minX, minY, width, height]) => ({ minX, minY, maxX: minX + width, maxY: minY + height }));

describe('room', () => {
  it('that is taken is left clear, and every other free box can still be placed', () => {
    fc.assert(
      fc.property(fc.array(boxes, { maxLength: 5 }), boxes, (taken, probe) => {
        const room = taken.reduce((free, box) => take(free, box, 0), [whole] as readonly Bounds[]);
        for (const free of room) expect(taken.some((box) => meet(free, box))).toBe(false);
        const isFree = holds(whole, probe) && !taken.some((box) => meet(box, probe));
        expect(room.some((free) => holds(free, probe))).toBe(isFree);
      }),
      { seed: 3 },
    );
  });

  it('keeps a gap round what is taken', () => {
    const room = take([whole], { minX: 50, minY: 0, maxX: 60, maxY: 100 }, 5);
    expect(room).toHaveLength(2);
    expect(room.map(({ minX, maxX }) => [minX, maxX])).toEqual([
      [0, 45],
      [65, 200],
    ]);
  });

  it('is filled from the upper left or from the lower left', () => {
    const size = { width: 50, height: 20 };
    expect(topLeft([whole], size)).toEqual({ minX: 0, maxX: 50, minY: 80, maxY: 100 });
    expect(lowerLeft([whole], size)).toEqual({ minX: 0, maxX: 50, minY: 0, maxY: 20 });
    expect(topLeft([whole], { width: 201, height: 1 })).toBeNull();
    expect(lowerLeft([], size)).toBeNull();
  });

  it('holds a box in its middle', () => {
    const box = { minX: 0, maxX: 50, minY: 80, maxY: 100 };
    expect(centred([whole], box)).toEqual({ minX: 75, maxX: 125, minY: 40, maxY: 60 });
    expect(centred([], box)).toEqual(box);
  });
});
