/** What proves the scale of a printout: a square of 100 mm, and lines of 100 mm and 4 in to measure. */
import { wrap } from '../drawing/wrap.js';
import type { Point } from '../geometry/curve.js';
import { inkTogether, lineWidths, moveInk, rectangle, rule, words } from './ink.js';
import { keeper } from './kept.js';
import type { Page } from './page.js';
import type { Size } from './paper.js';
import type { Ink } from './sheet.js';
import type { SheetWords } from './words.js';

/** What the user measures in: 4 in are shown beside 100 mm where it is inches. */
export type Units = 'mm' | 'in';

const side = 100;
/** 4 in */
const bar = 101.6;
const tick = 1.5;

/** Where it is put together, a block's origin is its lower left corner. */
export interface Block extends Size {
  readonly ink: Ink;
}

const barRoom = 8;
const headRoom = 15;

const keptBlock = keeper<Block>();
const keptLines = keeper<Block>();

/** What to do in two lines, the square below them, and the 4 in bar at the foot. */
export function proofBlock(page: Pick<Page, 'across'>, terms: SheetWords): Block {
  return keptBlock(terms, page.across, () => newProofBlock(page, terms));
}

function newProofBlock(page: Pick<Page, 'across'>, terms: SheetWords): Block {
  const [first, second] = terms.proof.before;
  const top = barRoom + side;
  return {
    width: bar,
    height: top + headRoom,
    ink: inkTogether(
      words(first, { x: 0, y: top + 9 }, 3.5),
      words(second, { x: 0, y: top + 3 }, 3.5),
      moveInk(square(page, terms), 0, barRoom),
      measuredLine({ x: 0, y: tick / 2 }, bar, terms.proof.fourInches),
    ),
  };
}

function square({ across }: Pick<Page, 'across'>, { proof }: SheetWords): Ink {
  const [level, upright] =
    across === 'x' ? [proof.across, proof.along] : [proof.along, proof.across];
  const lines = wrap(proof.remedy, 2.5, 70);
  return inkTogether(
    rectangle({ minX: 0, minY: 0, maxX: side, maxY: side }, lineWidths.narrow),
    words(level, { x: side / 2, y: 2.5 }, 3.5, { align: 'centre' }),
    words(upright, { x: side - 2.5, y: side / 2 }, 3.5, { align: 'centre', angle: Math.PI / 2 }),
    ...lines.map((text, i) => words(text, { x: 12, y: side - 15 - i * 5 }, 2.5)),
  );
}

/** The lines of known length at the foot of a sheet: 100 mm, and 4 in above it where the work is in inches. */
export function proofLines(units: Units, terms: SheetWords): Block {
  return keptLines(terms, units, () => newProofLines(units, terms));
}

function newProofLines(units: Units, terms: SheetWords): Block {
  const hundred = measuredLine({ x: 0, y: tick / 2 }, side, terms.proof.hundred);
  if (units === 'mm') return { width: side, height: proofLineHeight, ink: hundred };
  const inches = measuredLine({ x: 0, y: proofLineHeight }, bar, terms.proof.fourInches);
  return { width: bar, height: 2 * proofLineHeight, ink: inkTogether(hundred, inches) };
}

const proofLineHeight = 6.5;

/** A line between two ticks with its length written over it. */
function measuredLine(from: Point, length: number, text: string): Ink {
  const to = { x: from.x + length, y: from.y };
  const ends = [from, to].map(({ x, y }) => rule({ x, y: y - tick / 2 }, { x, y: y + tick / 2 }));
  const label = words(text, { x: from.x + length / 2, y: from.y + 1.1 }, 2.5, { align: 'centre' });
  return inkTogether(rule(from, to), ...ends, label);
}
