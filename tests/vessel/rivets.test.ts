/** The rule for rivets is common practice without a source: these tests hold it to what it says, not to a book. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rivetHead, rivetsOf } from '../../src/vessel/rivets.js';
import { between } from './specs.js';

const strap = { name: 'one', end: 'top', offset: 0, width: 40, thickness: 1.8, lap: 70 } as const;

describe('rivets', () => {
  it('of a chime hoop are two of 5 mm, in the middles of the two halves of the lap', () => {
    expect(rivetsOf(strap, 'mm')).toEqual({
      count: 2,
      diameter: 5,
      holeDiameter: 5.2,
      places: [17.5, 52.5],
    });
  });

  it('of a wide strap are three', () => {
    const { count, diameter, places } = rivetsOf(
      { ...strap, width: 50, thickness: 2.5, lap: 100 },
      'mm',
    );
    expect([count, diameter]).toEqual([3, 8]);
    expect(places.map((place) => place.toFixed(2))).toEqual(['16.67', '50.00', '83.33']);
  });

  it('come in sixteenths and the like for a spec in inches', () => {
    const inch = 25.4;
    const { diameter } = rivetsOf({ ...strap, width: inch, thickness: (3 / 64) * inch }, 'in');
    expect(diameter).toBeCloseTo(inch / 8, 9);
  });

  it('are left out where the lap, or the strap, has no room', () => {
    const none = { count: 0, diameter: 0, holeDiameter: 0, places: [] };
    expect(rivetsOf({ ...strap, lap: 0 }, 'mm')).toEqual(none);
    expect(rivetsOf({ ...strap, lap: 14.9 }, 'mm')).toEqual(none);
    expect(rivetsOf({ ...strap, width: 8.9 }, 'mm')).toEqual(none);
    expect(rivetsOf({ ...strap, lap: 20 }, 'mm').count).toBe(1);
  });

  it('keep 1.5 diameters from every edge, and lie alike seen from either end of the lap', () => {
    fc.assert(
      fc.property(between(3, 120), between(0.5, 6), between(0, 300), (width, thickness, lap) => {
        const { count, diameter, places } = rivetsOf({ ...strap, width, thickness, lap }, 'mm');
        expect(places).toHaveLength(count);
        if (count === 0) return;
        expect(width).toBeGreaterThanOrEqual(3 * diameter);
        expect(places[0]).toBeGreaterThanOrEqual(1.5 * diameter - 1e-9);
        places.forEach((place, i) => expect(place + places[count - 1 - i]!).toBeCloseTo(lap, 9));
      }),
    );
  });

  it('have round heads as in DIN 660 (its table from memory), to a tenth', () => {
    const table = [
      [3, 5.2, 1.8],
      [4, 7, 2.4],
      [5, 8.8, 3],
      [6, 10.5, 3.6],
      [8, 14, 4.8],
    ] as const;
    for (const [shank, width, height] of table) {
      const head = rivetHead(shank);
      expect(Math.abs(head.diameter - width)).toBeLessThanOrEqual(0.1);
      expect(Math.abs(head.height - height)).toBeLessThanOrEqual(0.1);
    }
  });
});
