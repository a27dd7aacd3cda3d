/** The card is a ruler: its marks lie a groove's radius from the cross. */
import { expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/measure.js';
import { compassCards } from '../../src/pieces/compass-card.js';
import { en } from '../../src/pieces/words/en.js';
import { vesselOf, wineCask } from './vessels.js';

it('has its 0 at the groove’s radius from the cross, a mark for each millimetre, and one at 1 % below the line', () => {
  const vessel = vesselOf(wineCask);
  const [card] = compassCards(vessel, en);
  const radius = vessel.heads.bottom.groove.radius;
  const upright = card!.strokes
    .filter(({ layer }) => layer === 'station')
    .map(({ curve }) => boundsOf(curve)!)
    .filter(({ minX, maxX }) => maxX === minX);
  const above = upright.filter(({ maxY }) => maxY > 0);
  const longest = above.reduce((a, b) => (b.maxY > a.maxY ? b : a));
  expect(longest.minX).toBeCloseTo(radius, 9);
  const places = above.map(({ minX }) => minX - radius).sort((a, b) => a - b);
  places.slice(1).forEach((x, i) => expect(x - places[i]!).toBeCloseTo(1, 9));
  const below = upright.filter(({ minY }) => minY < 0);
  expect(below.map(({ minX }) => minX)).toEqual([1.01 * radius]);
  expect(card!.letterings.some(({ text }) => text.includes('3.98°'))).toBe(true);
});

it('has a table in which no miss means the drawn groove and head', () => {
  const vessel = vesselOf(wineCask);
  const { rows } = compassCards(vessel, en)[0]!.legend.tables[0]!;
  const meets = rows.find(([how]) => how === en.jigs.compass.table.meets)!;
  expect(meets[2]).toBe(vessel.heads.bottom.groove.radius.toFixed(1));
  expect(meets[3]).toBe(vessel.heads.bottom.diameter.toFixed(1));
  const radii = rows.map((row) => Number(row[2]));
  expect(radii).toEqual([...radii].sort((a, b) => a - b));
});

it('is one for each head that differs', () => {
  const unlike = vesselOf(`${wineCask}heads: { top: { clearance: 1 } }\n`);
  const names = compassCards(unlike, en).map(({ name }) => name);
  expect(names).toEqual(['compass-card-top', 'compass-card-bottom']);
});
