import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nest, type Size } from '../../src/pieces/nest.js';

const sizes = fc.array(
  fc.record({
    width: fc.double({ min: 5, max: 700, noNaN: true }),
    height: fc.double({ min: 5, max: 150, noNaN: true }),
  }),
  { minLength: 1, maxLength: 14 },
);

describe('a nest', () => {
  it('lays every rectangle once, clear of the edges and of each other, or says that it is too large', () => {
    const sheet = { width: 600.5, height: 200.25 };
    fc.assert(
      fc.property(sizes, fc.double({ min: 0, max: 20, noNaN: true }), (rectangles, gap) => {
        const { sheets, tooLarge } = nest(rectangles, sheet, gap);
        const laid = sheets.flat().map(({ index }) => index);
        expect([...laid, ...tooLarge].sort((a, b) => a - b)).toEqual([...rectangles.keys()]);
        for (const on of sheets) {
          expect(on.length).toBeGreaterThan(0);
          const boxes = on.map(({ index, x, y }) => ({ ...rectangles[index]!, x, y }));
          for (const [i, a] of boxes.entries()) {
            expect(a.x).toBeGreaterThanOrEqual(gap - 1e-9);
            expect(a.y).toBeGreaterThanOrEqual(gap - 1e-9);
            expect(a.x + a.width).toBeLessThanOrEqual(sheet.width - gap + 1e-5);
            expect(a.y + a.height).toBeLessThanOrEqual(sheet.height - gap + 1e-5);
            for (const b of boxes.slice(i + 1)) {
              const apart = Math.max(
                ...[b.x - a.x - a.width, a.x - b.x - b.width],
                ...[b.y - a.y - a.height, a.y - b.y - b.height],
              );
              expect(apart).toBeGreaterThanOrEqual(gap - 1e-5);
            }
          }
        }
      }),
      { numRuns: 200, seed: 4 },
    );
  });

  it('takes what just fits, and does not turn what would fit turned', () => {
    const sheet: Size = { width: 120, height: 60 };
    expect(nest([{ width: 100, height: 40 }], sheet, 10)).toEqual({
      sheets: [[{ index: 0, x: 10, y: 10 }]],
      tooLarge: [],
    });
    expect(nest([{ width: 40, height: 100 }], sheet, 10)).toEqual({ sheets: [], tooLarge: [0] });
  });
});
