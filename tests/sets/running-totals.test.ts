import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decimalsOf, runningTotals } from '../../src/sets/running-totals.js';
import { setOf } from './sets.js';

test('the total grows by each width less what is planed off it', () => {
  const set = setOf([90, 70, 80.5], { planeOff: [0, 1.5, 0.25] });
  expect(runningTotals(set)).toEqual([90, 158.5, 238.75]);
});

test('the last total is what the staves measure laid side by side', () => {
  const widths = fc.array(fc.integer({ min: 500, max: 1000 }), { minLength: 3, maxLength: 30 });
  fc.assert(
    fc.property(widths, (tenths) => {
      const set = setOf(tenths.map((each) => each / 10));
      const sum = tenths.reduce((total, each) => total + each, 0) / 10;
      expect(runningTotals(set).at(-1)).toBeCloseTo(sum, 8);
    }),
  );
});

test.each([
  [[90, 70.5, 80.1], [0, 0, 0.2], 1],
  [[90, 70.55, 80.1], [0, 0, 0], 2],
  [[90, 70.5, 80.1], [0, 0.05, 0], 2],
] as const)('%j, planed %j, shows with %i decimals', (widths, planeOff, decimals) => {
  expect(decimalsOf(setOf(widths, { planeOff }))).toBe(decimals);
});
