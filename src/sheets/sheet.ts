/** A sheet of paper as data: millimetres, y up, origin at the lower left corner. Knows nothing of files. */
import type { Lettering } from '../drawing/drawing.js';
import type { LineType } from '../drawing/layers.js';
import type { Curve, Point } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';

/** A line as it looks on paper: its layer has become a line type and a width in mm. */
export interface SheetStroke {
  readonly curve: Curve;
  readonly lineType: LineType;
  readonly width: number;
}

export type SheetLettering = Omit<Lettering, 'leader'>;

/** Lines and lettering; in the sheet's coordinates unless they are placed. */
export interface Ink {
  readonly strokes: readonly SheetStroke[];
  readonly letterings: readonly SheetLettering[];
}

/**
 * A part of the drawing, in the drawing's coordinates, so that its tiles share their lines. Lines end at the edge of
 * `window`, lettering lies within it.
 */
export interface Placed extends Ink {
  /** where the drawing's origin lies on the sheet */
  readonly at: Point;
  /** in the sheet's coordinates */
  readonly window: Bounds;
}

export interface Sheet {
  /** of the paper as it lies */
  readonly width: number;
  readonly height: number;
  /**
   * The factors by which everything is stretched about the middle of the paper, 1 for a true printer. A printer that
   * makes 99 mm of 100 needs 100/99. The coordinates are those of the printout, so they come out true.
   */
  readonly correction: Point;
  readonly content: readonly Placed[];
  /** marks, frame, title block, proof of scale; not clipped */
  readonly furniture: Ink;
}
