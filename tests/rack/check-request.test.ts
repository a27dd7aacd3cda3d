import { describe, expect, it } from 'vitest';
import { checkRequest } from '../../src/rack/check-request.js';
import type { MatchRequest } from '../../src/rack/request.js';
import { asked, rack } from './racks.js';

const stock = rack({ count: 40 });
const wrong = (request: Partial<MatchRequest>): string[] =>
  checkRequest(stock, asked(request)).map(({ code, found }) => `${code} ${found}`);

describe('a request', () => {
  it('that makes sense has nothing wrong', () => {
    expect(wrong({})).toEqual([]);
    expect(wrong({ vessels: 'max', tolerance: 0, plane: 0, bung: null, standing: ['s1'] })).toEqual(
      [],
    );
  });

  it.each([
    [{ diameter: 0 }, 'diameter 0'],
    [{ vessels: 0 }, 'vessels 0'],
    [{ vessels: 1.5 }, 'vessels 1.5'],
    [{ count: { min: 2, max: 30 } }, 'count-few 2'],
    [{ count: { min: 30, max: 25 } }, 'count-order 30-25'],
    [{ count: { min: 25.5, max: 30 } }, 'count-whole 25.5'],
    [{ tolerance: -1 }, 'tolerance -1'],
    [{ tolerance: NaN }, 'tolerance NaN'],
    [{ tolerance: 70 }, 'tolerance 70'],
    [{ plane: -1 }, 'plane -1'],
    [{ plane: 1000 }, 'plane 1000'],
    [{ bung: 0 }, 'bung 0'],
    [{ bung: 700 }, 'bung 700'],
    [{ standing: ['s1', 'x9'] }, 'standing-unknown x9'],
    [{ standing: ['s1', 's1'] }, 'standing-doubled s1'],
  ])('%j is refused', (request, message) => {
    expect(wrong(request)).toEqual([message]);
  });

  it('names all faults at once', () => {
    expect(wrong({ vessels: -1, tolerance: -1, standing: ['?'] })).toHaveLength(3);
  });

  it("can't have more staves standing than a set may have", () => {
    const standing = stock.staves.slice(0, 31).map(({ mark }) => mark);
    expect(wrong({ standing })).toEqual(['standing-many 31']);
  });
});
