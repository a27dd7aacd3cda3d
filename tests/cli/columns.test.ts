import { expect, test } from 'vitest';
import { columns, pairs } from '../../src/cli/columns.js';

test('words to the left, numbers to the right', () => {
  const rows = [
    ['a', '1'],
    ['long', '22.5'],
  ];
  expect(columns(rows, { left: 1, indent: '' })).toBe('a         1\nlong   22.5\n');
  expect(columns(rows, { indent: '' })).toBe('   a      1\nlong   22.5\n');
});

test('no rows are no text', () => {
  expect(columns([])).toBe('');
  expect(pairs([])).toBe('');
});

test('a character outside the basic plane takes one place', () => {
  expect(columns([['𝄞'], ['ab']], { left: 1, indent: '' })).toBe('𝄞\nab\n');
  expect(
    pairs([
      ['𝄞', '1'],
      ['ab', '2'],
    ]),
  ).toBe('  𝄞    1\n  ab   2\n');
});
