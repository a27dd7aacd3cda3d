/** The gate itself: what it lets through and what not. */
import { describe, expect, test } from 'vitest';
import type { Entry } from './entry.js';
import { compare, tableOf } from './gate.js';

const entry: Entry = {
  id: 'ten litres',
  citation: 'Invented for this test',
  obtained: 'derived',
  relation: 'equals',
  value: 10,
  unit: 'litres',
  tolerance: { relative: 0.001 },
  because: 'one in a thousand',
  measure: 'tubLitres',
  inputs: {},
};
const passes = (change: Partial<Entry>, ours: number): boolean =>
  compare({ ...entry, ...change }, ours).passed;

describe('the gate of published values', () => {
  test('agreement within a tolerance, not beyond it', () => {
    expect(passes({}, 10.009)).toBe(true);
    expect(passes({}, 9.991)).toBe(true);
    expect(passes({}, 10.011)).toBe(false);
    expect(passes({ tolerance: { absolute: 0.02 } }, 10.011)).toBe(true);
    expect(passes({ tolerance: { absolute: 0.01 } }, 10.011)).toBe(false);
  });

  test('a range', () => {
    const range = { relation: 'between', value: [9, 11], tolerance: { absolute: 0 } } as const;
    expect(passes({ ...range, value: [9, 11] }, 10.9)).toBe(true);
    expect(passes({ ...range, value: [9, 11] }, 11.1)).toBe(false);
    expect(passes({ ...range, value: [9, 11] }, 8.9)).toBe(false);
  });

  test('a known wrong value', () => {
    expect(passes({ relation: 'differs' }, 10.5)).toBe(true);
    expect(passes({ relation: 'differs' }, 10.001)).toBe(false);
  });

  test('no number passes as nothing at all', () => {
    for (const relation of ['equals', 'between', 'differs'] as const) {
      expect(passes({ relation }, NaN)).toBe(false);
      expect(passes({ relation }, Infinity)).toBe(false);
    }
  });

  test('the table marks what fails', () => {
    const table = tableOf([compare(entry, 10), compare({ ...entry, id: 'other' }, 12)]);
    expect(table).toMatch(/FAILS\s+other/);
    expect(table.match(/FAILS/g)).toHaveLength(1);
  });
});
