/** The method for many choices, on racks small enough to try everything. */
import { describe, expect, it } from 'vitest';
import { aimsOf } from '../../src/rack/aims.js';
import { classesOf } from '../../src/rack/classes.js';
import { bestUnion } from '../../src/rack/exact-levels.js';
import { makePool } from '../../src/rack/pool.js';
import { seeded } from '../../src/rack/random.js';
import { bruteForce } from './brute-force.js';
import { asked, rack, stockOf } from './racks.js';

const cases = [
  { vessels: 1, count: 14, step: 0.5 },
  { vessels: 1, count: 14, step: 0.1 },
  { vessels: 1, count: 14, step: 2 },
  { vessels: 2, count: 13, step: 0.5 },
  { vessels: 2, count: 13, step: 1 },
];

function run<Result>(steps: Generator<null, Result>): Result {
  for (let turn = steps.next(); ; turn = steps.next()) if (turn.done) return turn.value;
}

describe('the best choice by the staves of all sets together', () => {
  let proven = 0;
  for (const { vessels, count, step } of cases)
    it.each([1, 2, 3, 4, 5])(
      `is what trying everything finds: ${vessels} from ${count}, read to ${step} mm, rack %d`,
      (seed) => {
        const request = asked({
          diameter: 130,
          count: { min: 5, max: 7 },
          bung: 70,
          plane: 0,
          tolerance: 1.5,
          vessels,
        });
        const stock = rack({ count, step, seed, from: 45, to: 85 });
        const pool = makePool(stock.staves, request);
        const answer = run(bestUnion(pool, classesOf(pool), vessels));
        const truth = bruteForce(stock, request);
        // it may leave the question open, but what it calls proven must be so
        if (answer === 'none') expect(truth?.sets ?? 0).toBeLessThan(vessels);
        if (answer === 'none' || !answer?.provenBest) return;
        proven++;
        const { deviation, spread, rest } = aimsOf(pool, answer.sets);
        expect({ deviation, spread }).toEqual({
          deviation: truth!.deviation,
          spread: truth!.spread,
        });
        expect(rest).toBeCloseTo(truth!.rest, 4);
      },
    );

  // how many of each source a set has is then nearly settled by its count and its girth
  it.each([null, 70])('is so where widths are from two sources: bung %s', (bung) => {
    let [met, none] = [0, 0];
    for (const step of [0.5, 1])
      for (let seed = 1; seed <= 8; seed++) {
        const random = seeded(seed);
        const widths = Array.from({ length: 14 }, () => {
          const width = (random.unit() < 0.5 ? 48 : 72) + 4 * random.unit();
          return Math.round(width / step) * step;
        });
        const count = { min: 5, max: 7 };
        const request = asked({ diameter: 104, count, bung, plane: 0, tolerance: 1, vessels: 2 });
        const stock = stockOf(widths);
        const pool = makePool(stock.staves, request);
        const answer = run(bestUnion(pool, classesOf(pool), 2));
        const truth = bruteForce(stock, request);
        if (answer === null) continue;
        if (answer === 'none') {
          none++;
          expect(truth?.sets ?? 0).toBeLessThan(2);
        } else if (answer.provenBest) {
          met++;
          const { deviation, spread, rest } = aimsOf(pool, answer.sets);
          const best = { deviation: truth!.deviation, spread: truth!.spread };
          expect({ deviation, spread }).toEqual(best);
          expect(rest).toBeCloseTo(truth!.rest, 4);
        }
      }
    expect(met).toBeGreaterThan(1);
    expect(met + none).toBeGreaterThan(10);
  });

  it('is none only where trying everything finds none', () => {
    let [none, some] = [0, 0];
    for (const tolerance of [0.1, 0.5, 1.5])
      for (const step of [0.5, 2])
        for (let seed = 1; seed <= 3; seed++) {
          const count = { min: 5, max: 7 };
          const request = asked({
            diameter: 130,
            count,
            bung: 70,
            plane: 0,
            tolerance,
            vessels: 2,
          });
          const stock = rack({ count: 14, step, seed, from: 50, to: 85 });
          const pool = makePool(stock.staves, request);
          const answer = run(bestUnion(pool, classesOf(pool), 2));
          const truth = bruteForce(stock, request)?.sets ?? 0;
          // it may leave the question open
          if (answer === null) continue;
          if (answer === 'none') none++;
          else some++;
          expect(answer === 'none').toBe(truth < 2);
        }
    expect(none).toBeGreaterThan(2);
    expect(some).toBeGreaterThan(2);
  });

  it('is proven nearly always', () => {
    expect(proven).toBeGreaterThanOrEqual(15);
  });
});
