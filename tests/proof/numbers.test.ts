/**
 * What the proof reads off the files of a 225-litre cask, against values worked out by hand from its outer dimensions:
 * bilge 678, ends 572, height 945, 28 staves 27 thick, an arc for a profile.
 */
import { expect, test } from 'vitest';
import type { Finding } from '../../src/index.js';
import { wineCask } from '../pieces/vessels.js';
import { Pack } from './pack.js';

const { findings } = (await Pack.of(wineCask)).prove();
const rho = (472.5 ** 2 + 53 ** 2) / (2 * 53);
const radius = (z: number): number => 339 - rho + Math.sqrt(rho ** 2 - z ** 2);
/** of the inside at a height: the arc 27 inside the outer one, about the same centre */
const inside = (z: number): number => 339 - rho + Math.sqrt((rho - 27) ** 2 - z ** 2);

function found(check: string, place: Finding['place'] = {}): number {
  const keys = Object.entries(place);
  const match = findings.find(
    (each) =>
      each.check === check &&
      each.unit !== 'count' &&
      keys.every(([key, value]) => (each.place as Record<string, unknown>)[key] === value),
  );
  return match!.measured!;
}

test('capacity: the inside, turned about the axis, between the heads’ inside faces', () => {
  // grooves 60 from the ends, heads 12 further in; Simpson's rule
  const to = 472.5 - 60 - 12;
  const n = 400;
  const sum = Array.from({ length: n + 1 }, (_, i) => {
    const weight = i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2;
    return weight * Math.PI * inside(-to + (2 * to * i) / n) ** 2;
  }).reduce((a, b) => a + b, 0);
  expect(found('capacity')).toBeCloseTo((sum * 2 * to) / (3 * n) / 1e6, 1);
});

test('head: twice the groove’s radius', () => {
  // a howel 2 deep, a groove 5 deeper
  expect(found('head-fit')).toBeCloseTo(2 * (inside(412.5) + 2 + 5), 2);
});

test('girth round the flat outer faces at the bilge: a polygon about its circle', () => {
  expect(found('girth', { station: 0 })).toBeCloseTo(28 * 2 * 339 * Math.tan(Math.PI / 28), 2);
});

test('end cut: from the outer arc to the one of the blank’s inner face', () => {
  const alpha = Math.PI / 28;
  const blank = 339 * (1 - Math.cos(alpha)) + 27 * Math.cos(alpha);
  const fibre = rho - 13.5;
  const longer = fibre * (Math.asin(472.5 / (rho - blank)) - Math.asin(472.5 / rho));
  const degrees = (Math.atan(longer / blank) * 180) / Math.PI;
  expect(found('end-cut', { end: 'top' })).toBeCloseTo(degrees, 2);
});

test('chime strap: girth under its smaller edge, half its thickness outwards, and the lap', () => {
  // 3 from the end, 40 wide along the chord: the far edge by halving
  const near = 472.5 - 3;
  let [low, high] = [near - 41, near];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (Math.hypot(near - middle, radius(middle) - radius(near)) > 40) low = middle;
    else high = middle;
  }
  const slope = Math.asin((radius(low) - radius(near)) / 40);
  const middleOfSteel = 2 * Math.PI * (radius(near) + 0.9 * Math.cos(slope));
  const girth = found('strap-girth', { number: 1 });
  const driving = middleOfSteel - girth;
  expect(driving).toBeGreaterThanOrEqual(-0.001);
  expect(driving).toBeLessThan(0.01 * middleOfSteel);
  expect(found('strap-length', { number: 1 }) - girth).toBeCloseTo(70, 3);
});

test('groove: where the spec has it, on the bent stave', () => {
  expect(found('groove-height', { end: 'top' })).toBeCloseTo(472.5 - 60, 2);
  expect(found('groove-height', { end: 'bottom' })).toBeCloseTo(60 - 472.5, 2);
  expect(found('groove-width', { end: 'top' })).toBeCloseTo(6, 2);
});
