/** Lengths and angles as people read them, in the units of the spec. */

export type LengthUnits = 'mm' | 'in';

const millimetresPerInch = 25.4;

/** `64.4` in mm; in inches decimals and the nearest 32nd: `2.535 (2 17/32)`. No unit is written. */
export function lengthText(mm: number, units: LengthUnits, decimals = 1): string {
  if (units === 'mm') return trimmed(mm, decimals);
  const inches = mm / millimetresPerInch;
  const fraction = fractionText(inches);
  // too small for a 32nd: the decimals say more
  return fraction === '0' ? trimmed(inches, 3) : `${trimmed(inches, 3)} (${fraction})`;
}

/** The same without the fraction, for tables and tight places. */
export function shortLengthText(mm: number, units: LengthUnits, decimals = 1): string {
  return units === 'mm' ? trimmed(mm, decimals) : trimmed(mm / millimetresPerInch, 3);
}

/** Inches to the nearest 32nd: `37 3/8`, `-5/16`, `2`. */
export function fractionText(inches: number): string {
  const parts = Math.round(Math.abs(inches) * 32);
  const sign = inches < 0 && parts > 0 ? '-' : '';
  const whole = Math.floor(parts / 32);
  let [over, under] = [parts % 32, 32];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  if (over === 0) return `${sign}${whole}`;
  return `${sign}${whole > 0 ? `${whole} ` : ''}${over}/${under}`;
}

/** `12.9°`. */
export function angleText(radians: number, decimals = 2): string {
  return `${trimmed((radians * 180) / Math.PI, decimals)}°`;
}

/** A slope as it is set on a bevel without a protractor: millimetres of run-out per 100 mm. */
export function per100Text(radians: number): string {
  return trimmed(100 * Math.tan(radians), 2);
}

function trimmed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}
