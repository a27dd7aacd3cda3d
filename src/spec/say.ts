/** How numbers, keys and words are written in messages. */
import type { SpecPath } from './issue.js';
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

export function sayer(
  values: Readonly<Record<string, string | number>>,
  path: SpecPath,
  units: Units,
): Say {
  const value = (name: string): string | number | undefined =>
    Object.hasOwn(values, name) ? values[name] : undefined;
  const numeric = (name: string, write: (n: number) => string): string => {
    const n = value(name);
    return typeof n === 'number' ? write(n) : String(n ?? '?');
  };
  return {
    units,
    key: dotted(path),
    word: (name) => String(value(name) ?? '?'),
    has: (name) => (value(name) ?? '') !== '',
    length: (name) => numeric(name, (n) => writeLength(n, units)),
    degrees: (name) => numeric(name, (n) => `${short(n, 2)} degrees`),
    number: (name) => numeric(name, (n) => short(n, 4)),
    range: (least, most) =>
      `${numeric(least, (n) => bare(n, units))} to ${numeric(most, (n) => bare(n, units))} ${units}`,
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

function writeLength(mm: number, units: Units): string {
  if (units === 'mm') return `${short(mm, 3)} mm`;
  const inches = mm / millimetresPerInch;
  const decimals = `${short(inches, 4)} in`;
  if (!Number.isFinite(inches) || Math.abs(inches) >= 1e6) return decimals;
  const { text, value } = inchFraction(inches, 32);
  if (value === 0 || value % 1 === 0) return decimals;
  return `${decimals} (${Math.abs(value - inches) < 1e-6 ? '' : 'about '}${text})`;
}
