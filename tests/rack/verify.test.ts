/** The check must find what is wrong: each answer here is true but for one thing. */
import { beforeAll, describe, expect, it } from 'vitest';
import { matchStaves } from '../../src/rack/match.js';
import type { MatchResult, MatchedSet } from '../../src/rack/request.js';
import { verifyMatch } from '../../src/rack/verify.js';
import { asked, rack } from './racks.js';

const stock = rack({ count: 62, seed: 2 });
const request = asked({ vessels: 2 });
let honest: MatchResult;
beforeAll(async () => {
  honest = await matchStaves(stock, request);
});

const flaws = (result: MatchResult, asking = request): string[] =>
  verifyMatch(stock, asking, result);
const withFirst = (change: (set: MatchedSet) => Partial<MatchedSet>): MatchResult => {
  const [first, ...others] = honest.sets;
  return { ...honest, sets: [{ ...first!, ...change(first!) }, ...others] };
};

describe('the check of an answer', () => {
  it('finds nothing in an honest one', () => {
    expect(honest.sets).toHaveLength(2);
    expect(flaws(honest)).toEqual([]);
  });

  it.each<[string, (set: MatchedSet) => Partial<MatchedSet>, RegExp]>([
    ['a diameter a hair off', (set) => ({ closesAt: set.closesAt + 0.001 }), /closes smaller/],
    ['a diameter out of tolerance', () => ({ closesAt: 690 }), /closes at 690/],
    [
      'a stave of another width',
      ({ staves }) => ({ staves: staves.with(3, { ...staves[3]!, width: 99.9 }) }),
      /isn't on the rack/,
    ],
    ['a stave twice', ({ staves }) => ({ staves: staves.with(3, staves[4]!) }), /is in sets/],
    [
      'too few staves',
      ({ staves }) => ({ staves: staves.slice(0, 20), count: 20 }),
      /count out of range/,
    ],
    ['a count that is not its own', ({ count }) => ({ count: count + 1 }), /count is not/],
    [
      'too much planed',
      ({ staves }) => ({ staves: staves.with(3, { ...staves[3]!, planeOff: 5 }) }),
      /5 mm planed/,
    ],
    [
      'another stave at the top',
      ({ staves }) => ({ staves: [...staves.slice(1), staves[0]!] }),
      /not at the top/,
    ],
    ['a laid width that is wrong', ({ laidWidth }) => ({ laidWidth: laidWidth + 1 }), /laid width/],
  ])('finds %s', (_, change, flaw) => {
    expect(flaws(withFirst(change)).join('\n')).toMatch(flaw);
  });

  it('finds more sets than the bound, staves lost, and standing staves elsewhere', () => {
    expect(flaws({ ...honest, upperBound: 1 })).toContain('more sets than the bound');
    expect(flaws({ ...honest, left: honest.left.slice(1) })).toContain('staves are missing');
    const standing = [honest.sets[1]!.staves[3]!.mark];
    expect(flaws(honest, { ...request, standing }).join()).toMatch(/standing stave/);
  });
});
