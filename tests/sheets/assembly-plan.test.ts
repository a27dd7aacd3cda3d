import { describe, expect, it } from 'vitest';
import { assemblyPlan } from '../../src/sheets/assembly-plan.js';
import { trulyPrinted } from '../../src/sheets/page.js';
import { paperSizes } from '../../src/sheets/paper.js';
import { fewestTiles, placementsOf } from '../../src/sheets/tiling.js';
import { boundsOf } from '../../src/geometry/measure.js';
import { faultsOn } from './ink-faults.js';
import { big, longAndThin, round } from './synthetic.js';
import type { Drawing } from '../../src/drawing/drawing.js';

const tilingOf = (drawing: Drawing) =>
  fewestTiles(placementsOf(drawing), paperSizes.a4, trulyPrinted, 'mm');

describe('the assembly plan', () => {
  it.each([
    [150, 60],
    [60, 40],
    [40, 150],
  ])('stays within %d by %d mm, its marks clear of its lines', (width, height) => {
    for (const make of [longAndThin, round, big]) {
      const plan = assemblyPlan(tilingOf(make()), { width, height });
      expect(plan.width).toBeLessThanOrEqual(width + 1e-9);
      expect(plan.height).toBeLessThanOrEqual(height + 1e-9);
      const { minX, minY, maxX, maxY } = boundsOf(...plan.ink.strokes.map(({ curve }) => curve))!;
      expect(minX).toBeGreaterThanOrEqual(0);
      expect(minY).toBeGreaterThanOrEqual(-1e-9);
      expect([maxX - plan.width, maxY - plan.height].every((over) => over < 1e-9)).toBe(true);
      const sheet = { width, height, correction: { x: 1, y: 1 }, content: [], furniture: plan.ink };
      expect(faultsOn(sheet, 0)).toEqual([]);
    }
  });

  it('has a cell for every tile, dashed where there is no sheet', () => {
    const tiling = tilingOf(round());
    const { ink } = assemblyPlan(tiling, { width: 150, height: 100 });
    const cells = tiling.grid.columns * tiling.grid.rows;
    const dashed = ink.strokes.filter(
      ({ lineType, width }) => lineType === 'dashed' && width === 0.13,
    );
    expect(dashed).toHaveLength(cells - tiling.places.length);
    const texts = ink.letterings.map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(['1', '2', 'A', 'B']));
  });
});
