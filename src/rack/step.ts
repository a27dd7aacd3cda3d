/** How finely a rack was measured, and what that leaves uncertain. */

import { MM_PER_INCH } from './length.js';

/** Steps that rules and callipers are read to, coarsest first, in mm; all but the fewest readings tell which of them it was. */
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
/**
 * Coarser than a rule's own marks: whole millimetres read to every fifth or second. Such a reading of 1 mm comes about by chance once in
 * five times or every other time, and staves of few sizes were planed to them, not read so; therefore so many different
 * readings are wanted that chance alone makes them fewer than once in a thousand times (5^5 and 2^10 are over 1,000).
 */
const SKIPPING = [
  { step: 5, different: 5 },
  { step: 2, different: 10 },
];
const FINEST = 0.01;
/** Readings this far off a step, in mm, are still on it: they have been through floating point. */
const ON_STEP = 1e-6;

/** The coarsest of the usual steps on which every reading lies, in mm; every second or fifth millimetre only if that is no chance. 0 without readings. */
export function measuringStep(readings: readonly number[]): number {
  if (readings.length === 0) return 0;
  const lieOn = (step: number): boolean => readings.every((reading) => liesOn(reading, step));
  const different = new Set(readings).size;
  const skipped = SKIPPING.find((each) => different >= each.different && lieOn(each.step));
  return skipped?.step ?? STEPS.find(lieOn) ?? FINEST;
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
