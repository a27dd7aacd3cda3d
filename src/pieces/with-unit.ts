/** A length with its unit, for sentences. */
import { lengthText } from '../drawing/length-text.js';
import type { Units } from '../spec/spec.js';
import type { Words } from './words/index.js';

export function withUnit(mm: number, units: Units, words: Words, decimals = 1): string {
  return `${lengthText(mm, units, decimals)} ${words.unitNames[units]}`;
}
