/** Whole answers, each checked by code that shares nothing with the search. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchStaves } from '../../src/rack/match.js';
import type { MatchRequest, MatchResult } from '../../src/rack/request.js';
import { seeded } from '../../src/rack/random.js';
import type { Stock } from '../../src/rack/stock.js';
import { verifyMatch } from '../../src/rack/verify.js';
import { asked, rack, stave, stockOf, widthsOf } from './racks.js';

async function answerTo(stock: Stock, request: Partial<MatchRequest> = {}): Promise<MatchResult> {
  const asking = asked(request);
  const result = await matchStaves(stock, asking);
  expect(verifyMatch(stock, asking, result)).toEqual([]);
  return result;
}

const marksOf = ({ sets }: MatchResult): string[][] =>
  sets.map(({ staves }) => staves.map(({ mark }) => mark));

describe('a rack of ordinary staves', () => {
  // common practice: 25 to 30 staves of 60 to 100 mm make a cask of about 225 litres
  it('gives casks of 25 to 30 staves', async () => {
    const { sets, proven, shortfall } = await answerTo(rack({ count: 120 }), { vessels: 3 });
    expect(sets).toHaveLength(3);
    expect(proven).toBe(true);
    expect(shortfall).toBeNull();
    for (const { count, bungStave, staves } of sets) {
      expect(count).toBeGreaterThanOrEqual(25);
      expect(count).toBeLessThanOrEqual(30);
      expect(staves[0]!.mark).toBe(bungStave);
    }
  });

  it('reaches the bound at a tight tolerance without planing', async () => {
    const request = { vessels: 'max', tolerance: 0.1, plane: 0 } as const;
    const { sets, upperBound } = await answerTo(rack({ count: 600 }), request);
    expect(sets.length).toBe(upperBound);
  });

  it('gives the same answer whatever the order of its rows, and again', async () => {
    const stock = rack({ count: 150, seed: 3 });
    const random = seeded(9);
    const shuffled = [...stock.staves].sort(() => random.unit() - 0.5);
    const first = await answerTo(stock, { vessels: 4 });
    expect(await answerTo({ ...stock, staves: shuffled }, { vessels: 4 })).toEqual(first);
    expect(await answerTo(stock, { vessels: 4 })).toEqual(first);
  });

  it('says how sure it is, and which spares cure a ring', async () => {
    const { sets } = await answerTo(rack({ count: 70 }));
    const [{ standardDeviation, cures, count, closesAt }] = sets as [MatchResult['sets'][0]];
    expect(standardDeviation).toBeCloseTo((0.5 / Math.sqrt(12) / Math.PI) * Math.sqrt(count), 9);
    expect(cures.map(({ closes }) => closes)).toEqual(['large', 'small']);
    expect(cures[0]!.changesBy).toBeLessThan(0);
    expect(cures[1]!.changesBy).toBeGreaterThan(0);
    expect(Math.abs(closesAt - 678)).toBeLessThan(0.01);
  });
});

describe('an odd rack', () => {
  it('of too few staves says what is missing', async () => {
    const { sets, shortfall, help, proven } = await answerTo(rack({ count: 22 }));
    expect(sets).toHaveLength(0);
    expect(proven).toBe(true);
    expect(shortfall!.reason).toBe('wood');
    expect(help!.makesSet).toBe(1);
    expect(help!.staves).toBeGreaterThanOrEqual(5);
  });

  it('without staves gives none', async () => {
    const { sets, left, help } = await answerTo(stockOf([]));
    expect({ sets, left, help }).toEqual({ sets: [], left: [], help: null });
  });

  it("of staves all alike closes or doesn't", async () => {
    const closing = stockOf(new Array<number>(90).fill(76.4));
    expect((await answerTo(closing, { vessels: 'max', bung: null })).sets).toHaveLength(3);
    const not = stockOf(new Array<number>(90).fill(80));
    expect((await answerTo(not, { vessels: 'max', bung: null })).sets).toHaveLength(0);
  });

  it('of two clusters comes within one of the bound', async () => {
    const narrow = widthsOf({ count: 150, from: 60, to: 63, step: 0.5, seed: 1 });
    const wide = widthsOf({ count: 150, from: 94, to: 97, step: 0.5, seed: 2 });
    const stock = stockOf([...narrow, ...wide]);
    const { sets, upperBound } = await answerTo(stock, { vessels: 'max', bung: 94 });
    expect(sets.length).toBeGreaterThanOrEqual(upperBound - 1);
  });

  it('of a few very wide staves reaches the bound', async () => {
    const wide = widthsOf({ count: 10, from: 120, to: 140, step: 0.5, seed: 1 });
    const other = widthsOf({ count: 290, from: 68, to: 80, step: 0.5, seed: 2 });
    const { sets, upperBound } = await answerTo(stockOf([...wide, ...other]), { vessels: 'max' });
    expect(sets.length).toBe(upperBound);
    expect(upperBound).toBe(10);
  });

  it.each([1, 25.4 / 16, 2])('read to %d mm reaches the bound', async (step) => {
    const stock = rack({ count: 300, step });
    const { sets, upperBound } = await answerTo(stock, { vessels: 'max' });
    expect(sets.length).toBe(upperBound);
  });

  it('with no stave for the bung makes no set, and says so', async () => {
    const { shortfall, help } = await answerTo(rack({ count: 60, to: 88 }));
    expect(shortfall!.reason).toBe('noBung');
    expect(help).toMatchObject({ staves: 1, fromWidth: 90, makesSet: 1 });
  });

  it('takes a stave marked as unfit for the bung elsewhere', async () => {
    const stock = rack({ count: 60, to: 89, step: 1 });
    const staves = [
      ...stock.staves,
      stave('no', 95, { bung: false }),
      stave('yes', 92, { bung: true }),
    ];
    const { sets } = await answerTo({ ...stock, staves }, { vessels: 2 });
    expect(sets.map(({ bungStave }) => bungStave)).toEqual(['yes']);
  });

  it('leaves staves that are too short or too thin', async () => {
    const stock = rack({ count: 70 });
    const staves = [
      ...stock.staves,
      stave('short', 80, { length: 900 }),
      stave('thin', 80, { thickness: 20 }),
    ];
    const request = { vessels: 2, length: 950, thicknessFor: () => 29 };
    const { unfit, left } = await answerTo({ ...stock, staves }, request);
    expect(unfit).toEqual([
      { mark: 'short', because: 'length' },
      { mark: 'thin', because: 'thickness' },
    ]);
    expect(left).toContain('short');
    expect(left).toContain('thin');
  });
});

describe('help', () => {
  it('is kept: staves of the widths that it names make one set more', async () => {
    const stock = rack({ count: 80, seed: 5 });
    const short = await answerTo(stock, { vessels: 3 });
    const { staves, fromWidth, toWidth, makesSet } = short.help!;
    expect(makesSet).toBe(short.sets.length + 1);
    for (const width of [fromWidth, toWidth]) {
      const more = Array.from({ length: staves }, (_, k) => stave(`new${k}`, width));
      const { sets } = await answerTo(
        { ...stock, staves: [...stock.staves, ...more] },
        { vessels: 3 },
      );
      expect(sets).toHaveLength(makesSet);
    }
  });
});

describe('staves already standing', () => {
  it('stay together, in their order, in the first set', async () => {
    const stock = rack({ count: 90 });
    const standing = ['s7', 's30', 's2', 's55'];
    const { sets } = await answerTo(stock, { standing, vessels: 2 });
    expect(sets).toHaveLength(2);
    const [first] = marksOf({ sets } as MatchResult);
    const twice = [...first!, ...first!].join(' ');
    expect(twice).toContain(standing.join(' '));
  });

  it("that can't be completed make no set", async () => {
    const stock = rack({ count: 40 });
    const widest = [...stock.staves].sort((a, b) => b.width - a.width).slice(0, 26);
    const standing = widest.map(({ mark }) => mark);
    const { sets, shortfall } = await answerTo(stock, { standing });
    expect(sets).toHaveLength(0);
    expect(shortfall).not.toBeNull();
  });
});

describe('a search that is stopped', () => {
  it('answers with the best so far, whole and true', async () => {
    const stock = rack({ count: 900, step: 2 });
    const request = asked({ vessels: 'max', tolerance: 0.1, plane: 0 });
    let breaths = 0;
    let clock = 0;
    const result = await matchStaves(stock, request, {
      now: () => (clock += 0.1),
      breathe: async () => {
        breaths++;
        await Promise.resolve();
      },
      shouldStop: () => breaths > 4,
    });
    expect(verifyMatch(stock, request, result)).toEqual([]);
    expect(result.shortfall!.reason).toBe('stopped');
    expect(result.sets.length).toBeGreaterThan(0);
  });
});

describe('any rack', () => {
  const racks = fc.record({
    count: fc.integer({ min: 0, max: 90 }),
    from: fc.integer({ min: 40, max: 80 }),
    spread: fc.integer({ min: 0, max: 60 }),
    step: fc.constantFrom(0.1, 0.5, 1, 25.4 / 16, 2),
    seed: fc.integer({ min: 1, max: 1000 }),
  });
  const requests = fc.record({
    vessels: fc.constantFrom<number | 'max'>(1, 2, 3, 'max'),
    tolerance: fc.constantFrom(0.05, 0.5, 1.5, 3),
    plane: fc.constantFrom(0, 1, 4),
    bung: fc.constantFrom(null, 80, 90),
    measured: fc.constantFrom<'blank' | 'backed'>('blank', 'backed'),
    diameter: fc.constantFrom(400, 678),
  });

  it('gives an answer that keeps to the request', async () => {
    await fc.assert(
      fc.asyncProperty(racks, requests, async ({ spread, ...shape }, request) => {
        const count = request.diameter === 400 ? { min: 15, max: 18 } : { min: 25, max: 30 };
        const stock = rack({ ...shape, to: shape.from + spread });
        const { sets, upperBound, proven } = await answerTo(stock, { ...request, count });
        expect(proven).toBe(sets.length === upperBound);
      }),
      { seed: 11, numRuns: 15 },
    );
  });
});
