/** Sets made one after the other. */
import { expect, it } from 'vitest';
import { classesOf } from '../../src/rack/classes.js';
import { oneByOne } from '../../src/rack/one-by-one.js';
import { makePool } from '../../src/rack/pool.js';
import { asked, rack } from './racks.js';

function made(
  shape: Parameters<typeof rack>[0],
  request: Parameters<typeof asked>[0],
  most = Infinity,
) {
  const pool = makePool(rack(shape).staves, asked({ vessels: 'max', ...request }));
  const steps = oneByOne(pool, classesOf(pool), most);
  let seen = 0;
  for (let turn = steps.next(); ; turn = steps.next()) {
    if (turn.done) return { pool, seen, sets: turn.value };
    seen = turn.value.length;
  }
}

const exactly = { tolerance: 0.1, plane: 0 };

it.each([25.4 / 16, 2, 5])('all close, and no stave is in two of them: read to %d mm', (step) => {
  const { pool, sets, seen } = made({ count: 400, step, seed: 2 }, exactly);
  expect(sets!.length).toBeGreaterThan(5);
  expect(seen).toBe(sets!.length);
  const used = sets!.flatMap(({ staves }) => staves);
  expect(new Set(used).size).toBe(used.length);
  for (const { staves, closesAt, planing, bungStave } of sets!) {
    expect(Math.abs(closesAt - 678)).toBeLessThanOrEqual(0.1 + 1e-9);
    expect(planing).toBe(0);
    expect(pool.width[bungStave!]!).toBeGreaterThanOrEqual(90);
    expect(staves).toContain(bungStave);
  }
});

it('are no more than wanted', () => {
  expect(made({ count: 400, step: 2, seed: 2 }, exactly, 3).sets).toHaveLength(3);
});

it('are not tried where widths lie finely, or where staves stand', () => {
  expect(made({ count: 100, step: 0.1 }, {}).sets).toBeNull();
  expect(made({ count: 100, step: 2 }, { ...exactly, standing: ['s0'] }).sets).toBeNull();
});
