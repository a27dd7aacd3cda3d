/** What is asked of the rack, read from its boxes. */
import { describe, expect, it } from 'vitest';
import { readWishes } from '../../../src/page/rack/wishes.js';

const empty = { vessels: '1', count: '', tolerance: '', plane: '', bung: '' };
const asked = {
  asMany: false,
  noBung: false,
  measured: 'blank',
  units: 'mm',
  standing: '',
} as const;

describe('wishes', () => {
  it('leave to what is usual whatever is empty', () => {
    expect(readWishes(empty, asked)).toEqual({ wishes: { vessels: 1, measured: 'blank' } });
  });

  it('are read in every way of writing', () => {
    const typed = { vessels: '3', count: '25-30', tolerance: '0,5', plane: '1/16', bung: '9 cm' };
    expect(readWishes(typed, asked)).toEqual({
      wishes: {
        vessels: 3,
        measured: 'blank',
        count: { min: 25, max: 30 },
        tolerance: 0.5,
        plane: 1.5875,
        bung: 90,
      },
    });
  });

  it('may be as many as there are, without a bung stave', () => {
    const all = { ...asked, asMany: true, noBung: true, measured: 'backed' } as const;
    expect(readWishes({ ...empty, vessels: 'x', bung: 'y' }, all)).toEqual({
      wishes: { vessels: 'max', measured: 'backed', bung: null },
    });
  });

  it('name each box that cannot be read', () => {
    const typed = { vessels: '0', count: '30-25', tolerance: 'x', plane: '1,250', bung: '3/7/2' };
    expect(readWishes(typed, asked)).toEqual({
      problems: {
        vessels: 'no-vessels',
        count: 'no-count',
        tolerance: 'not-a-length',
        plane: 'two-readings',
        bung: 'odd-fraction',
      },
    });
  });
});
