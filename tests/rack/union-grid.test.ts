/** What sums on a grid can be. */
import { describe, expect, it } from 'vitest';
import { classesOf } from '../../src/rack/classes.js';
import { makePool } from '../../src/rack/pool.js';
import { seeded } from '../../src/rack/random.js';
import { sum } from '../../src/rack/sum.js';
import { coarseGrid, offLattice } from '../../src/rack/union-grid.js';
import { asked, stockOf } from './racks.js';

describe('distances from the middle of the range', () => {
  it.each([
    { name: 'with the middle on the grid', narrow: 60, steps: 20, step: 1 },
    { name: 'with the middle between two widths', narrow: 60, steps: 21, step: 1 },
    { name: 'of odd widths, two apart', narrow: 61, steps: 17, step: 2 },
    { name: 'in sixteenths of an inch', narrow: 39 * (25.4 / 16), steps: 26, step: 25.4 / 16 },
  ])('sum to places on a lattice, and to neighbouring ones: $name', ({ narrow, steps, step }) => {
    const random = seeded(1);
    const drawn = Array.from({ length: 38 }, () => narrow + random.below(steps + 1) * step);
    const widths = [narrow, narrow + steps * step, ...drawn];
    const pool = makePool(stockOf(widths).staves, asked({ bung: null }));
    const classes = classesOf(pool);
    const grid = coarseGrid(classes)!;
    expect(grid.step).toBeCloseTo(step, 12);
    const places = new Map<number, Set<number>>();
    for (let turn = 0; turn < 4000; turn++) {
      const taken = classes.map(({ staves }) => random.below(staves.length + 1));
      const sumOf = (of: (k: number) => number): number =>
        sum(taken.map((many, k) => many * of(k)));
      const count = sumOf(() => 1);
      const ofSteps = sumOf((k) => grid.steps[k]!);
      const question = {
        classes,
        count,
        window: { low: 0, high: 0 },
        bungs: 0,
        steps: { ofClass: grid.steps, sum: ofSteps },
      };
      const lattice = offLattice(grid, question);
      const place = (sumOf((k) => classes[k]!.offMiddle) - lattice.base) / lattice.step;
      expect(place).toBeCloseTo(Math.round(place), 9);
      const key = 1e4 * ofSteps + count;
      places.set(key, (places.get(key) ?? new Set()).add(Math.round(place)));
    }
    const areNeighbours = [...places.values()].some((some) =>
      [...some].some((p) => some.has(p + 1)),
    );
    expect(areNeighbours).toBe(true);
  });
});
