/** Ways on a grid, against every pattern there is. */
import { describe, expect, it } from 'vitest';
import { classesOf } from '../../src/rack/classes.js';
import { Effort } from '../../src/rack/effort.js';
import { eachWayOnGrid, type GridQuestion } from '../../src/rack/grid-walk.js';
import { eachPattern } from '../../src/rack/patterns.js';
import { makePool } from '../../src/rack/pool.js';
import { seeded } from '../../src/rack/random.js';
import { coarseGrid } from '../../src/rack/union-grid.js';
import { asked, rack } from './racks.js';

const count = 6;

function waysOf(question: GridQuestion): string[] {
  const ways: string[] = [];
  const all = eachWayOnGrid(question, new Effort(1e7), (numbers) => {
    ways.push([...numbers].join(' '));
    return true;
  });
  expect(all).toBe(true);
  return ways.sort();
}

/** A rack of small staves, all choices of six with their sums, and the question that allows all of them. */
function tableOf(measured: 'blank' | 'backed', step: number, seed: number) {
  const request = asked({ diameter: 130, bung: 70, measured });
  const pool = makePool(rack({ count: 13, step, from: 45, to: 85, seed }).staves, request);
  const classes = classesOf(pool);
  const grid = coarseGrid(classes)!;
  const all: { way: string; steps: number; beside: number; off: number; bungs: number }[] = [];
  const sumOf = (numbers: Uint16Array, of: (k: number) => number): number =>
    numbers.reduce((sum, many, k) => sum + many * of(k), 0);
  eachPattern(
    {
      classes,
      count: { min: count, max: count },
      window: { low: -Infinity, high: Infinity },
      bungs: 0,
      withStanding: false,
    },
    new Effort(1e7),
    (numbers) =>
      all.push({
        way: [...numbers].join(' '),
        steps: sumOf(numbers, (k) => grid.steps[k]!),
        beside: sumOf(numbers, (k) => grid.beside[k]!),
        off: sumOf(numbers, (k) => classes[k]!.offMiddle),
        bungs: sumOf(numbers, (k) => (classes[k]!.canBung ? 1 : 0)),
      }),
  );
  const open = {
    classes: classes.map((c, k) => ({
      worth: 0,
      girth: grid.beside[k]!,
      steps: grid.steps[k]!,
      offMiddle: c.offMiddle,
      least: 0,
      most: c.staves.length,
      canBung: c.canBung,
    })),
    count,
    bungs: { least: 0, most: Infinity },
    leastOff: -Infinity,
    mostLoss: Infinity,
  };
  return { all, open };
}

describe('the walk on a grid', () => {
  for (const measured of ['blank', 'backed'] as const)
    it.each([0.5, 1, 2])(`finds every way and no other: ${measured}, read to %d mm`, (step) => {
      let met = 0;
      for (let seed = 1; seed <= 4; seed++) {
        const { all, open } = tableOf(measured, step, seed);
        const random = seeded(seed);
        for (let turn = 0; turn < 24; turn++) {
          // about one of the choices that there are
          const { steps, beside, off } = all[random.below(all.length)]!;
          const window = { low: beside - 0.3 * random.unit(), high: beside + 0.3 * random.unit() };
          const bungs = { least: random.below(2), most: 1 + random.below(3) };
          const leastOff = off - 10 * random.unit();
          const expected = all.filter(
            (one) =>
              one.steps === steps &&
              one.beside >= window.low &&
              one.beside <= window.high &&
              one.bungs >= bungs.least &&
              one.bungs <= bungs.most &&
              one.off >= leastOff,
          );
          met += expected.length;
          const found = waysOf({ ...open, steps, window, bungs, leastOff });
          expect(found).toEqual(expected.map(({ way }) => way).sort());
        }
      }
      expect(met).toBeGreaterThan(40);
    });

  it('loses no more worth than it may', () => {
    const { all, open } = tableOf('blank', 1, 1);
    const random = seeded(3);
    const classes = open.classes.map((c) => ({ ...c, worth: 4 * random.unit() - 2 }));
    const lost = (way: string): number =>
      way.split(' ').reduce((sum, many, k) => {
        const { worth, most } = classes[k]!;
        return sum + (worth > 0 ? worth * (most - Number(many)) : -worth * Number(many));
      }, 0);
    const { steps } = all[Math.floor(all.length / 2)]!;
    const window = { low: -Infinity, high: Infinity };
    const expected = all.filter((one) => one.steps === steps && lost(one.way) <= 9);
    expect(expected.length).toBeGreaterThan(3);
    expect(waysOf({ ...open, classes, steps, window, mostLoss: 9 })).toEqual(
      expected.map(({ way }) => way).sort(),
    );
  });

  it('ends when enough was seen, and tells when the effort ended first', () => {
    const { all, open } = tableOf('blank', 1, 2);
    const question = {
      ...open,
      ...all[0]!,
      window: { low: -Infinity, high: Infinity },
      bungs: open.bungs,
    };
    let seen = 0;
    expect(eachWayOnGrid(question, new Effort(1e6), () => ++seen < 1)).toBe(true);
    expect(seen).toBe(1);
    expect(eachWayOnGrid(question, new Effort(5), () => true)).toBe(false);
  });

  it('turns back early where nothing can come right', () => {
    const { all, open } = tableOf('blank', 1, 1);
    const { steps } = all[Math.floor(all.length / 2)]!;
    const besides = all.filter((one) => one.steps === steps).map(({ beside }) => beside);
    const most = Math.max(...besides);
    const effort = new Effort(1e6);
    eachWayOnGrid(
      { ...open, steps, window: { low: most + 0.5, high: most + 1 } },
      effort,
      () => true,
    );
    expect(1e6 - effort.left).toBeLessThan(all.length / 20);
  });
});
