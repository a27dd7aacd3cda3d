import { describe, expect, it } from 'vitest';
import { nextMark } from '../../../src/page/rack/marks.js';

describe('the next mark', () => {
  it.each([
    ['', '1'],
    ['6', '7'],
    ['B07', 'B08'],
    ['B99', 'B100'],
    ['A', 'A2'],
    ['stave 9', 'stave 10'],
    ['Ä', 'Ä2'],
  ])('after “%s” is “%s”', (last, next) => {
    expect(nextMark(last, new Set())).toBe(next);
  });

  it('passes over marks that are taken', () => {
    expect(nextMark('6', new Set(['7', '8', '10']))).toBe('9');
  });
});
