/** How figures are written in the units of a spec. */
import type { CliWords } from './words.js';
import { angleText, lengthText, per100Text, shortLengthText, type Spec } from '../index.js';

export interface FigureFormat {
  readonly words: CliWords;
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
  readonly number: (value: number, decimals: number) => string;
}

const litresPerGallon = 3.785411784;
const kilogramsPerPound = 0.45359237;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

export function figureFormat(units: Spec['units'], words: CliWords): FigureFormat {
  const { typeset: set, format } = words;
  const inches = units === 'in';
  const degrees = (value: number): string => set(angleText(radians(value)));
  const per100 = (value: number): string => set(per100Text(radians(value)));
  const number = (value: number, decimals: number): string => set(value.toFixed(decimals));
  return {
    words,
    note: format.note[units],
    length: (mm) =>
      set(inches ? lengthText(mm, units).replace(' (', ' in (') : `${lengthText(mm, units)} mm`),
    cell: (mm) => set(inches ? lengthText(mm, units) : shortLengthText(mm, units)),
    gap: (mm) => `${set(shortLengthText(mm, units, 2))} ${units}`,
    bevel: (value) => `${degrees(value)} (${format.per100(per100(value))})`,
    degrees,
    per100,
    litres: (litres, decimals) =>
      inches
        ? format.gallons(number(litres / litresPerGallon, decimals + 1), number(litres, decimals))
        : format.litres(number(litres, decimals)),
    mass: (kg) => (inches ? `${number(kg / kilogramsPerPound, 2)} lb` : `${number(kg, 2)} kg`),
    number,
  };
}
