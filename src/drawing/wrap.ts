/** Breaking text into lines that are no wider than a given width. */
import { printable, textWidth } from './lettering.js';

/** At least one line. A word that is wider than `width` by itself is broken between characters. */
export function wrap(text: string, height: number, width: number): string[] {
  const words = printable(text.replaceAll(/\s/g, ' '))
    .split(' ')
    .filter((word) => word !== '')
    .flatMap((word) =>
      breakWord(word, height, width).map((piece, i) => ({ piece, broken: i > 0 })),
    );
  const space = textWidth(' ', height);
  const lines: string[] = [];
  let reached = Infinity;
  for (const { piece, broken } of words) {
    // the letters don't kern with a space: widths add up
    const needed = textWidth(piece, height);
    reached += space + needed;
    if (reached <= width && !broken) {
      lines.push(`${lines.pop()!} ${piece}`);
    } else {
      lines.push(piece);
      reached = needed;
    }
  }
  return lines.length > 0 ? lines : [''];
}

/** Pieces that fit the width, each of at least one character. */
function breakWord(word: string, height: number, width: number): string[] {
  if (textWidth(word, height) <= width) return [word];
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
