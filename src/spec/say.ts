/** How numbers, keys and words are written in messages. */
import type { Typeset } from '../language.js';
import type { Issue, SpecPath } from './issue.js';
import { inchFraction, millimetresPerInch } from './length.js';
import type { Units } from './spec.js';

/** What the wording of a message may use. A value that isn't there is shown as `?`, never as an error of ours. */
export interface Say {
  readonly units: Units;
  /** `heads.croze.inset`, `hoops[1].offset` */
  readonly key: string;
  /** a value's own words */
  word(name: string): string;
  has(name: string): boolean;
  /** a value in mm, in the units of the file: `945 mm`, `37.375 in (37 3/8)` */
  length(name: string): string;
  /** a value in degrees */
  degrees(name: string): string;
  /** a value that is a plain number */
  number(name: string): string;
  /** from one length to another: `50 to 5000 mm` */
  range(least: string, most: string): string;
}

/** How a language writes numbers and what it finds. */
export interface Manner {
  /** sets a number that is written with a decimal point */
  readonly typeset: Typeset;
  range(least: string, most: string): string;
  degrees(number: string): string;
  /** before a fraction of an inch that is rounded */
  about(fraction: string): string;
  /** what a file holds, as `shown.ts` puts it in English; a user's own words stand in quotes */
  shown(english: string): string;
  /** for a code without a wording */
  unknown(code: string): string;
}

export function sayer(
  { values, path }: Pick<Issue, 'values' | 'path'>,
  units: Units,
  manner: Manner,
): Say {
  const value = (name: string): string | number | undefined =>
    Object.hasOwn(values, name) ? values[name] : undefined;
  const numeric = (name: string, write: (n: number) => string): string => {
    const n = value(name);
    return typeof n === 'number' ? write(n) : String(n ?? '?');
  };
  const word = (name: string): string => String(value(name) ?? '?');
  const number = (decimals: number) => (n: number) => manner.typeset(short(n, decimals));
  const bareLength = (name: string): string => numeric(name, (n) => manner.typeset(bare(n, units)));
  return {
    units,
    key: dotted(path),
    word: (name) => (name === 'found' ? manner.shown(word(name)) : word(name)),
    has: (name) => (value(name) ?? '') !== '',
    length: (name) => numeric(name, (n) => writeLength(n, units, manner)),
    degrees: (name) => numeric(name, (n) => manner.degrees(number(2)(n))),
    number: (name) => numeric(name, number(4)),
    range: (least, most) => `${manner.range(bareLength(least), bareLength(most))} ${units}`,
  };
}

/** A key may be as long as its file; sixty letters will do to know it by. */
export function dotted(path: SpecPath): string {
  return path
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${step.slice(0, 60)}`))
    .join('')
    .replace(/^\./, '');
}

/** Up to so many decimals, none of them noughts at the end; very large and very small numbers with a power of ten. */
function short(n: number, decimals: number): string {
  if (!Number.isFinite(n)) return String(n);
  const size = Math.abs(n);
  if (n !== 0 && (size >= 1e9 || size < 0.5 * 10 ** -decimals)) return n.toPrecision(3);
  return String(Number(n.toFixed(decimals)));
}

/** Thousandths of a millimetre, or ten-thousandths of an inch: more than any spec needs. */
const bare = (mm: number, units: Units): string =>
  units === 'mm' ? short(mm, 3) : short(mm / millimetresPerInch, 2);

function writeLength(mm: number, units: Units, { typeset, about }: Manner): string {
  if (units === 'mm') return `${typeset(short(mm, 3))} mm`;
  const inches = mm / millimetresPerInch;
  const decimals = `${typeset(short(inches, 4))} in`;
  if (!Number.isFinite(inches) || Math.abs(inches) >= 1e6) return decimals;
  const { text, value } = inchFraction(inches, 32);
  if (value === 0 || value % 1 === 0) return decimals;
  return `${decimals} (${Math.abs(value - inches) < 1e-6 ? text : about(text)})`;
}
