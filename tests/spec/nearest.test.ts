import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/spec/nearest.js';

const keys = [
  'vessel',
  'title',
  'units',
  'height',
  'bilge',
  'ends',
  'profile',
  'staves',
  'endThickness',
];

describe('the nearest known word', () => {
  it('is none when nothing is near, and none of no words', () => {
    expect(nearest('zzzzzz', keys)).toBeNull();
    expect(nearest('', keys)).toBeNull();
    expect(nearest('height', [])).toBeNull();
  });

  it.each([
    ['hieght', 'height'],
    ['vesel', 'vessel'],
    ['Height', 'height'],
    ['end_thickness', 'endThickness'],
    ['end-thicknes', 'endThickness'],
    ['stave', 'staves'],
    ['bilgeDiameter', 'bilge'],
    ['unit', 'units'],
  ])('to %s is %s', (typed, meant) => {
    expect(nearest(typed, keys)).toBe(meant);
  });

  it('is found for words of any length in little time', () => {
    expect(nearest('x'.repeat(100_000), keys)).toBeNull();
  });
});
