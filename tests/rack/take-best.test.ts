/** A list is worked off from its best. */
import { expect, it } from 'vitest';
import { takeBest } from '../../src/rack/take-best.js';

const isLonger = (a: string, b: string): boolean => a.length > b.length;

it('takes the best each time, of equals the first, until there is none', () => {
  const words = ['croze', 'stave', 'howel', 'listing', 'hoop'];
  const taken = Array.from({ length: 6 }, () => takeBest(words, isLonger));
  expect(taken).toEqual(['listing', 'croze', 'stave', 'howel', 'hoop', undefined]);
  expect(words).toEqual([]);
});
