/** Partings by halves and by tables, against every choice of so many staves. */
import { describe, expect, it } from 'vitest';
import { classesOf } from '../../src/rack/classes.js';
import { Effort } from '../../src/rack/effort.js';
import { GridPartings } from '../../src/rack/grid-partings.js';
import { gridFrom } from '../../src/rack/kinds.js';
import { Partings } from '../../src/rack/partings.js';
import { makePool } from '../../src/rack/pool.js';
import { sum } from '../../src/rack/sum.js';
import { asked, rack } from './racks.js';

interface Choice {
  readonly numbers: string;
  readonly girth: number;
  readonly bungs: number;
}

function rackOf(seed: number) {
  const stock = rack({ count: 13, step: 2, from: 45, to: 75, seed });
  const pool = makePool(stock.staves, asked({ diameter: 110, bung: 70 }));
  const classes = classesOf(pool);
  const choices = (count: number): Choice[] => {
    const found: Choice[] = [];
    const choose = (numbers: number[]): void => {
      if (numbers.length < classes.length) {
        const { staves } = classes[numbers.length]!;
        for (let k = 0; k <= staves.length; k++) choose([...numbers, k]);
      } else if (sum(numbers) === count) {
        const sumOf = (of: (k: number) => number): number => sum(numbers.map((n, k) => n * of(k)));
        const girth = sumOf((k) => classes[k]!.girth);
        const bungs = sumOf((k) => (classes[k]!.canBung ? 1 : 0));
        found.push({ numbers: numbers.join(), girth, bungs });
      }
    };
    choose([]);
    return found;
  };
  const bungs = sum(classes.map((c) => (c.canBung ? c.staves.length : 0)));
  return { classes, choices, bungs };
}

const windows = [
  { low: 300, high: 340 },
  { low: 338, high: 339 },
  { low: 0, high: 1000 },
];

describe('partings by halves', () => {
  it('are all choices of a count and a girth, each once', () => {
    for (let seed = 1; seed <= 5; seed++)
      for (const window of windows) {
        const { classes, choices } = rackOf(seed);
        const found: string[] = [];
        const isDone = Partings.of(classes, new Effort(1e7))!.each(
          6,
          window,
          new Effort(1e7),
          (girth, numbers) => {
            const taken = [...numbers()];
            expect(girth).toBeCloseTo(sum(taken.map((n, k) => n * classes[k]!.girth)), 9);
            found.push(taken.join());
            return null;
          },
        );
        const all = choices(6).filter(({ girth }) => girth >= window.low && girth <= window.high);
        expect(isDone).toBe(true);
        expect(found.sort()).toEqual(all.map(({ numbers }) => numbers).sort());
      }
  });

  it('end when enough was seen, keep to a narrower window, and tell when the effort ended', () => {
    const { classes } = rackOf(1);
    const partings = Partings.of(classes, new Effort(1e7))!;
    const window = { low: 300, high: 340 };
    let seen = 0;
    expect(partings.each(6, window, new Effort(1e7), () => (++seen === 3 ? 'enough' : null))).toBe(
      true,
    );
    expect(seen).toBe(3);
    let narrower = window;
    partings.each(6, window, new Effort(1e7), (girth) => {
      expect(girth).toBeGreaterThanOrEqual(narrower.low);
      expect(girth).toBeLessThanOrEqual(narrower.high);
      narrower = { low: narrower.low + 1, high: narrower.high - 1 };
      return narrower;
    });
    expect(narrower.low).toBeGreaterThan(310);
    expect(partings.each(6, window, new Effort(20), () => null)).toBe(false);
    expect(Partings.of(classes, new Effort(3))).toBeNull();
  });
});

describe('partings by tables', () => {
  const tablesOf = (seed: number, needed: number) => {
    const { classes, ...others } = rackOf(seed);
    const grid = gridFrom(classes, 1, 2);
    return { ...others, partings: GridPartings.of(grid, 7, needed, new Effort(1e7))! };
  };

  it.each([0, 1])('are all choices of a count and a girth, each once: %d bung staves', (needed) => {
    for (let seed = 1; seed <= 5; seed++)
      for (const window of windows) {
        const { choices, bungs, partings } = tablesOf(seed, needed);
        const found: string[] = [];
        partings.eachLot({ count: 6 }, window, (lot) => {
          const ofLot: string[] = [];
          partings.each(lot, window, new Effort(1e7), (numbers) => {
            ofLot.push(numbers.join());
            return false;
          });
          found.push(...ofLot);
          // another window is met as well
          const wide = { low: lot.girth.low, high: lot.girth.high };
          let [low, high] = [Infinity, -Infinity];
          partings.each(lot, wide, new Effort(1e7), (numbers) => {
            const { girth } = choices(6).find((c) => c.numbers === numbers.join())!;
            [low, high] = [Math.min(low, girth), Math.max(high, girth)];
            return false;
          });
          expect(low).toBeCloseTo(lot.girth.low, 6);
          expect(high).toBeCloseTo(lot.girth.high, 6);
          return false;
        });
        const all = choices(6).filter(
          (c) =>
            c.girth >= window.low &&
            c.girth <= window.high &&
            c.bungs >= needed &&
            bungs - c.bungs >= needed,
        );
        expect(found.sort()).toEqual(all.map(({ numbers }) => numbers).sort());
      }
  });

  it('can be asked for a number of steps, and end when enough was seen or the effort ended', () => {
    const { partings } = tablesOf(1, 1);
    const window = { low: 0, high: 1000 };
    const steps = new Set<number>();
    let lots = 0;
    partings.eachLot({ count: 6, steps: 180 }, window, (lot) => {
      steps.add(lot.steps);
      lots++;
      return false;
    });
    expect([...steps]).toEqual([180]);
    expect(lots).toBeGreaterThan(1);
    let seen = 0;
    partings.eachLot({ count: 6 }, window, () => ++seen === 2);
    expect(seen).toBe(2);
    partings.eachLot({ count: 6, steps: 180 }, window, (lot) => {
      expect(partings.each(lot, window, new Effort(2), () => false)).toBe(true);
      return true;
    });
    const { classes } = rackOf(1);
    expect(GridPartings.of(gridFrom(classes, 1, 2), 7, 1, new Effort(3))).toBeNull();
  });
});
