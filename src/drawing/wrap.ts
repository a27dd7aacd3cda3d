/** Breaking text into lines that are no wider than a given width. */
import { printable, textWidth } from './lettering.js';

/** At least one line. A word that is wider than `width` by itself is broken between characters. */
export function wrap(text: string, height: number, width: number): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of printable(text.replaceAll(/\s/g, ' ')).split(' ')) {
    if (word === '') continue;
    const longer = current === '' ? word : `${current} ${word}`;
    if (textWidth(longer, height) <= width) {
      current = longer;
      continue;
    }
    if (current !== '') lines.push(current);
    const pieces = breakWord(word, height, width);
    lines.push(...pieces.slice(0, -1));
    current = pieces.at(-1)!;
  }
  return current === '' && lines.length > 0 ? lines : [...lines, current];
}

/** Pieces that fit the width, each of at least one character. */
function breakWord(word: string, height: number, width: number): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const character of word) {
    if (piece !== '' && textWidth(piece + character, height) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}
