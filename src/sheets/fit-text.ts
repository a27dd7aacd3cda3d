/** Text for a place of a given width: smaller lettering first, then fewer words. */
import { nominalHeights } from '../drawing/heights.js';
import { printable, textWidth } from '../drawing/lettering.js';

interface FittedText {
  readonly text: string;
  readonly height: number;
}

/**
 * The text at the given height or the next smaller one of ISO 3098 that fits `width` mm; cut at the end with an
 * ellipsis when it doesn't fit at 1.8 mm. Empty when not even the ellipsis fits.
 */
export function fitText(text: string, width: number, height: number): FittedText {
  const plain = printable(text.replaceAll(/\s/g, ' ')).trim();
  for (let i = nominalHeights.length - 1; i >= 0; i--) {
    const size = nominalHeights[i]!;
    if (size <= height && textWidth(plain, size) <= width) return { text: plain, height: size };
  }
  const [smallest] = nominalHeights;
  return { text: cut(plain, width, smallest), height: smallest };
}

function cut(text: string, width: number, height: number): string {
  const characters = [...text];
  let [fits, tooLong] = [-1, characters.length];
  while (tooLong - fits > 1) {
    const middle = Math.floor((fits + tooLong) / 2);
    if (textWidth(shortened(characters, middle), height) <= width) fits = middle;
    else tooLong = middle;
  }
  return fits < 0 ? '' : shortened(characters, fits);
}

function shortened(characters: readonly string[], count: number): string {
  return `${characters.slice(0, count).join('').trimEnd()}…`;
}
