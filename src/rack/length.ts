/** Reads a length as it is written on a rack list: `71.5`, `71,5`, `3 1/8`, `2.8 in`, or two readings `71.5/72`. */

export type LengthUnits = 'mm' | 'in';

export const MM_PER_INCH = 25.4;

const WRITTEN = /^(?:(\d+)[ -]+(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:[.,]\d+)?))\s*(mm|in|"|″)?$/;

/** A length in mm, or null when the text isn't one. Fractions are inches; halves down to sixty-fourths. */
export function readLength(text: string, units: LengthUnits): number | null {
  const found = WRITTEN.exec(text.trim().replace(/\s+/g, ' '));
  if (!found) return null;
  const [, whole, top, under, bareTop, bareUnder, decimal, suffix] = found;
  const inches = suffix === undefined ? units === 'in' : suffix !== 'mm';
  if (decimal !== undefined) return Number(decimal.replace(',', '.')) * (inches ? MM_PER_INCH : 1);
  const part = fraction(Number(top ?? bareTop), Number(under ?? bareUnder));
  return part === null || !inches ? null : (Number(whole ?? 0) + part) * MM_PER_INCH;
}

/** A proper fraction of an inch as rules are divided: its lower number a power of two up to 64. */
function fraction(top: number, under: number): number | null {
  const divided = [2, 4, 8, 16, 32, 64].includes(under);
  return divided && top > 0 && top < under ? top / under : null;
}

/**
 * One reading, or two parted by a stroke, in mm; null when the text is neither. `3/4` in inches is a fraction,
 * `3 1/8/3 3/16` two readings: the stroke is the one that leaves a length on either side.
 */
export function readReadings(text: string, units: LengthUnits): readonly number[] | null {
  const single = readLength(text, units);
  if (single !== null) return [single];
  for (let at = text.indexOf('/'); at >= 0; at = text.indexOf('/', at + 1)) {
    const first = readLength(text.slice(0, at), units);
    const second = readLength(text.slice(at + 1), units);
    if (first !== null && second !== null) return [first, second];
  }
  return null;
}
