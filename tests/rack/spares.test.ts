/** Spares to keep at hand: each swap is made, and the ring closed again. */
import { describe, expect, it } from 'vitest';
import { closeSet } from '../../src/rack/aims.js';
import { closesAt } from '../../src/rack/closing.js';
import { makePool } from '../../src/rack/pool.js';
import { nearestByWidth, sparesFor } from '../../src/rack/spares.js';
import { asked, rack, stockOf } from './racks.js';

const alike = new Array<number>(27).fill(76);
// 27 staves of 76 mm and one of 90 close at 684.1: within 10 mm of the diameter
const request = asked({ tolerance: 10, plane: 0 });

function ringAnd(rest: readonly number[], asking = request) {
  const pool = makePool(stockOf([...alike, 90, ...rest]).staves, asking);
  const ring = [...pool.staves.keys()].filter((i) => Number(pool.staves[i]!.mark.slice(1)) < 28);
  const set = closeSet(pool, ring)!;
  const others = [...pool.staves.keys()].filter((i) => !ring.includes(i));
  return { pool, set, widths: set.staves.map((i) => pool.width[i]!), others };
}

describe('spares', () => {
  it('change the closing diameter as they say, down and up', () => {
    const { pool, set, widths, others } = ringAnd([73, 74, 78, 79, 85]);
    const cures = sparesFor(pool, set, widths, others, 0.7);
    expect(cures.map(({ closes }) => closes)).toEqual(['large', 'small']);
    for (const { closes, takeOut, putIn, changesBy } of cures) {
      const widthOf = (mark: string): number => pool.staves.find((s) => s.mark === mark)!.width;
      const after = widths.with(widths.indexOf(widthOf(takeOut)), widthOf(putIn));
      expect(closesAt(after, 'blank')! - closesAt(widths, 'blank')!).toBeCloseTo(changesBy, 9);
      const wanted = closes === 'large' ? -0.7 : 0.7;
      expect(changesBy / wanted).toBeGreaterThanOrEqual(0.5);
      expect(changesBy / wanted).toBeLessThanOrEqual(1.75);
    }
    // 0.7 mm of diameter are 2.2 mm of width: 74 and 78 are the nearest
    expect(cures.map(({ putIn }) => pool.staves.find((s) => s.mark === putIn)!.width)).toEqual([
      74, 78,
    ]);
  });

  it('are not told when none on the rack does enough, or all do too much', () => {
    const { pool, set, widths, others } = ringAnd([75.5, 90]);
    expect(sparesFor(pool, set, widths, others, 0.7)).toEqual([]);
    expect(sparesFor(pool, set, widths, [], 0.7)).toEqual([]);
    // widths without a doubt need no spares
    expect(sparesFor(pool, set, widths, others, 0)).toEqual([]);
  });

  it('leave the bung stave, planed staves and standing ones in place', () => {
    const standing = Array.from({ length: 26 }, (_, k) => `s${k}`);
    const { pool, set, widths, others } = ringAnd([74, 78, 88], { ...request, standing });
    expect(sparesFor(pool, set, widths, others, 0.7).map(({ takeOut }) => takeOut)).toEqual([
      's26',
      's26',
    ]);
    // the only one that is loose is planed now
    const loose = set.staves.findIndex((i) => pool.staves[i]!.mark === 's26');
    const planed = { ...set, planeOff: set.planeOff.map((_, i) => (i === loose ? 0.1 : 0)) };
    expect(sparesFor(pool, planed, widths, others, 0.7)).toEqual([]);
  });
});

it('the nearest by width is found as by looking at all', () => {
  const pool = makePool(rack({ count: 50, step: 0.1, seed: 4 }).staves, asked());
  const sorted = [...pool.staves.keys()].filter((i) => i % 3 !== 0);
  for (let width = 55; width < 106; width += 0.37) {
    const away = (i: number): number => Math.abs(pool.width[i]! - width);
    const best = Math.min(...sorted.map(away));
    expect(away(nearestByWidth(pool, sorted, width))).toBeCloseTo(best, 12);
  }
});
