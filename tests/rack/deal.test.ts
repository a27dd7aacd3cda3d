/** Dealing staves out into sets. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deal } from '../../src/rack/deal.js';
import { makePool } from '../../src/rack/pool.js';
import { asked, rack, stockOf } from './racks.js';

const turn = Math.PI * 678;

describe('dealing', () => {
  it('gives every stave once, every set its count, its bung stave and about the same girth', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1000 }),
        fc.integer({ min: 2, max: 5 }),
        (seed, sets) => {
          const pool = makePool(rack({ count: 27 * sets + 9, seed }).staves, asked({ bung: 80 }));
          const used = [...pool.staves.keys()].filter((i) => i % 9 !== 0).slice(0, 24 * sets + 3);
          const counts = Array.from({ length: sets }, (_, j) => (j < 3 ? 25 : 24)).slice(0, sets);
          const wanted = counts.reduce((sum, n) => sum + n, 0);
          const girth = used.slice(0, wanted).reduce((sum, i) => sum + pool.girth[i]!, 0);
          const layout = deal(pool, used.slice(0, wanted), counts, girth / sets)!;
          expect(layout.sets.map((set) => set.length)).toEqual(counts);
          const dealt = layout.sets.flat();
          expect(new Set(dealt)).toEqual(new Set(used.slice(0, wanted)));
          expect(new Set([...dealt, ...layout.rest]).size).toBe(pool.staves.length);
          for (const [j, set] of layout.sets.entries()) {
            expect(set.some((i) => pool.canBung[i] === 1)).toBe(true);
            // within the width of a stave: what is left to mend
            expect(Math.abs(layout.girth[j]! - girth / sets)).toBeLessThan(40);
          }
        },
      ),
      { seed: 3, numRuns: 40 },
    );
  });

  it('gives all standing staves to the first set, and asks for no other bung stave if one of them will do', () => {
    const request = asked({ bung: 90, standing: ['s4', 's1'] });
    const pool = makePool(stockOf([70, 75, 80, 92, 95, 98]).staves, request);
    const layout = deal(pool, [0, 1, 2, 3, 4, 5], [3, 3], 250)!;
    expect(layout.sets[0]).toEqual(expect.arrayContaining([1, 4]));
    // the narrowest that will do is the other set's, and stays there
    expect(layout.sets[1]).toContain(3);
    expect(layout.find(1, 0, pool.girth[3]! - pool.girth[0]!, [1, 1])?.out).not.toEqual([3]);
  });

  it('is impossible with too few bung staves, or too few places for the standing ones', () => {
    const widths = [70, 75, 80, 85, 92, 95];
    const bungs = makePool(stockOf(widths).staves, asked({ bung: 93 }));
    expect(deal(bungs, [0, 1, 2, 3, 4, 5], [3, 3], turn)).toBeNull();
    const standing = ['s0', 's1', 's2', 's3'];
    const full = makePool(stockOf(widths).staves, asked({ bung: null, standing }));
    expect(deal(full, [0, 1, 2, 3, 4, 5], [3, 3], turn)).toBeNull();
  });
});
