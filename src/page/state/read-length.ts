/** Reads a length as people write it: `37 3/8`, `37.375`, `949,5`, `95 cm`, `3/8 in`. Knows nothing of the page. */
import { millimetresOf, writtenLength } from '../../index.js';

export type Units = 'mm' | 'in';

/** Why a text is no length; each has a sentence of its own among the page's words. */
export type LengthProblem = 'empty' | 'not-a-length' | 'two-readings' | 'odd-fraction';

export type LengthRead =
  /** `written` is how a file in those units says it */
  { readonly mm: number; readonly written: number | string } | { readonly problem: LengthProblem };

const unitNames: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  inch: 25.4,
  inches: 25.4,
  zoll: 25.4,
  po: 25.4,
  pouce: 25.4,
  pouces: 25.4,
  '"': 25.4,
};

const fractions: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** `units` is what a bare number means. A fraction is inches in any case: nobody halves a millimetre into eighths. */
export function readLength(text: string, units: Units): LengthRead {
  const plain = plainText(text);
  if (plain === '') return { problem: 'empty' };
  const [, number, unit] = /^(.*?)\s*([a-z]+|")?$/i.exec(plain) ?? [];
  const factor = unit === undefined ? undefined : unitNames[unit.toLowerCase()];
  if (number === undefined || number === '' || (unit !== undefined && factor === undefined))
    return { problem: 'not-a-length' };
  if (number.includes('/')) return readFraction(number, factor ?? 25.4, units);
  const decimal = readDecimal(number, factor === 25.4 || (!factor && units === 'in'));
  if (typeof decimal === 'string') return { problem: decimal };
  return inUnits(decimal, factor ?? (units === 'in' ? 25.4 : 1), units);
}

/** Blanks, signs and fractions that keyboards and spreadsheets put in place of the plain ones. */
function plainText(text: string): string {
  return text
    .trim()
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\u2044/g, '/')
    .replace(/″|”|''|′′/g, '"')
    .replace(/\s*([¼½¾⅛⅜⅝⅞])/g, (_, sign: string) => ` ${fractions[sign] ?? ''}`)
    .replace(/\s+/g, ' ')
    .trim();
}

function readFraction(number: string, factor: number, units: Units): LengthRead {
  const inches = factor === 25.4 ? millimetresOf(number.replace(/^\+/, ''), 'in') : null;
  if (inches === null) return { problem: 'odd-fraction' };
  if (units === 'in')
    return {
      mm: inches,
      written: number.replace(/^\+|(?<=\d)-(?=\d)/g, (s) => (s === '+' ? '' : ' ')),
    };
  return { mm: inches, written: writtenLength(inches, units) };
}

function inUnits(value: number, factor: number, units: Units): LengthRead {
  const own = units === 'in' ? 25.4 : 1;
  const written = factor === own ? value : writtenLength(rounded(value * factor), units);
  const mm = millimetresOf(written, units);
  return mm === null ? { problem: 'not-a-length' } : { mm, written };
}

const rounded = (mm: number): number => Math.round(mm * 1e9) / 1e9;

/**
 * A number with a decimal point or comma, and thousands set apart by the other sign or by blanks. `1,250` is 1.25 to one
 * reader and 1250 to another: it is not guessed at, except in inches, where nobody means thousands.
 */
export function readDecimal(text: string, smallOnly = false): number | LengthProblem {
  const number = text.replace(/(?<=\d)[ '’](?=\d{3}(\D|$))/g, '');
  const grouped =
    /^[+-]?\d{1,3}(\.\d{3})+,\d+$/.exec(number)?.[0].replaceAll('.', '') ??
    /^[+-]?\d{1,3}(,\d{3})+\.\d+$/.exec(number)?.[0].replaceAll(',', '') ??
    number;
  if (!smallOnly && /^[+-]?[1-9]\d{0,2},\d{3}$/.test(grouped)) return 'two-readings';
  if (!/^[+-]?(\d{1,9}([.,]\d{0,12})?|[.,]\d{1,12})$/.test(grouped)) return 'not-a-length';
  return Number(grouped.replace(',', '.'));
}
