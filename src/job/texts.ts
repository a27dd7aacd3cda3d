/** Lengths, masses and litres of the job sheet as people read them, in the units of the spec. */
import { angleText, lengthText, shortLengthText } from '../drawing/length-text.js';
import type { Units } from '../spec/spec.js';

const litresPerGallon = 3.785411784;
const kilogramsPerPound = 0.45359237;

export interface Texts {
  /** for sentences and tables, without a unit */
  length(mm: number): string;
  /** to compare a measure with: in inches with the fraction of a ruler */
  measure(mm: number): string;
  /** a size that may be rounded up to whole mm or eighths of an inch */
  atLeast(mm: number): string;
  angle(radians: number): string;
  litres(litres: number): string;
  mass(kilograms: number): string;
  /** a hoop by the name that the spec gives it */
  hoop(name: string): string;
  readonly unit: Units;
}

export function textsIn(unit: Units, hoop: Texts['hoop']): Texts {
  const step = unit === 'mm' ? 1 : 25.4 / 8;
  return {
    unit,
    hoop,
    length: (mm) => shortLengthText(mm, unit),
    measure: (mm) => lengthText(mm, unit),
    atLeast: (mm) => shortLengthText(Math.ceil(mm / step - 1e-9) * step, unit, 0),
    angle: (radians) => angleText(radians, 2),
    litres: (litres) =>
      unit === 'mm'
        ? `${litres.toFixed(1)} l`
        : `${litres.toFixed(2)} l (${(litres / litresPerGallon).toFixed(2)} gal)`,
    mass: (kilograms) =>
      unit === 'mm'
        ? `${kilograms.toFixed(kilograms < 20 ? 1 : 0)} kg`
        : `${(kilograms / kilogramsPerPound).toFixed(1)} lb`,
  };
}
