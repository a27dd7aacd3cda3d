/** The kinds of value that a spec file holds, each as a zod schema that says what it found and what is allowed. */
import * as z from 'zod/mini';
import { millimetresOf, millimetresPerInch, inchPattern } from './length.js';
import { nearest } from './nearest.js';
import { shown } from './shown.js';
import type { Units } from './spec.js';

type Values = Record<string, string | number>;
/** A value, or what is wrong with it. */
type Outcome<T> = { readonly value: T } | { readonly code: string; readonly values: Values };

/** What editors are told of each key: description, type, limits, as JSON Schema. */
export const forEditors = z.registry<Record<string, unknown>>();

/** `json` describes the value to editors; `read` judges it. One small zod object each: start-up pays for every one. */
function field<T>(json: Record<string, unknown>, read: (raw: unknown) => Outcome<T>) {
  const judge = (raw: unknown, context: z.core.ParsePayload): T => {
    const outcome = raw === undefined ? { code: 'missing', values: {} } : read(raw);
    if ('value' in outcome) return outcome.value;
    const found = 'found' in outcome.values ? {} : { found: shown(raw) };
    const params = { code: outcome.code, values: { ...found, ...outcome.values } };
    context.issues.push({ code: 'custom', input: raw, params });
    return z.NEVER;
  };
  return z.transform(judge).register(forEditors, json);
}

/** A length in the file's units; the limits are millimetres. */
export function lengthField(units: Units, min: number, max: number, about: string) {
  const inches = (mm: number): number => Number((mm / millimetresPerInch).toFixed(2));
  const json =
    units === 'mm'
      ? { type: 'number', minimum: min, maximum: max, description: about }
      : {
          anyOf: [{ type: 'number' }, { type: 'string', pattern: inchPattern.source }],
          description: `${about} (${inches(min)} to ${inches(max)} in; 37.375 or 37 3/8)`,
        };
  return field(json, (raw): Outcome<number> => {
    if (typeof raw === 'number' && !Number.isFinite(raw)) {
      return { code: 'not-finite', values: { min, max, unit: 'length' } };
    }
    const mm = millimetresOf(raw, units);
    if (mm === null) return { code: lengthSlip(raw, units), values: { min, max } };
    if (mm >= min && mm <= max) return { value: mm };
    const code = mm < min ? 'length-too-small' : 'length-too-large';
    return { code, values: { found: mm, min, max, meant: otherUnits(mm, units, min, max) } };
  });
}

/** The other units, when the number would be in range if it had been meant in those. */
function otherUnits(mm: number, units: Units, min: number, max: number): string {
  const meant = units === 'mm' ? mm * millimetresPerInch : mm / millimetresPerInch;
  if (!(meant >= min && meant <= max)) return '';
  return units === 'mm' ? 'in' : 'mm';
}

/** What kind of slip a length that cannot be read is. */
function lengthSlip(raw: unknown, units: Units): string {
  if (typeof raw !== 'string') return 'not-a-length';
  if (/^[+-]?\d+,\d+$/.test(raw)) return 'comma-in-number';
  if (/^[\d .,/-]+\s*(mm|cm|m|in|inch|inches|["'′″])$/i.test(raw)) return 'unit-in-length';
  if (units === 'mm' && inchPattern.test(raw)) {
    return raw.includes('/') ? 'fraction-in-millimetres' : 'quoted-number';
  }
  return 'not-a-length';
}

/** A number without a length: a count, a share, an angle in degrees. */
export function numberField(
  kind: 'count' | 'share' | 'degrees',
  min: number,
  max: number,
  about: string,
) {
  const type = kind === 'count' ? 'integer' : 'number';
  const json = { type, minimum: min, maximum: max, description: about };
  return field(json, (raw): Outcome<number> => {
    const values = { min, max, unit: kind };
    if (typeof raw !== 'number') return { code: 'not-a-number', values };
    if (!Number.isFinite(raw)) return { code: 'not-finite', values };
    if (raw < min || raw > max)
      return { code: 'number-out-of-range', values: { found: raw, ...values } };
    if (kind === 'count' && !Number.isInteger(raw)) return { code: 'not-whole', values };
    return { value: raw + 0 };
  });
}

/** One of a few words. */
export function choiceField<T extends string>(choices: readonly T[], about: string) {
  const json = { type: 'string', enum: choices, description: about };
  return field(json, (raw): Outcome<T> => {
    const chosen = choices.find((choice) => choice === raw);
    if (chosen !== undefined) return { value: chosen };
    const meant = typeof raw === 'string' ? (nearest(raw, choices) ?? '') : '';
    return { code: 'not-a-choice', values: { allowed: choices.join(', '), meant } };
  });
}

/**
 * Control characters, line and paragraph separators, halves of characters, and the marks that reverse the direction of
 * writing: none can be printed on a drawing, and some would show another text than the file holds.
 */
const unprintable =
  /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff\ufffe\uffff]/u;

/** One line of text. Markup is text like any other; writers escape it. */
export function textField(longest: number, about: string) {
  const json = { type: ['string', 'number', 'null'], maxLength: longest, description: about };
  return field(json, (raw): Outcome<string> => {
    if (typeof raw !== 'string') return { code: 'not-text', values: {} };
    if (/[\r\n\u0085\u2028\u2029]/.test(raw)) return { code: 'text-of-several-lines', values: {} };
    const strange = unprintable.exec(raw)?.[0].codePointAt(0);
    if (strange !== undefined) {
      const character = `U+${strange.toString(16).toUpperCase().padStart(4, '0')}`;
      return { code: 'text-unprintable', values: { character } };
    }
    const length = [...raw].length;
    if (length > longest) return { code: 'text-too-long', values: { length, most: longest } };
    return { value: raw };
  });
}

/** Names of hoops end up in the names of files: letters, digits, blanks, hyphens and points that aren't `..`. */
const plainName = /^[\p{L}\p{N}](?:[\p{L}\p{M}\p{N} _-]|\.(?!\.))*$/u;

export function nameField(longest: number, about: string) {
  const json = { type: ['string', 'number'], minLength: 1, maxLength: longest, description: about };
  return field(json, (raw): Outcome<string> => {
    const name = typeof raw === 'string' ? raw.trim() : raw;
    if (typeof name !== 'string') return { code: 'not-text', values: {} };
    if ([...name].length > longest) {
      return { code: 'text-too-long', values: { length: [...name].length, most: longest } };
    }
    return plainName.test(name) ? { value: name } : { code: 'name-not-plain', values: {} };
  });
}
