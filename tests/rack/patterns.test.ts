/** Every pattern that fits, against going through all there are. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classesOf } from '../../src/rack/classes.js';
import { Effort } from '../../src/rack/effort.js';
import { eachPattern, type PatternQuestion } from '../../src/rack/patterns.js';
import { makePool } from '../../src/rack/pool.js';
import { asked, rack } from './racks.js';

/** All numbers of each class, by counting through them. */
function byCounting({ classes, count, window, bungs, withStanding }: PatternQuestion): string[] {
  let all: number[][] = [[]];
  for (const { staves, standing } of classes) {
    const least = withStanding ? standing : 0;
    const numbers = Array.from({ length: staves.length - least + 1 }, (_, k) => least + k);
    all = all.flatMap((some) => numbers.map((k) => [...some, k]));
  }
  const total = (numbers: readonly number[], of: (c: number) => number): number =>
    numbers.reduce((sum, k, c) => sum + k * of(c), 0);
  return all
    .filter((numbers) => {
      const girth = total(numbers, (c) => classes[c]!.girth);
      const staves = total(numbers, () => 1);
      return (
        staves >= count.min &&
        staves <= count.max &&
        girth >= window.low &&
        girth <= window.high &&
        total(numbers, (c) => (classes[c]!.canBung ? 1 : 0)) >= bungs
      );
    })
    .map(String);
}

function question(seed: number, withStanding: boolean, bungs: number): PatternQuestion {
  const standing = ['s0', 's1'];
  const pool = makePool(
    rack({ count: 11, step: 5, from: 45, to: 85, seed }).staves,
    asked({ diameter: 130, bung: 70, standing }),
  );
  const girth = Math.PI * 130;
  const window = { low: girth - 10, high: girth + 10 };
  return { classes: classesOf(pool), count: { min: 5, max: 7 }, window, bungs, withStanding };
}

describe('all patterns', () => {
  it('are those that counting through all numbers finds, each once', () => {
    let found = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.boolean(),
        fc.integer({ min: 0, max: 2 }),
        (seed, withStanding, bungs) => {
          const asking = question(seed, withStanding, bungs);
          const seen: string[] = [];
          const whole = eachPattern(asking, new Effort(1e6), (numbers, count, girth) => {
            seen.push([...numbers].join(','));
            const staves = numbers.reduce((sum, k) => sum + k, 0);
            const shares = numbers.reduce((sum, k, c) => sum + k * asking.classes[c]!.girth, 0);
            expect(count).toBe(staves);
            expect(girth).toBeCloseTo(shares, 9);
          });
          expect(whole).toBe(true);
          expect(seen.sort()).toEqual(byCounting(asking).sort());
          found += seen.length;
        },
      ),
      { seed: 2, numRuns: 30 },
    );
    expect(found).toBeGreaterThan(200);
  });

  it('end with the effort, and say that they are not all', () => {
    let seen = 0;
    expect(eachPattern(question(1, false, 0), new Effort(40), () => seen++)).toBe(false);
    const effort = new Effort(1e6);
    expect(eachPattern(question(1, false, 0), effort, () => effort.end())).toBe(false);
    expect(seen).toBeLessThan(40);
  });
});
