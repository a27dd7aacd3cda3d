import { describe, expect, it } from 'vitest';
import {
  angleText,
  fractionText,
  lengthText,
  per100Text,
  shortLengthText,
} from '../../src/drawing/length-text.js';

describe('lengths as people read them', () => {
  it('have one decimal in millimetres and never a minus before zero', () => {
    expect(lengthText(64.449, 'mm')).toBe('64.4');
    expect(lengthText(-0.01, 'mm')).toBe('0.0');
  });

  it('have decimals and the nearest 32nd in inches', () => {
    expect(lengthText(25.4 * 37.375, 'in')).toBe('37.375 (37 3/8)');
    expect(lengthText(25.4 * 2.535, 'in')).toBe('2.535 (2 17/32)');
    expect(shortLengthText(25.4 * 2.535, 'in')).toBe('2.535');
  });

  it('leave out a fraction that would read as nothing', () => {
    expect(lengthText(0.18, 'in')).toBe('0.007');
  });
});

describe('fractions of an inch', () => {
  it.each([
    [0, '0'],
    [2, '2'],
    [0.5, '1/2'],
    [1.25, '1 1/4'],
    [0.96875, '31/32'],
    [0.99, '1'],
    [-0.3125, '-5/16'],
    [-0.001, '0'],
  ])('%f is %s', (inches, text) => expect(fractionText(inches)).toBe(text));
});

describe('angles', () => {
  it('are in degrees, or as run-out per 100', () => {
    expect(angleText(Math.PI / 28)).toBe('6.43°');
    expect(angleText(Math.PI / 4, 0)).toBe('45°');
    expect(per100Text(Math.PI / 4)).toBe('100.00');
  });
});
