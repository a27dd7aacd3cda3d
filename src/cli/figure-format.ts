/** How figures are written in the units of a spec. */
import { angleText, lengthText, per100Text, shortLengthText, type Spec } from '../index.js';

export interface FigureFormat {
  /** the sentence that tells the units */
  readonly note: string;
  /** `64.4 mm`, or `2.535 in (2 17/32)` */
  readonly length: (mm: number) => string;
  /** the same for tables, which name the unit in their heading */
  readonly cell: (mm: number) => string;
  /** small gaps: one decimal more */
  readonly gap: (mm: number) => string;
  /** `6.43° (11.27 mm per 100 mm)` */
  readonly bevel: (degrees: number) => string;
  readonly degrees: (degrees: number) => string;
  readonly per100: (degrees: number) => string;
  readonly litres: (litres: number, decimals: number) => string;
  readonly mass: (kg: number) => string;
}

const litresPerGallon = 3.785411784;
const kilogramsPerPound = 0.45359237;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

export function figureFormat(units: Spec['units']): FigureFormat {
  const inches = units === 'in';
  const degrees = (value: number): string => angleText(radians(value));
  const per100 = (value: number): string => per100Text(radians(value));
  return {
    note: inches ? 'lengths in inches, with the nearest 1/32 in brackets' : 'lengths in mm',
    length: (mm) =>
      inches ? lengthText(mm, units).replace(' (', ' in (') : `${lengthText(mm, units)} mm`,
    cell: (mm) => (inches ? lengthText(mm, units) : shortLengthText(mm, units)),
    gap: (mm) => `${shortLengthText(mm, units, 2)} ${units}`,
    bevel: (value) => `${degrees(value)} (${per100(value)} mm per 100 mm)`,
    degrees,
    per100,
    litres: (litres, decimals) =>
      inches
        ? `${(litres / litresPerGallon).toFixed(decimals + 1)} US gallons (${litres.toFixed(decimals)} litres)`
        : `${litres.toFixed(decimals)} litres`,
    mass: (kg) => (inches ? `${(kg / kilogramsPerPound).toFixed(2)} lb` : `${kg.toFixed(2)} kg`),
  };
}
