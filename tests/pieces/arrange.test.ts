import { describe, expect, it } from 'vitest';
import { strokes } from '../../src/drawing/build.js';
import { polygon } from '../../src/geometry/curve.js';
import { boundsOf } from '../../src/geometry/measure.js';
import { sideBySide, stacked } from '../../src/pieces/arrange.js';

const box = (x: number, y: number, width: number, height: number) =>
  strokes(
    'outline',
    polygon([
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ]),
  );

const places = (part: ReturnType<typeof box>) =>
  part.strokes.map(({ curve }) => {
    const { minX, minY } = boundsOf(curve)!;
    return [minX, minY];
  });

describe('arranging', () => {
  const parts = [box(3, 4, 10, 20), box(-7, 99, 5, 6), box(0, 0, 8, 8)];

  it('stacks from the first downwards, left edges in line', () => {
    expect(places(stacked(parts, 2))).toEqual([
      [3, 4],
      [3, -4],
      [3, -14],
    ]);
  });

  it('sets side by side from the first to the right, lower edges in line', () => {
    expect(places(sideBySide(parts, 2))).toEqual([
      [3, 4],
      [15, 4],
      [22, 4],
    ]);
  });

  it('of nothing is nothing', () => {
    expect(stacked([], 2).strokes).toEqual([]);
    expect(sideBySide([], 2).strokes).toEqual([]);
  });
});
