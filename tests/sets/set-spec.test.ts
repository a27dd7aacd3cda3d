import { expect, test } from 'vitest';
import { planVessel } from '../../src/plan.js';
import { decimalsOf, runningTotals } from '../../src/sets/running-totals.js';
import { specOfSet } from '../../src/sets/set-spec.js';
import { writeSpec } from '../../src/spec/write.js';
import { vesselOf, wineCask } from '../pieces/vessels.js';
import { caskWidths, closing, setOf } from './sets.js';

const { spec } = vesselOf(wineCask);

test('the set as a spec closes where the set does, planing taken off', () => {
  const planeOff = caskWidths.map((_, i) => (i === 3 ? 1.4 : 0));
  const set = setOf(caskWidths, { planeOff });
  const own = specOfSet(spec, set, 'blank', 'Invented cask, set 1');
  expect(own.staves.widths![3]).toBeCloseTo(caskWidths[3]! - 1.4, 9);
  expect(own.staves.count).toBe(28);
  const { vessel, messages } = planVessel(writeSpec(own), 'set-1/spec.yaml');
  expect(messages.filter(({ severity }) => severity === 'error')).toEqual([]);
  expect(vessel!.ring.closesAt).toBeCloseTo(closing(own.staves.widths!), 6);
  expect(vessel!.spec.title).toBe('Invented cask, set 1');
  const turned = vessel!.staves.reduce((sum, { alpha }) => sum + 2 * alpha, 0);
  expect(turned).toBeCloseTo(2 * Math.PI, 10);
});

test('backed widths are turned into widths of the flat face, at the diameter of the set', () => {
  // chords of a circle: asin(w / D) sums to pi
  const widths = new Array<number>(28).fill(678 * Math.sin(Math.PI / 28));
  const set = { ...setOf(widths), closesAt: 678 };
  const own = specOfSet(spec, set, 'backed', 'x');
  expect(closing(own.staves.widths!)).toBeCloseTo(678, 3);
});

test('the running total ends at the laid width', () => {
  const set = setOf(caskWidths, { planeOff: caskWidths.map((_, i) => (i < 2 ? 0.5 : 0)) });
  const totals = runningTotals(set);
  expect(totals[0]).toBeCloseTo(95.5, 9);
  expect(totals[1]).toBeCloseTo(173, 9);
  expect(totals.at(-1)).toBeCloseTo(set.laidWidth, 9);
});

test('widths show as many decimals as they have', () => {
  expect(decimalsOf(setOf([70, 70.5, 71]))).toBe(1);
  expect(decimalsOf(setOf([70, 70.25, 71]))).toBe(2);
  expect(decimalsOf(setOf([70, 70, 71], { planeOff: [0.13, 0, 0] }))).toBe(2);
});
