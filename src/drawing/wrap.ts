/** Breaking text into lines that are no wider than a given width. */
import { printable, textWidth } from './lettering.js';

const wrapped = new Map<string, readonly string[]>();
/** Far more than the texts of one vessel's legends; past it the store starts anew. */
const mostWrapped = 2000;

/**
 * At least one line. A word that is wider than `width` by itself is broken between characters. Legends are tried again
 * and again until they fit their pages, so each answer is kept.
 */
export function wrap(text: string, height: number, width: number): readonly string[] {
  const key = `${height} ${width} ${text}`;
  const known = wrapped.get(key);
  if (known) return known;
  if (wrapped.size >= mostWrapped) wrapped.clear();
  const lines = wrapAnew(text, height, width);
  wrapped.set(key, lines);
  return lines;
}

function wrapAnew(text: string, height: number, width: number): string[] {
  const words = printable(text.replaceAll(/[^\S\u00a0]/g, ' '))
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
