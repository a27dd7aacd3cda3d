/** Words, and numbers as the language writes them. */
import { lengthText } from '../../index.js';
import { units } from '../state/store.js';
import { language } from './language.js';

export { drawingWords, firstLanguage, language, speak, words } from './language.js';

/** Decimal comma where the language has one. */
export function numberText(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  const plain = Number(text) === 0 ? (0).toFixed(decimals) : text;
  return language.value === 'en' ? plain : plain.replace('.', ',');
}

/** A length in the units of the spec, with its unit; inches with the nearest 32nd. */
export const lengthWords = (mm: number, decimals = 1): string =>
  `${lengthFigures(mm, decimals)} ${units.value}`;

/** The same without its unit, for a table whose heading has it. */
export function lengthFigures(mm: number, decimals = 1): string {
  const text = lengthText(mm, units.value, decimals);
  return language.value === 'en' ? text : text.replaceAll('.', ',');
}
