/** Reads the values of options. A wrong one is refused with what is allowed, and the nearest word that is. */
import { InvalidArgumentError } from 'commander';
import { nearest } from '../index.js';

export interface Range {
  readonly from: number;
  readonly to: number;
}

/** One of `allowed`. */
export function oneOf<T extends string>(allowed: readonly T[]): (text: string) => T {
  return (text) => known(text, allowed);
}

/** Some of `allowed`, with commas between them; in the order given, each once. */
export function someOf<T extends string>(allowed: readonly T[]): (text: string) => T[] {
  return (text) => {
    const words = text.split(',').map((word) => word.trim());
    return [...new Set(words.map((word) => known(word, allowed)))];
  };
}

function known<T extends string>(text: string, allowed: readonly T[]): T {
  const word = allowed.find((each) => each === text.trim().toLowerCase());
  if (word !== undefined) return word;
  const meant = nearest(text, allowed);
  const hint = meant === null ? '' : ` (did you mean ${meant}?)`;
  throw new InvalidArgumentError(`"${text}" is none of ${allowed.join(', ')}${hint}.`);
}

/** `99.6x99.8`: two numbers; null when the text isn't so. */
function twoOf(text: string): [number, number] | null {
  const match = /^\s*(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*$/i.exec(text);
  return match && [Number(match[1]), Number(match[2])];
}

/** A printer that is further off than this has scaled the page on purpose, which is better switched off. */
const printedRange = { least: 90, most: 110 };

/** `99.6x99.8`: what 100 mm across and along the page came out as. */
export function printedOf(text: string): { across: number; along: number } {
  const sides = twoOf(text);
  if (!sides)
    throw new InvalidArgumentError(
      'Measure the 100 mm square across and along the page, in mm: 99.6x99.8.',
    );
  const [across, along] = sides;
  for (const side of sides)
    if (side < printedRange.least || side > printedRange.most)
      throw new InvalidArgumentError(
        `A side of ${side} mm is too far from 100 (${printedRange.least} to ${printedRange.most}): print at actual size, 100 %, first.`,
      );
  return { across, along };
}

/** `60-110`: widths in the units of the spec. */
export function fanOf(text: string): Range {
  const match = /^\s*(\d+(?:\.\d+)?)\s*-\s*(\d+(?:\.\d+)?)\s*$/.exec(text);
  if (!match)
    throw new InvalidArgumentError('Give the least and the greatest width, such as 60-110.');
  const [from, to] = [Number(match[1]), Number(match[2])];
  if (from <= 0 || to < from)
    throw new InvalidArgumentError('The first width is above 0 and not above the second.');
  return { from, to };
}

export interface Plank {
  readonly length: number;
  readonly width: number;
}

/** `2000x250`: length along the grain and width, in the units of the spec. */
export function plankOf(text: string): Plank {
  const [length, width] = twoOf(text) ?? [0, 0];
  if (length === 0 || width === 0)
    throw new InvalidArgumentError(
      'Give the length along the grain and the width, such as 2000x250.',
    );
  return { length, width };
}
