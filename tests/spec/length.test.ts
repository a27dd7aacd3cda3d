import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  degreesOf,
  inchFraction,
  inchesOf,
  millimetresOf,
  radiansOf,
  roundedDownTo,
  roundedTo,
  writtenLength,
} from '../../src/spec/length.js';

describe('a length in inches', () => {
  it.each([
    ['37 3/8', 37.375],
    ['37-3/8', 37.375],
    ['3/8', 0.375],
    ['11/8', 1.375],
    ['-1/32', -0.03125],
    ['-1 1/4', -1.25],
    ['37.375', 37.375],
    ['37', 37],
    [' 1/2 ', 0.5],
    [0, 0],
    [37.2, 37.2],
  ])('may be written %j', (raw, inches) => {
    expect(inchesOf(raw)).toBe(inches);
  });

  it.each([
    '',
    '1/0',
    '37 9/8',
    '3//8',
    '3/8/2',
    '37 3/8"',
    '1e3',
    'x',
    '- 3/8',
    '37  3/8',
    '.5',
    '5.',
  ])('is not %j', (raw) => expect(inchesOf(raw)).toBeNull());

  it('is no truth value, list or nothing', () => {
    for (const raw of [true, null, undefined, [], {}]) expect(inchesOf(raw)).toBeNull();
  });

  it('is 25.4 mm', () => {
    expect(millimetresOf('1', 'in')).toBe(25.4);
    expect(millimetresOf('37 3/8', 'in')).toBe(949.325);
  });
});

describe('a length in millimetres', () => {
  it('is a number and nothing else', () => {
    expect(millimetresOf(945.5, 'mm')).toBe(945.5);
    expect(millimetresOf('945', 'mm')).toBeNull();
  });
});

describe('writing a length', () => {
  it('uses fractions of an inch down to 64ths, and decimals for what is none', () => {
    expect(writtenLength(949.325, 'in')).toBe('37 3/8');
    expect(writtenLength(25.4, 'in')).toBe(1);
    expect(writtenLength(0, 'in')).toBe(0);
    expect(writtenLength(-25.4 / 32, 'in')).toBe('-1/32');
    expect(writtenLength(2.54, 'in')).toBe(0.1);
  });

  it('loses nothing on the way through a file', () => {
    const lengths = fc.oneof(
      fc.double({ min: -50, max: 240, noNaN: true }),
      fc.integer({ min: -3200, max: 15000 }).map((n) => n / 64),
    );
    fc.assert(
      fc.property(lengths, (inches) => {
        const mm = millimetresOf(inches, 'in')!;
        expect(millimetresOf(writtenLength(mm, 'in'), 'in')).toBe(mm + 0);
      }),
      { seed: 11, numRuns: 3000 },
    );
  });
});

describe('the nearest fraction', () => {
  it('is in lowest terms and rounds up into the next inch', () => {
    expect(inchFraction(37.2, 32)).toEqual({ text: '37 3/16', value: 37.1875 });
    expect(inchFraction(0.99, 32)).toEqual({ text: '1', value: 1 });
    expect(inchFraction(0.001, 32)).toEqual({ text: '0', value: 0 });
    expect(inchFraction(-0.001, 32).value).toBeCloseTo(0);
  });
});

describe('degrees', () => {
  it('survive the way to radians and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90_000_000 }), (n) => {
        const degrees = n / 1e6;
        expect(radiansOf(degreesOf(radiansOf(degrees)))).toBe(radiansOf(degrees));
        expect(degreesOf(radiansOf(degrees))).toBeCloseTo(degrees, 9);
      }),
      { seed: 12, numRuns: 2000 },
    );
  });
});

describe('rounding to a step', () => {
  it('never rounds a length away', () => {
    expect(roundedTo(0.01, 0.5)).toBe(0.5);
    expect(roundedDownTo(0.01, 0.5)).toBe(0.5);
  });
  it('takes the nearest, or the next below', () => {
    expect(roundedTo(5.3, 0.5)).toBe(5.5);
    expect(roundedTo(2.75, 0.5)).toBe(3);
    expect(roundedDownTo(5.9, 0.5)).toBe(5.5);
    expect(roundedDownTo(5.5, 0.1)).toBe(5.5);
  });
});
