/** A blank page: paper laid upright or across, what of it may be printed on, and the correction for the printer. */
import type { Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import type { Size } from './paper.js';

/** What the 100 mm square measured as printed, mm: across is along the paper's short edge, along its long edge. */
export interface Printed {
  readonly across: number;
  readonly along: number;
}

export const trulyPrinted: Printed = { across: 100, along: 100 };

/** Kept clear all round: most printers can't print nearer to the edge. */
export const margin = 10;
/** ISO 5457:1999, 4.3 (from memory): 20 mm on the left for filing, frame included. */
const filingMargin = 20;

export interface Page extends Size {
  readonly correction: Point;
  /** inside the margins, in coordinates as printed */
  readonly area: Bounds;
  /** whether the short edge of the paper runs along y */
  readonly across: 'x' | 'y';
}

export type Lying = 'upright' | 'sideways';

/** A page to tile: the same margin all round. */
export function plainPage(paper: Size, lying: Lying, printed: Printed): Page {
  return page(paper, lying, printed, margin);
}

/** A page with a frame and a title block; its area is the drawing space of ISO 5457. */
export function framedPage(paper: Size, lying: Lying, printed: Printed): Page {
  return page(paper, lying, printed, filingMargin);
}

/** Paper with room for a drawing space of a size, in whole millimetres. */
export function framedPaper({ width, height }: Size): Size {
  return {
    width: Math.ceil(width + filingMargin + margin),
    height: Math.ceil(height + 2 * margin),
  };
}

function page(paper: Size, lying: Lying, printed: Printed, left: number): Page {
  const { width, height } =
    lying === 'upright' ? paper : { width: paper.height, height: paper.width };
  const across = width <= height ? 'x' : 'y';
  const factors = { across: factorFor(printed.across), along: factorFor(printed.along) };
  const correction =
    across === 'x'
      ? { x: factors.across, y: factors.along }
      : { x: factors.along, y: factors.across };
  const horizontal = reach(width, left, correction.x);
  const vertical = reach(height, margin, correction.y);
  return {
    width,
    height,
    correction,
    across,
    area: { minX: horizontal[0], maxX: horizontal[1], minY: vertical[0], maxY: vertical[1] },
  };
}

/** Beyond a factor of two either way no printer is to blame, and on A4 nothing would fit. */
function factorFor(measured: number): number {
  if (!(measured >= 50 && measured <= 200)) {
    throw new RangeError(`a square of 100 mm does not print as ${measured}`);
  }
  return 100 / measured;
}

/**
 * From where to where may be printed on. Where the file stretches, its coordinates reach further from the middle than
 * the printout's, and the other way round where it shrinks: neither may come into a margin.
 */
function reach(size: number, first: number, factor: number): [number, number] {
  const middle = size / 2;
  const shrunk = Math.max(1, factor);
  return [middle - (middle - first) / shrunk, middle + (middle - margin) / shrunk];
}
