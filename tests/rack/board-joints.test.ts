import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boardJointAzimuths } from '../../src/rack/board-joints.js';

test('two boards meet the rim in line with the axis, at either end of their joint', () => {
  const [near, far] = boardJointAzimuths([300, 300], 600, 0);
  expect(near).toBeCloseTo(0, 12);
  expect(far).toBeCloseTo(Math.PI, 12);
});

test('a joint half a radius off the middle meets the rim 30 degrees round', () => {
  // sin 30 degrees is a half
  const azimuths = boardJointAzimuths([150, 300, 150], 600, 0);
  const degrees = azimuths.map((azimuth) => Math.round((azimuth * 180) / Math.PI));
  expect(degrees).toEqual([-30, 210, 30, 150]);
});

test('both ends of every joint lie on one line across the head, as far off the middle as the boards say', () => {
  const widths = fc.array(fc.double({ min: 20, max: 120, noNaN: true }), {
    minLength: 2,
    maxLength: 8,
  });
  fc.assert(
    fc.property(widths, fc.double({ min: -3, max: 3, noNaN: true }), (boards, turn) => {
      const diameter = boards.reduce((sum, width) => sum + width, 0);
      const azimuths = boardJointAzimuths(boards, diameter, turn);
      expect(azimuths).toHaveLength(2 * (boards.length - 1));
      let across = -diameter / 2;
      boards.slice(0, -1).forEach((width, i) => {
        across += width;
        for (const azimuth of azimuths.slice(2 * i, 2 * i + 2)) {
          expect((diameter / 2) * Math.sin(azimuth - turn)).toBeCloseTo(across, 8);
        }
      });
    }),
  );
});
