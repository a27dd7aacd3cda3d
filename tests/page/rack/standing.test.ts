/** Staves that stand already, as typed: read, changed by a touch, and judged by the core's rules. */
import { describe, expect, it } from 'vitest';
import { planVessel, readStock, requestFor } from '../../../src/index.js';
import { marksIn, standingIssues, toggled } from '../../../src/page/rack/standing.js';
import { readWishes, tooManyVessels } from '../../../src/page/rack/wishes.js';
import { bucket } from '../../cli/workshop.js';

describe('marks', () => {
  it('stand between commas, semicolons or on lines of their own', () => {
    expect(marksIn(' A4,B17 ;C 2\r\nD;;')).toEqual(['A4', 'B17', 'C 2', 'D']);
    expect(marksIn(' , ')).toEqual([]);
  });

  it('come at the end by a touch, and go by another', () => {
    expect(toggled('', 'A4')).toBe('A4');
    expect(toggled('A4;B17', 'C2')).toBe('A4, B17, C2');
    expect(toggled('A4, B17, C2', 'B17')).toBe('A4, C2');
  });

  it('are part of what is asked, in their order', () => {
    const empty = { vessels: '1', count: '', tolerance: '', plane: '', bung: '' };
    const asked = { asMany: false, noBung: false, measured: 'blank', units: 'mm' } as const;
    expect(readWishes(empty, { ...asked, standing: 'B3, B1' })).toEqual({
      wishes: { vessels: 1, measured: 'blank', standing: ['B3', 'B1'] },
    });
  });
});

describe('what is wrong with them', () => {
  const rows = Array.from({ length: 20 }, (_, i) => `B${i + 1},60`);
  const { stock } = readStock(['mark,width', ...rows].join('\n'), 'mm');
  const usual = requestFor(planVessel(bucket, '').vessel!, {});
  const issues = (marks: string[], count?: { min: number; max: number }) =>
    standingIssues(stock!, usual, count, marks);

  it('is nothing while the rack has them', () => {
    expect(issues([])).toEqual([]);
    expect(issues(['B1', 'B20'])).toEqual([]);
  });

  it('names unknown and doubled marks, and too many of them', () => {
    expect(issues(['B1', 'Q7', 'B1'])).toEqual([
      { code: 'standing-unknown', found: 'Q7', allowed: '' },
      { code: 'standing-doubled', found: 'B1', allowed: '' },
    ]);
    expect(issues(['Q7', 'Q7', 'Q7']).map(({ code }) => code)).toEqual([
      'standing-unknown',
      'standing-doubled',
    ]);
    expect(issues(['B1', 'B2', 'B3', 'B4'], { min: 3, max: 3 })).toEqual([
      { code: 'standing-many', found: '4', allowed: '<= 3' },
    ]);
  });
});

describe('more vessels than the rack has staves for', () => {
  it.each([
    ['4', null],
    ['5', 4],
    ['x', null],
  ])('%s vessels of 25 staves from 118: %s', (typed, most) => {
    expect(tooManyVessels(typed, 118, 25)).toBe(most);
  });

  it('are nothing to speak of while the rack is empty', () => {
    expect(tooManyVessels('2', 0, 25)).toBeNull();
  });
});
