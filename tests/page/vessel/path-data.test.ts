/** Path data for the screen against points worked out by hand. */
import { expect, it } from 'vitest';
import { arc, circle, line, polygon, polyline } from '../../../src/geometry/curve.js';
import { pathInTenths, pathOf, tenths } from '../../../src/page/vessel/path-data.js';

it('turns y over, rounds to a hundredth, and has no minus before a zero', () => {
  const curve = line({ x: 1.23456, y: 2 }, { x: -0.001, y: 0 });
  expect(pathOf([{ curve }])).toBe('M1.23 -2L0 0');
});

it('writes small pictures in whole tenths', () => {
  const curve = polyline([
    { x: 0, y: 0 },
    { x: 10.04, y: 0 },
    { x: 10.04, y: -5.06 },
  ]);
  expect(pathInTenths([{ curve }])).toBe('M0 0L100 0L100 51');
  expect(tenths(-0.01)).toBe(0);
});

it('closes a polygon without drawing its last side twice, and puts curves one after another', () => {
  const corners = [
    { x: 0, y: 0 },
    { x: 3, y: 0 },
    { x: 0, y: 4 },
  ];
  const curve = polygon(corners);
  expect(pathOf([{ curve }, { curve: polyline([]) }, { curve }])).toBe(
    'M0 0L3 0L0 -4ZM0 0L3 0L0 -4Z',
  );
});

it('a circle is four quarter arcs that run against the clock on the screen too', () => {
  expect(pathOf([{ curve: circle({ x: 0, y: 0 }, 10) }])).toBe(
    'M10 0A10 10 0 0 0 0 -10A10 10 0 0 0 -10 0A10 10 0 0 0 0 10A10 10 0 0 0 10 0Z',
  );
});

it('an arc to the right turns the other way, and one of more than half a circle is the large one', () => {
  const right = arc({ x: 0, y: 0 }, 10, Math.PI / 2, 0);
  expect(pathOf([{ curve: right }])).toBe('M0 -10A10 10 0 0 1 10 0');
  // tan(270/4 degrees): three quarters of a circle of radius 10 round 0, 10
  const curve = {
    closed: false,
    vertices: [
      { x: 0, y: 0, bulge: Math.tan((3 * Math.PI) / 8) },
      { x: -10, y: 10, bulge: 0 },
    ],
  };
  expect(pathOf([{ curve }])).toBe('M0 0A10 10 0 1 0 -10 -10');
});
