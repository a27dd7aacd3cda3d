/** How finely a rack was measured, and what that leaves uncertain. */

import { MM_PER_INCH } from './length.js';

/** Steps that rules and callipers are read to, coarsest first, in mm. */
const STEPS = [
  MM_PER_INCH / 8,
  MM_PER_INCH / 16,
  1,
  MM_PER_INCH / 32,
  0.5,
  MM_PER_INCH / 64,
  MM_PER_INCH / 100,
  0.25,
  0.2,
  0.1,
  0.05,
  MM_PER_INCH / 1000,
];
const FINEST = 0.01;
/** Readings this far off a step, in mm, are still on it: they have been through floating point. */
const ON_STEP = 1e-6;

/** The coarsest of the usual steps on which every reading lies, in mm; 0 without readings. */
export function measuringStep(readings: readonly number[]): number {
  if (readings.length === 0) return 0;
  return STEPS.find((step) => readings.every((reading) => liesOn(reading, step))) ?? FINEST;
}

function liesOn(reading: number, step: number): boolean {
  return Math.abs(reading - Math.round(reading / step) * step) < ON_STEP;
}

/**
 * Standard deviation of the closing diameter, in mm, that comes from reading `count` widths to a `step`: a
 * rounding error is spread evenly over one step, so its variance is step^2/12 (ISO/IEC Guide 98-3:2008, 4.3.7);
 * `count` of them add, and the diameter changes by 1/pi of the girth.
 */
export function closingDeviation(step: number, count: number): number {
  return ((step / Math.sqrt(12)) * Math.sqrt(count)) / Math.PI;
}
