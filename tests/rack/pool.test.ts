/** Which staves of a rack can be used for a request, and what is known of each. */
import { describe, expect, it } from 'vitest';
import { makePool } from '../../src/rack/pool.js';
import { asked, rack, stave, stockOf } from './racks.js';

const marksOf = (pool: ReturnType<typeof makePool>): string[] =>
  pool.staves.map(({ mark }) => mark);

describe('the pool of staves', () => {
  it('is in order of width, then of mark, whatever the order of the rows', () => {
    const staves = [stave('b', 80), stave('c', 70), stave('a', 80), stave('B', 80)];
    const pool = makePool(staves, asked());
    expect(marksOf(pool)).toEqual(['c', 'B', 'a', 'b']);
    expect(makePool([...staves].reverse(), asked())).toEqual(pool);
    // the list that was read stays as it was
    expect(staves.map(({ mark }) => mark)).toEqual(['b', 'c', 'a', 'B']);
  });

  it.each(['blank', 'backed'] as const)(
    'knows the share of the girth that each stave takes, measured %s',
    (measured) => {
      const { girth, width } = makePool(rack({ count: 40 }).staves, asked({ measured }));
      const radius = 678 / 2;
      for (const [i, w] of width.entries()) {
        // the angle at the axis between the stave's corners, as points, times the radius
        const out = measured === 'blank' ? radius : Math.sqrt(radius ** 2 - (w / 2) ** 2);
        expect(girth[i]).toBeCloseTo(2 * Math.atan2(w / 2, out) * radius, 9);
      }
    },
  );

  it('lets a stave be the bung stave when it is wide enough and not marked as unfit', () => {
    const staves = [
      stave('narrow', 89.9),
      stave('just', 90),
      stave('unfit', 95, { bung: false }),
      stave('fit', 96, { bung: true }),
    ];
    expect([...makePool(staves, asked({ bung: 90 })).canBung]).toEqual([0, 1, 0, 1]);
    expect([...makePool(staves, asked({ bung: null })).canBung]).toEqual([1, 1, 1, 1]);
  });

  it('measures distances from the middle of the range, not from the mean', () => {
    const pool = makePool(stockOf([60, 61, 62, 100]).staves, asked());
    expect([...pool.offMiddle]).toEqual([20, 19, 18, 20]);
  });

  it('leaves out what is too short, too thin or too wide, and says why', () => {
    const staves = [
      stave('short', 80, { length: 949.9 }),
      stave('long', 80, { length: 950 }),
      stave('thin', 80, { thickness: 28.9 }),
      stave('thick', 80, { thickness: 29 }),
      stave('unstated', 80),
      stave('wider than the ring', 676.5),
    ];
    const pool = makePool(staves, asked({ length: 950, thicknessFor: () => 29 }));
    expect(marksOf(pool)).toEqual(['long', 'thick', 'unstated']);
    expect(pool.unfit).toEqual([
      { mark: 'short', because: 'length' },
      { mark: 'thin', because: 'thickness' },
      { mark: 'wider than the ring', because: 'width' },
    ]);
  });

  it('asks of a stave the thickness that its own width needs', () => {
    const staves = [stave('a', 70, { thickness: 28 }), stave('b', 90, { thickness: 28 })];
    const pool = makePool(staves, asked({ thicknessFor: (width) => width * 0.35 }));
    expect(marksOf(pool)).toEqual(['a']);
  });

  it('keeps standing staves in the order they stand, short or not: they stand already', () => {
    const staves = [stave('a', 80), stave('b', 70, { length: 1 }), stave('c', 75)];
    const pool = makePool(staves, asked({ standing: ['c', 'b'], length: 900 }));
    expect(pool.standing.map((i) => pool.staves[i]!.mark)).toEqual(['c', 'b']);
    expect(pool.unfit).toEqual([]);
  });

  it('of no staves is empty', () => {
    const pool = makePool([], asked());
    expect(pool).toMatchObject({ staves: [], standing: [], unfit: [] });
    expect(pool.width).toHaveLength(0);
  });
});
