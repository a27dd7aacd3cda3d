/** From what is typed into a box to what stands in the file. */
import { describe, expect, it } from 'vitest';
import {
  bilge,
  keyOf,
  nameOf,
  staveCount,
  staveWidths,
  title,
  hoopOffset,
} from '../../../src/page/state/fields.js';
import { readField } from '../../../src/page/state/read-field.js';

describe('what is typed', () => {
  it('is read as the box wants it', () => {
    expect(readField(bilge, '695', 'mm')).toEqual({ value: 695 });
    expect(readField(staveCount, '28', 'mm')).toEqual({ value: 28 });
    expect(readField(title, ' My cask\n', 'mm')).toEqual({ value: 'My cask' });
    expect(readField(staveWidths, '62; 71,5, 80', 'mm')).toEqual({ value: [62, 71.5, 80] });
    expect(readField(staveWidths, '2 1/2, 3', 'in')).toEqual({ value: ['2 1/2', 3] });
  });

  it('is told apart from what cannot be', () => {
    expect(readField(bilge, 'wide', 'mm')).toEqual({ problem: 'not-a-length' });
    expect(readField(staveCount, 'many', 'mm')).toEqual({ problem: 'not-a-number' });
    expect(readField(staveWidths, '62; x', 'mm')).toEqual({ problem: 'not-a-length' });
    expect(readField(bilge, ' ', 'mm')).toEqual({ problem: 'empty' });
  });
});

it('boxes are named as messages name their keys', () => {
  expect(keyOf(hoopOffset(1))).toBe('hoops[1].offset');
  expect(nameOf(hoopOffset(1))).toBe('hoops.offset');
  expect(keyOf(staveCount)).toBe('staves.count');
});
