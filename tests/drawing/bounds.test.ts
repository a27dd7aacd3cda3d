import { describe, expect, it } from 'vitest';
import { drawingBounds } from '../../src/drawing/bounds.js';
import { label, leaderLabel, merge, strokes } from '../../src/drawing/build.js';
import { textWidth } from '../../src/drawing/lettering.js';
import { arc, circle } from '../../src/geometry/curve.js';

describe('the bounds of a drawing', () => {
  it('take arcs where they bulge, not only at their ends', () => {
    const bounds = drawingBounds(strokes('outline', arc({ x: 10, y: 0 }, 5, 0.3, Math.PI - 0.3)));
    expect(bounds.maxY).toBeCloseTo(5, 12);
    expect(bounds.minY).toBeCloseTo(5 * Math.sin(0.3), 12);
    expect(bounds.maxX).toBeCloseTo(10 + 5 * Math.cos(0.3), 12);
  });

  it('take in the whole box of the lettering', () => {
    const bounds = drawingBounds(label('Ågý', { x: 1, y: 2 }, { height: 5 }));
    expect(bounds.minX).toBe(1);
    expect(bounds.maxX).toBeCloseTo(1 + textWidth('Ågý', 5), 12);
    expect(bounds.minY).toBeCloseTo(2 - (5 * 511) / 1493, 12);
    expect(bounds.maxY).toBeCloseTo(2 + (5 * 2002) / 1493, 12);
  });

  it('take in leaders', () => {
    const bounds = drawingBounds(leaderLabel('x', { x: 0, y: 0 }, { x: -70, y: 55 }));
    expect(bounds.minX).toBe(-70);
    expect(bounds.maxY).toBe(55);
  });

  it('of several things hold them all', () => {
    const all = merge(strokes('bore', circle({ x: 0, y: 0 }, 4)), label('far', { x: 100, y: 0 }));
    expect(drawingBounds(all).minX).toBe(-4);
    expect(drawingBounds(all).maxX).toBeGreaterThan(100);
  });

  it('of nothing are refused', () => {
    expect(() => drawingBounds(merge())).toThrow(RangeError);
  });
});
