/** A length from the command line, in the units of a spec. */
import { millimetresOf, type Spec } from '../index.js';

/** Millimetres, or null when the text is no length above (with `orZero`, not below) zero in these units. */
export function givenLength(text: string, units: Spec['units'], orZero = false): number | null {
  const raw = /^\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : text.trim();
  const mm = millimetresOf(raw, units);
  return mm !== null && Number.isFinite(mm) && (orZero ? mm >= 0 : mm > 0) ? mm : null;
}

const examples: Record<Spec['units'], string> = { mm: '12.5', in: '1/2 or 0.5' };

/** Why a text is none. */
export const noLength = (option: string, text: string, units: Spec['units']): string =>
  `${option}: "${text}" is no length in ${units}, the units of the spec (such as ${examples[units]})`;
