/** The one way numbers get into files: rounded, plain decimals, no exponent, no trailing zeros, no minus zero. */
import type { Point } from '../geometry/curve.js';
import { coordinateStep } from '../geometry/tolerance.js';

const stepsPerMillimetre = Math.round(1 / coordinateStep);

/**
 * On a chord of 1 km this rounds an arc's rise by 2.5e-5 mm. More decimals would show what one machine's sines and square
 * roots differ in from another's, and the same input is to give the same bytes.
 */
const bulgeDecimals = 10;

/** A larger number in a drawing is a bug; and above 2^53 / 10^4 its last decimal would not be true. */
const largest = 1e9;

/** A coordinate or length, to 0.0001 mm. Throws for NaN, the infinities and absurd sizes: no file may hold them. */
export function formatNumber(value: number): string {
  const steps = Math.round(checked(value) * stepsPerMillimetre);
  const size = Math.abs(steps);
  const part = size % stepsPerMillimetre;
  const whole = (size - part) / stepsPerMillimetre;
  // put together from a whole number and its decimals, both known or quickly written, unlike a fraction
  const text = part === 0 ? String(whole) : whole + (decimalsOf[part] ??= decimals(part));
  return steps < 0 ? `-${text}` : text;
}

/** What stands behind the whole number, with its point, for each count of steps that has been asked for. */
const decimalsOf: (string | undefined)[] = Array.from({ length: stepsPerMillimetre });

function decimals(part: number): string {
  return String(part / stepsPerMillimetre).slice(1);
}

/** `x y`, as SVG and PDF have them. */
export function formatPoint({ x, y }: Point): string {
  return `${formatNumber(x)} ${formatNumber(y)}`;
}

/** The bulge of an arc, to 10 decimals. Throws as `formatNumber` does. */
export function formatBulge(value: number): string {
  return value === 0 ? '0' : plain(value, bulgeDecimals);
}

function plain(value: number, decimals: number): string {
  const text = checked(value)
    .toFixed(decimals)
    .replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

function checked(value: number): number {
  if (!(Math.abs(value) <= largest)) throw new RangeError(`not a number to write: ${value}`);
  return value;
}
