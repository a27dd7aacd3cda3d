/** Moving and enlarging a drawing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measured, snapped } from '../../../src/page/pieces/measuring.js';
import {
  fitted,
  panned,
  toDrawing,
  toScreen,
  viewBoxOf,
  zoomed,
} from '../../../src/page/pieces/pan-zoom.js';

const screen = { width: 800, height: 600 };
const view = fitted({ minX: -475, minY: -40, maxX: 475, maxY: 40 }, screen);

describe('a view of a drawing', () => {
  it('shows all of it at first', () => {
    const left = toScreen(view, screen, { x: -475, y: 0 });
    const right = toScreen(view, screen, { x: 475, y: 0 });
    expect([left.x, right.x]).toEqual([24, 776]);
    expect(left.y).toBeCloseTo(300);
  });

  it('leaves what is under the finger where it is', () => {
    const place = fc.record({
      x: fc.integer({ min: 0, max: 800 }),
      y: fc.integer({ min: 0, max: 600 }),
    });
    fc.assert(
      fc.property(place, fc.double({ min: 0.2, max: 5, noNaN: true }), (at, factor) => {
        const before = toDrawing(view, screen, at);
        const after = toDrawing(zoomed(view, screen, at, factor), screen, at);
        expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('follows the finger', () => {
    const point = { x: 10, y: 20 };
    const [before, after] = [view, panned(view, 30, -40)].map((v) => toScreen(v, screen, point));
    expect(after!.x - before!.x).toBeCloseTo(30);
    expect(after!.y - before!.y).toBeCloseTo(-40);
  });

  it('goes to the screen and back', () => {
    const there = toScreen(view, screen, { x: 12.5, y: -7 });
    expect(toDrawing(view, screen, there).x).toBeCloseTo(12.5);
    expect(toDrawing(view, screen, there).y).toBeCloseTo(-7);
  });

  it('is a view box with y downwards', () => {
    const [x, y, width] = viewBoxOf({ centre: { x: 0, y: 100 }, scale: 2 }, screen).split(' ');
    expect([x, y, width].map(Number)).toEqual([-200, -250, 400]);
  });
});

describe('measuring', () => {
  const drawing = {
    name: 'x',
    title: 'x',
    subject: '',
    letterings: [],
    legend: { notes: [], tables: [] },
    strokes: [
      {
        layer: 'outline' as const,
        curve: {
          closed: false,
          vertices: [
            { x: 0, y: 0, bulge: 0 },
            { x: 30, y: 40, bulge: 0 },
          ],
        },
      },
    ],
  };

  it('takes the corner that is meant', () => {
    expect(snapped(drawing, { x: 29, y: 41 }, 3)).toEqual({ x: 30, y: 40 });
    expect(snapped(drawing, { x: 20, y: 20 }, 3)).toEqual({ x: 20, y: 20 });
  });

  it('gives the distance and both ways', () => {
    expect(measured({ x: 0, y: 0 }, { x: 30, y: 40 })).toMatchObject({
      distance: 50,
      dx: 30,
      dy: 40,
    });
  });
});
