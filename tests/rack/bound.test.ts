import { describe, expect, it } from 'vitest';
import { upperBound } from '../../src/rack/bound.js';
import { makePool } from '../../src/rack/pool.js';
import type { MatchRequest } from '../../src/rack/request.js';
import type { Stock } from '../../src/rack/stock.js';
import { bruteForce } from './brute-force.js';
import { asked, rack, stockOf } from './racks.js';

const bound = (stock: Stock, request: Partial<MatchRequest>) =>
  upperBound(makePool(stock.staves, asked(request)));
const alike = (count: number, width: number): Stock =>
  stockOf(new Array<number>(count).fill(width));

describe('the upper bound', () => {
  it.each([1, 2, 3, 4, 5, 6])('is never below what trying everything finds, rack %d', (seed) => {
    const request = { diameter: 110, count: { min: 3, max: 6 }, bung: 70, tolerance: 1, plane: 1 };
    const stock = rack({ count: 13, from: 45, to: 85, seed });
    const truth = bruteForce(stock, asked({ ...request, vessels: 'max' }));
    expect(bound(stock, { ...request, vessels: 'max' }).sets).toBeGreaterThanOrEqual(
      truth?.sets ?? 0,
    );
  });

  it('counts whole rings of alike staves', () => {
    // 28 x 76.4 mm close at 678.1
    const request = { bung: null, vessels: 'max' } as const;
    expect(bound(alike(28, 76.4), request).sets).toBe(1);
    expect(bound(alike(27, 76.4), request).sets).toBe(0);
    expect(bound(alike(280, 76.4), request).sets).toBe(10);
  });

  it('says what is missing', () => {
    const { shortfall } = bound(alike(27, 76.4), { bung: null });
    expect(shortfall!.reason).toBe('wood');
    // one stave more would do: its girth, less what the tolerance gives (1.5 pi = 4.7 mm)
    expect(shortfall!.girthMissing).toBeGreaterThan(76.1 - 5);
    expect(shortfall!.girthMissing).toBeLessThan(76.1);
    expect(bound(alike(56, 80), { bung: 90 }).shortfall!.reason).toBe('noBung');
    const narrow = rack({ count: 90, from: 65, to: 88 }).staves.map(({ width }) => width);
    const one = stockOf([...narrow, 92]);
    expect(bound(one, { bung: 90, vessels: 2 }).shortfall!.reason).toBe('bung');
    expect(bound(alike(56, 59.4), { bung: null }).shortfall!.reason).toBe('counts');
    expect(bound(alike(29, 79), { bung: null }).shortfall!.reason).toBe('widths');
  });

  it('ends at the number asked for', () => {
    expect(bound(alike(280, 76.4), { bung: null, vessels: 3 })).toEqual({
      sets: 3,
      shortfall: null,
    });
  });
});
