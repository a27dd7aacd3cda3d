import { describe, expect, it } from 'vitest';
import { drawingBounds } from '../../src/drawing/bounds.js';
import { plateWords, wordsHeight } from '../../src/pieces/plate-words.js';

const space = { left: 10, right: 70, top: 40, beside: 90 };

describe('words on a plate', () => {
  it('stand inside, from the top down, where they fit', () => {
    const box = drawingBounds(plateWords('name', ['held here', 'and there'], space));
    expect(box.minX).toBeGreaterThanOrEqual(10 - 1e-9);
    expect(box.maxX).toBeLessThanOrEqual(70);
    expect(box.maxY).toBeCloseTo(40, 9);
    expect(box.maxY - box.minY).toBeCloseTo(wordsHeight(2), 9);
  });

  it('stand beside it, all of them, when one is too long', () => {
    const { letterings } = plateWords('name', ['held against something far away'], {
      ...space,
      right: 30,
    });
    expect(letterings.map(({ at }) => at.x)).toEqual([90, 90]);
  });
});
