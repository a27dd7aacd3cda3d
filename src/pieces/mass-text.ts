/** Masses as people read them, in the units of the spec. */
import type { Units } from '../spec/spec.js';

const kilogramsPerPound = 0.45359237;

export const massUnits: Readonly<Record<Units, string>> = { mm: 'kg', in: 'lb' };

/** `1.06`, in kilograms or, for inches, in pounds; no unit is written. */
export function massText(kilograms: number, units: Units): string {
  return (units === 'mm' ? kilograms : kilograms / kilogramsPerPound).toFixed(2);
}
