/** The proven best against every choice there is. */
import { describe, expect, it } from 'vitest';
import { shapes, widthsOf as drawn } from '../../benchmarks/rack-shapes.js';
import { aimsOf } from '../../src/rack/aims.js';
import { upperBound } from '../../src/rack/bound.js';
import { chooseExactly, type ExactAnswer } from '../../src/rack/exact.js';
import { makePool } from '../../src/rack/pool.js';
import { seeded } from '../../src/rack/random.js';
import type { MatchRequest } from '../../src/rack/request.js';
import type { Stock } from '../../src/rack/stock.js';
import { bruteForce } from './brute-force.js';
import { asked, rack, stockOf, widthsOf } from './racks.js';

function answerTo(stock: Stock, request: MatchRequest): ExactAnswer & { aims: number[] | null } {
  const pool = makePool(stock.staves, request);
  const steps = chooseExactly(pool, upperBound(pool).sets);
  for (let step = steps.next(); ; step = steps.next())
    if (step.done) {
      const { sets } = step.value;
      const aims = sets && aimsOf(pool, sets);
      return { ...step.value, aims: aims && Object.values<number>({ ...aims }) };
    }
}

/** For small kegs: five to seven staves. */
const keg = (request: Partial<MatchRequest>): MatchRequest =>
  asked({ diameter: 130, count: { min: 5, max: 7 }, bung: null, plane: 0, ...request });

const cases = [
  { name: 'one set, close', count: 12, step: 0.5, request: { tolerance: 0.3 } },
  { name: 'one set, planed', count: 12, step: 0.5, request: { tolerance: 0.02, plane: 1 } },
  { name: 'one set with a bung stave', count: 13, step: 1, request: { tolerance: 1, bung: 78 } },
  { name: 'two sets', count: 13, step: 0.5, request: { vessels: 2, tolerance: 1 } },
  {
    name: 'two sets, planed',
    count: 13,
    step: 1,
    request: { vessels: 2, tolerance: 0.2, plane: 2 },
  },
  {
    name: 'two sets with bung staves',
    count: 14,
    step: 2,
    request: { vessels: 2, tolerance: 2, bung: 75 },
  },
  {
    name: 'two sets, counts at their limit',
    count: 14,
    step: 1,
    request: { vessels: 2, tolerance: 2, count: { min: 7, max: 7 } },
  },
] as const;

describe('the exact method', () => {
  for (const { name, count, step, request } of cases)
    it.each([1, 2])(`finds what trying everything finds: ${name}, rack %d`, (seed) => {
      const stock = rack({ count, step, seed, from: 45, to: 85 });
      const asking = keg(request as Partial<MatchRequest>);
      const truth = bruteForce(stock, asking);
      const { aims, upperBound, provenBest } = answerTo(stock, asking);
      expect(provenBest).toBe(true);
      expect(upperBound).toBe(truth?.sets ?? 0);
      if (!truth) return;
      const [sets, planing, deviation, spread, rest] = aims!;
      expect({ sets, planing: planing! / 100, deviation, spread }).toEqual({
        sets: truth.sets,
        planing: expect.closeTo(truth.planing, 6) as number,
        deviation: truth.deviation,
        spread: truth.spread,
      });
      expect(rest).toBeCloseTo(truth.rest, 6);
    });

  it('tells when nothing closes', () => {
    const { sets, upperBound, provenBest } = answerTo(
      stockOf(widthsOf({ count: 14, from: 80, to: 80, step: 1, seed: 1 })),
      keg({ tolerance: 0.1 }),
    );
    expect({ sets, upperBound, provenBest }).toEqual({ sets: [], upperBound: 0, provenBest: true });
  });

  const casks = [
    { count: 30, step: 0.5, vessels: 1 },
    { count: 40, step: 0.5, vessels: 1 },
    { count: 70, step: 0.5, vessels: 1 },
    { count: 70, step: 0.1, vessels: 2 },
    { count: 70, step: 1, vessels: 1 },
    { count: 70, step: 25.4 / 16, vessels: 2 },
    { count: 60, step: 0.5, vessels: 2 },
    { count: 58, step: 0.5, vessels: 2 },
    // read to every second millimetre: sums are even
    { count: 65, step: 2, vessels: 2 },
    { count: 87, step: 2, vessels: 1 },
  ];
  it.each(casks)('proves the best for casks: %j', ({ count, step, vessels }) => {
    const { aims, provenBest, upperBound } = answerTo(
      rack({ count, step, seed: 7 }),
      asked({ vessels }),
    );
    expect(provenBest).toBe(true);
    expect(aims![0]).toBe(upperBound);
    expect(aims![1]).toBe(0);
  });

  // where one of both sets can hardly be made
  it.each([
    { name: 'two clusters', from: [60.5, 94.5], range: 3, step: 0.5, count: 64 },
    { name: 'narrow ones, to a tenth', from: [66], range: 11, step: 0.1, count: 66 },
    { name: 'narrow ones, to a millimetre', from: [66], range: 11, step: 1, count: 66 },
  ])('proves the best of two from hard racks: $name', ({ from, range, step, count }) => {
    const random = seeded(3);
    const widths = Array.from({ length: count }, () => {
      const width = from[random.below(from.length)]! + range * random.unit();
      return Math.round(width / step) * step;
    });
    const { aims, provenBest } = answerTo(stockOf(widths), asked({ vessels: 2, bung: null }));
    expect(provenBest).toBe(true);
    expect(aims!.slice(0, 2)).toEqual([2, 0]);
  });

  // of which few staves can be bung staves, or nearly all staves must be taken, or which hardly part
  it.each([
    { name: 'two clusters, many', shape: shapes.clusters, step: 0.5, count: 70, seed: 493 },
    { name: 'two clusters, few', shape: shapes.clusters, step: 0.5, count: 56, seed: 395 },
    { name: 'few wide ones', shape: shapes.fewWide, step: 1, count: 70, seed: 493 },
    { name: 'few wide ones, to a half', shape: shapes.fewWide, step: 0.5, count: 70, seed: 493 },
    { name: 'hardly enough wood', shape: shapes.ordinary, step: 1, count: 56, seed: 395 },
    { name: 'hardly enough, gathered', shape: shapes.gathered, step: 1.5875, count: 56, seed: 395 },
  ])('proves the best of two: $name', ({ shape, step, count, seed }) => {
    const stock = stockOf(drawn(shape, count, step, seed));
    const { aims, provenBest } = answerTo(stock, asked({ vessels: 2 }));
    expect(provenBest).toBe(true);
    expect(aims!.slice(0, 2)).toEqual([2, 0]);
  });

  // where two sets can't be had without
  it('proves the least planing of two', () => {
    const stock = stockOf(drawn(shapes.clusters, 56, 1, 395));
    const { aims, provenBest } = answerTo(stock, asked({ vessels: 2 }));
    expect(provenBest).toBe(true);
    expect(aims![0]).toBe(2);
    expect(aims![1]).toBeGreaterThan(0);
  });

  // most widths near the middle: the best choice lies where the widths' spread is nearly all that it can be
  it.each([
    { count: 58, seed: 1 },
    { count: 70, seed: 2 },
  ])('proves the best where widths gather about the middle: %j', ({ count, seed }) => {
    const random = seeded(seed);
    const gathered = (): number => 60 + (40 * (random.unit() + random.unit() + random.unit())) / 3;
    const widths = Array.from({ length: count }, () => Math.round(gathered() / 0.5) * 0.5);
    const { aims, provenBest } = answerTo(stockOf(widths), asked());
    expect(provenBest).toBe(true);
    expect(aims!.slice(0, 3)).toEqual([1, 0, 0]);
  });
});
