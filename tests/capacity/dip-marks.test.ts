/** Marks against the integral that they stand for. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amountsOf,
  fillingOf,
  litresPer,
  marksAt,
  type DipMark,
  type Filling,
  type Measure,
  type MarkRoom,
} from '../../src/capacity/dip-marks.js';
import { fullDip, litresAtDip, postures } from '../../src/capacity/dip-table.js';
import { capacityLitres } from '../../src/capacity/volume.js';
import { arbitraryVessel, bucket, cylinder, solved, wineCask } from '../vessel/specs.js';

const room = { mark: 2, number: 8 };
const marksOf = (filling: Filling, measure: Measure, room: MarkRoom): DipMark[] =>
  marksAt(filling, measure, amountsOf(filling, measure, room));
const measures: readonly Measure[] = ['litre', 'usGallon', 'imperialGallon'];

describe.each([
  ['a cask', wineCask],
  ['a bucket', bucket],
  ['a cylinder', cylinder],
])('the marks of %s', (_name, spec) => {
  const vessel = solved(spec);

  it.each(postures)('%s: stand where the integral holds that much, within 0.05 mm', (posture) => {
    const full = fullDip(vessel, posture);
    for (const measure of measures) {
      for (const { dip, amount } of marksOf(fillingOf(vessel, posture), measure, room)) {
        const [low, high] = [-0.05, 0.05].map((by) => litresAtDip(vessel, posture, dip + by));
        const litres = amount * litresPer[measure];
        expect(low).toBeLessThanOrEqual(litres);
        expect(high).toBeGreaterThanOrEqual(litres);
        expect(dip).toBeLessThan(full);
      }
    }
  });
});

it('gallons are 231 cubic inches and 4.54609 litres', () => {
  expect(litresPer.usGallon).toBeCloseTo((231 * 25.4 ** 3) / 1e6, 12);
  // Units of measurement: the imperial gallon, by definition since 1985 (from memory)
  expect(litresPer.imperialGallon).toBe(4.54609);
});

it('of a cylinder are even: a litre is 1e6 / (132^2 pi) mm', () => {
  const marks = marksOf(fillingOf(solved(cylinder), 'standing'), 'litre', room);
  for (const { dip, amount } of marks)
    expect(dip).toBeCloseTo((amount * 1e6) / (Math.PI * 132 ** 2), 4);
});

describe('the marks of any vessel', () => {
  it('climb, keep their room, and end below full', () => {
    fc.assert(
      fc.property(arbitraryVessel, fc.constantFrom(...postures), (spec, posture) => {
        const vessel = solved(spec);
        const marks = marksOf(fillingOf(vessel, posture), 'usGallon', room);
        marks.slice(1).forEach(({ dip }, i) => {
          // the steepest place is known between table places only
          expect(dip - marks[i]!.dip).toBeGreaterThan(0.97 * room.mark);
        });
        const numbers = marks.filter(({ rank }) => rank === 'numbered');
        numbers.slice(1).forEach(({ dip }, i) => {
          expect(dip - numbers[i]!.dip).toBeGreaterThan(0.97 * room.number);
        });
        const last = marks.at(-1)?.amount ?? 0;
        expect(last * litresPer.usGallon).toBeLessThan(capacityLitres(vessel));
      }),
      { numRuns: 25 },
    );
  });

  it('are ones, twos or fives apart, with numbers at whole multiples', () => {
    const marks = marksOf(fillingOf(solved(wineCask), 'lying'), 'litre', room);
    expect(marks.map(({ amount }) => amount)).toEqual(marks.map((_, i) => i + 1));
    const numbered = marks.filter(({ rank }) => rank === 'numbered');
    expect(numbered.slice(0, 3).map(({ amount }) => amount)).toEqual([5, 10, 15]);
  });
});
