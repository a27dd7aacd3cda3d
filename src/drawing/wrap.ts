/** Breaking text into lines that are no wider than a given width. */
import { keptByText } from './kept.js';
import { inMillimetres, printable, unitsBetween } from './lettering.js';

interface Wrapped {
  readonly height: number;
  readonly width: number;
  readonly lines: readonly string[];
  /** of the longest line, in font units */
  readonly units: number;
}

/** A text by its words. */
interface Words {
  /** one blank between words, and none at the ends */
  readonly text: string;
  /** where each word ends in the text, and how wide it is in font units */
  readonly ends: readonly number[];
  readonly units: readonly number[];
  /** what has been asked of this text before */
  readonly answers: Wrapped[];
}

/** Far more than the texts of one vessel's legends. */
const mostTexts = 2000;
/** More widths than one text is tried in. */
const mostAnswers = 50;

/**
 * At least one line. A word that is wider than `width` by itself is broken between characters. Legends are tried again
 * and again until they fit their pages, so each answer is kept, and each word is measured once.
 */
export function wrap(text: string, height: number, width: number): readonly string[] {
  return wrapped(text, height, width).lines;
}

/** How wide the longest of the same lines is. */
export function wrappedWidth(text: string, height: number, width: number): number {
  return inMillimetres(wrapped(text, height, width).units, height);
}

function wrapped(text: string, height: number, width: number): Wrapped {
  const words = wordsOf(text);
  const { answers } = words;
  for (const answer of answers)
    if (answer.width === width && answer.height === height) return answer;
  const answer = wrappedAnew(words, height, width);
  if (answers.length >= mostAnswers) answers.length = 0;
  answers.push(answer);
  return answer;
}

const wordsOf = keptByText(mostTexts, (text): Words => takenApart(spaced(text)));

/** Any other white space counts as a blank, but for the one that keeps words together. */
function spaced(text: string): string {
  const clean = printable(text.replaceAll(/[^\S\u00a0 ]/g, ' '));
  return /^ |  | $/.test(clean)
    ? clean
        .split(' ')
        .filter((word) => word !== '')
        .join(' ')
    : clean;
}

function takenApart(text: string): Words {
  const ends: number[] = [];
  const units: number[] = [];
  for (let from = 0; from < text.length; from = ends.at(-1)! + 1) {
    const blank = text.indexOf(' ', from);
    const end = blank < 0 ? text.length : blank;
    ends.push(end);
    units.push(unitsBetween(text, from, end));
  }
  return { text, ends, units, answers: [] };
}

function wrappedAnew({ text, ends, units }: Words, height: number, width: number): Wrapped {
  const blank = unitsBetween(' ', 0, 1);
  const fits = (needed: number): boolean => inMillimetres(needed, height) <= width;
  const lines: string[] = [];
  let longest = 0;
  // the line that isn't full yet: where it begins and ends in the text, and how wide it is
  let [start, end, reached] = [0, 0, Infinity];
  const add = (from: number, to: number, needed: number, broken: boolean): void => {
    // the letters don't kern with a space: widths add up
    reached += blank + needed;
    if (broken || !fits(reached)) {
      if (end > 0) lines.push(text.slice(start, end));
      start = from;
      reached = needed;
    }
    end = to;
    longest = Math.max(longest, reached);
  };
  for (let i = 0, from = 0; i < ends.length; i++) {
    const to = ends[i]!;
    const needed = units[i]!;
    if (fits(needed)) add(from, to, needed, false);
    else {
      piecesOf(text, from, to, fits).forEach((piece, n) => {
        add(piece.from, piece.to, piece.units, n > 0);
      });
    }
    from = to + 1;
  }
  lines.push(text.slice(start, end));
  return { height, width, lines, units: longest };
}

interface Piece {
  readonly from: number;
  readonly to: number;
  readonly units: number;
}

/** Pieces of a word that fit, each of at least one character. */
function piecesOf(
  text: string,
  from: number,
  to: number,
  fits: (units: number) => boolean,
): Piece[] {
  const pieces: Piece[] = [];
  let piece: Piece = { from, to: from, units: 0 };
  for (const character of text.slice(from, to)) {
    const end = piece.to + character.length;
    const units = unitsBetween(text, piece.from, end);
    if (piece.to > piece.from && !fits(units)) {
      pieces.push(piece);
      piece = { from: piece.to, to: end, units: unitsBetween(text, piece.to, end) };
    } else {
      piece = { from: piece.from, to: end, units };
    }
  }
  return [...pieces, piece];
}
