/** Lengths and angles as a spec file writes them. Millimetres and radians inside; nothing else knows inches or degrees. */
import type { Units } from './spec.js';

export const millimetresPerInch = 25.4;

/** `37 3/8`, `37-3/8`, `3/8`, `37.375`, `37`; each may carry a sign. */
export const inchPattern =
  /^([+-]?)(?:(\d{1,6})[ -])?(\d{1,6})\/(\d{1,4})$|^[+-]?\d{1,6}(?:\.\d{1,12})?$/;

/**
 * Lengths from inches are kept to a millionth of a micrometre (1e-9 mm). What is written out in inches to twelve decimals
 * then reads back as the same number.
 */
const nano = 1e9;
const settle = (value: number): number => Math.round(value * nano) / nano;

/** Inches, as a number or as text such as `37 3/8`; null when it is neither. */
export function inchesOf(raw: unknown): number | null {
  if (typeof raw === 'number') return raw;
  if (typeof raw !== 'string') return null;
  const match = inchPattern.exec(raw.trim());
  if (!match) return null;
  const [, sign, whole, numerator, denominator] = match;
  if (denominator === undefined) return Number(raw);
  const fraction = Number(numerator) / Number(denominator);
  // `37 9/8` is more likely a slip than a length
  if (!Number.isFinite(fraction) || (whole !== undefined && fraction >= 1)) return null;
  return (sign === '-' ? -1 : 1) * (Number(whole ?? 0) + fraction);
}

/** Millimetres; null when `raw` isn't a length in these units. */
export function millimetresOf(raw: unknown, units: Units): number | null {
  // adding nought makes +0 of -0, which no file can tell apart
  if (units === 'mm') return typeof raw === 'number' ? raw + 0 : null;
  const inches = inchesOf(raw);
  return inches === null ? null : settle(inches * millimetresPerInch) + 0;
}

/** The length as the file would write it: a number, or a fraction when it is a whole number of 64ths of an inch. */
export function writtenLength(mm: number, units: Units): number | string {
  if (units === 'mm') return mm;
  const inches = mm / millimetresPerInch;
  const fraction = inchFraction(inches, 64);
  const exact = settle(fraction.value * millimetresPerInch) === mm;
  if (exact) return fraction.value % 1 === 0 ? fraction.value : fraction.text;
  return Number(inches.toFixed(12));
}

/** The nearest fraction with that denominator, in lowest terms: `{ text: '37 3/8', value: 37.375 }`. */
export function inchFraction(inches: number, denominator: number): { text: string; value: number } {
  const parts = Math.round(Math.abs(inches) * denominator);
  const sign = inches < 0 && parts > 0 ? '-' : '';
  const whole = Math.floor(parts / denominator);
  let [top, bottom] = [parts % denominator, denominator];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const text = [whole > 0 || top === 0 ? String(whole) : '', top > 0 ? `${top}/${bottom}` : ''];
  return {
    text: sign + text.filter((part) => part !== '').join(' '),
    value: ((sign ? -1 : 1) * parts) / denominator,
  };
}

/** Degrees are settled the same way, so that they survive the way to radians and back. */
export const radiansOf = (degrees: number): number => (settle(degrees) * Math.PI) / 180;
export const degreesOf = (radians: number): number => settle((radians * 180) / Math.PI);

/** `mm` rounded to the nearest multiple of a step of those units, and never to nothing. */
export function roundedTo(mm: number, step: number): number {
  return settle(Math.max(1, Math.round(mm / step + 1e-9)) * step);
}

export function roundedDownTo(mm: number, step: number): number {
  return settle(Math.max(1, Math.floor(mm / step + 1e-9)) * step);
}
