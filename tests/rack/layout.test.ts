/** Staves laid out in sets: whatever is exchanged, each stave stays in one place and the girths stay true. */
import { describe, expect, it } from 'vitest';
import { Layout, REST } from '../../src/rack/layout.js';
import { makePool } from '../../src/rack/pool.js';
import { seeded } from '../../src/rack/random.js';
import { asked, rack } from './racks.js';

const pool = makePool(rack({ count: 40, step: 0.1 }).staves, asked());

function laidOut(): Layout {
  const layout = new Layout(pool, 3, [36, 37, 38, 39]);
  for (let i = 0; i < 36; i++) layout.place(i % 3, i, i < 3);
  return layout;
}

function expectWhole(layout: Layout): void {
  const all = [...layout.sets.flat(), ...layout.rest].sort((a, b) => a - b);
  expect(all).toEqual(Array.from({ length: 40 }, (_, i) => i));
  for (const [j, set] of layout.sets.entries()) {
    const girth = set.reduce((sum, i) => sum + pool.girth[i]!, 0);
    expect(layout.girth[j]).toBeCloseTo(girth, 9);
  }
}

describe('a layout', () => {
  it('stays whole through any exchanges', () => {
    const layout = laidOut();
    expectWhole(layout);
    const random = seeded(2);
    for (let turn = 0; turn < 60; turn++) {
      const set = random.below(3);
      const other = [REST, 0, 1, 2].filter((j) => j !== set)[random.below(3)]!;
      const sizes = [1 + random.below(3), 1 + random.below(3)] as [1 | 2 | 3, 1 | 2 | 3];
      const before = layout.girth[set]!;
      const found = layout.find(set, other, (random.unit() - 0.5) * 20, sizes);
      if (!found) continue;
      layout.exchange(set, other, found);
      expect(before - layout.girth[set]!).toBeCloseTo(found.lowersBy, 5);
      expectWhole(layout);
    }
  });

  it('never exchanges fixed staves', () => {
    const layout = laidOut();
    for (let turn = 0; turn < 30; turn++)
      for (const set of [0, 1, 2]) {
        const found = layout.find(set, REST, pool.girth[set]! - pool.girth[39]!, [1, 1])!;
        layout.exchange(set, REST, found);
        expect(layout.sets[set]).toContain(set);
      }
  });

  it('finds nothing where too few staves are loose', () => {
    const layout = new Layout(pool, 2, []);
    layout.place(0, 0, true);
    layout.place(1, 1, false);
    expect(layout.find(0, 1, 0, [1, 1])).toBeNull();
    expect(layout.find(1, REST, 0, [1, 1])).toBeNull();
    expect(layout.find(1, 0, 0, [2, 2])).toBeNull();
  });

  it('takes a set apart: its staves join the rest, fixed ones too, and later sets move up', () => {
    const layout = laidOut();
    const [first, second, third] = layout.sets.map((set) => [...set]);
    const girth = layout.girth[2];
    layout.dissolve(1);
    expect(layout.sets).toEqual([first, third]);
    expect(layout.girth[1]).toBe(girth);
    expect(layout.rest).toEqual([36, 37, 38, 39, ...second!]);
    expectWhole(layout);
    // what was fixed in the set is loose now: it can be had for another
    const found = layout.find(0, REST, pool.girth[3]! - pool.girth[1]!, [1, 1])!;
    expect(found.lowersBy).toBeCloseTo(pool.girth[3]! - pool.girth[1]!, 5);
  });
});
