import { describe, expect, test } from 'vitest';
import { halfAngle } from '../../src/rack/closing.js';
import { headJoints } from '../../src/sets/head-joints.js';
import { flatWidth, requestFor } from '../../src/sets/wishes.js';
import { vesselOf, wideTub, wineCask } from '../pieces/vessels.js';

const cask = vesselOf(wineCask);
const keg = vesselOf(
  'vessel: cask\nunits: in\nheight: 13 3/8\nbilge: 10\nends: 8 1/2\nstaves:\n  count: 16\n',
);

describe('what is usual', () => {
  test('a wine cask of about 225 litres: 25 to 30 staves (common practice)', () => {
    const { count, diameter, tolerance, plane, vessels, measured } = requestFor(cask, {});
    expect(count).toEqual({ min: 25, max: 30 });
    expect({ diameter, tolerance, plane }).toEqual({ diameter: 678, tolerance: 1.5, plane: 2 });
    expect({ vessels, measured }).toEqual({ vessels: 1, measured: 'blank' });
  });

  test('any other vessel: its own count within two', () => {
    expect(requestFor(keg, {}).count).toEqual({ min: 14, max: 18 });
    expect(requestFor(vesselOf(wideTub), {}).count).toEqual({ min: 22, max: 26 });
    const many = vesselOf(wineCask.replace('28', '34'));
    expect(requestFor(many, {}).count).toEqual({ min: 32, max: 36 });
  });

  test('a bung stave 1.8 times as wide as the hole: 90 mm for 50; none without a bung', () => {
    const bunged = vesselOf(`${wineCask}bung: { diameter: 50 }\n`);
    expect(requestFor(bunged, {}).bung).toBe(90);
    expect(requestFor(vesselOf(`${wineCask}bung: none\n`), {}).bung).toBeNull();
    expect(requestFor(bunged, { bung: null }).bung).toBeNull();
    expect(requestFor(bunged, { bung: 84 }).bung).toBe(84);
  });

  test('inches: sixteenths', () => {
    expect(requestFor(keg, {})).toMatchObject({ tolerance: 25.4 / 16, plane: 25.4 / 16 });
    expect(requestFor(keg, {}).diameter).toBeCloseTo(254, 9);
  });
});

test('a stave reaches from end to end of the pattern, trim included', () => {
  // design value of this cask: the inner face is 960.1 long between end cuts; trim of 10 at both ends
  expect(requestFor(cask, {}).length).toBeCloseTo(960.1 + 20, 0);
});

test('a wider stave needs a thicker blank: 29.0 for one of 28 equal ones', () => {
  const { thicknessFor } = requestFor(cask, {});
  // T = R_b (1 - cos alpha) + t cos alpha where the wall stands upright
  const blank = (width: number): number => {
    const alpha = Math.atan(width / 678);
    return 339 * (1 - Math.cos(alpha)) + 27 * Math.cos(alpha);
  };
  for (const width of [60, 76.1, 100]) expect(thicknessFor!(width)).toBeCloseTo(blank(width), 6);
});

test('a backed width is a chord: its flat face is wider, its angle the same', () => {
  expect(flatWidth(76, 678, 'blank')).toBe(76);
  const flat = flatWidth(76, 678, 'backed');
  expect(Math.atan(flat / 678)).toBeCloseTo(Math.asin(76 / 678), 12);
  expect(halfAngle(flat, 678, 'blank')).toBeCloseTo(halfAngle(76, 678, 'backed'), 12);
});

describe('joints of head boards', () => {
  test('two boards meet on the axis: under the bung and opposite it', () => {
    const two = vesselOf(`${wineCask}heads: { boards: 2 }\n`);
    expect([...headJoints(two)].sort((a, b) => a - b)).toEqual([0, Math.PI]);
  });

  test('one board has none; two heads alike are counted once, unlike heads both', () => {
    expect(headJoints(vesselOf(`${wineCask}heads: { boards: 1 }\n`))).toEqual([]);
    expect(headJoints(vesselOf(`${wineCask}heads: { boards: 6 }\n`))).toHaveLength(10);
    const unlike = `${wineCask}heads: { top: { boards: 5 }, bottom: { boards: 7 } }\n`;
    expect(headJoints(vesselOf(unlike))).toHaveLength(8 + 12);
  });

  test('they lie mirrored about the axis through the bung', () => {
    const joints = headJoints(vesselOf(`${wineCask}heads: { boards: 5 }\n`));
    for (const joint of joints) {
      const mirrored = 2 * Math.PI - joint;
      expect(joints.some((other) => Math.abs(other - mirrored) < 1e-9)).toBe(true);
    }
  });
});
