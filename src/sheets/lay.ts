/** A drawing laid for paper: as it stands or turned by a quarter, with the extent of each of its lines. */
import { drawingBounds } from '../drawing/bounds.js';
import type { Part } from '../drawing/build.js';
import type { Lettering } from '../drawing/drawing.js';
import { printable } from '../drawing/lettering.js';
import type { Bounds } from '../geometry/measure.js';
import { boundsOf } from '../geometry/measure.js';
import { rotate } from '../geometry/transform.js';
import { turned } from '../geometry/vector.js';
import { inkOf } from './ink.js';
import type { SheetStroke } from './sheet.js';

export interface LaidStroke extends SheetStroke {
  /** of the line itself, without its width */
  readonly bounds: Bounds;
}

export interface Laid {
  /** without leaders, which go where their lettering goes */
  readonly strokes: readonly LaidStroke[];
  readonly letterings: readonly Lettering[];
  readonly bounds: Bounds;
}

/** Half of the widest line and a little air: so far the ink may reach beyond the bounds of its lines. */
const inkReach = 0.5;

export function lay(drawing: Part, quarterTurn: boolean): Laid {
  const part = quarterTurn ? turnPart(drawing) : drawing;
  const { minX, minY, maxX, maxY } = drawingBounds(part);
  return {
    strokes: inkOf({ strokes: part.strokes, letterings: [] }).strokes.flatMap(withBounds),
    letterings: part.letterings.filter(({ text }) => printable(text).trim() !== ''),
    bounds: {
      minX: minX - inkReach,
      minY: minY - inkReach,
      maxX: maxX + inkReach,
      maxY: maxY + inkReach,
    },
  };
}

/** The stroke with its extent; nothing when it has no points. */
export function withBounds(stroke: SheetStroke): LaidStroke[] {
  const bounds = boundsOf(stroke.curve);
  return bounds ? [{ ...stroke, bounds }] : [];
}

/** A quarter turn to the left: what read level then reads from the right. */
function turnPart({ strokes, letterings }: Part): Part {
  const quarter = Math.PI / 2;
  return {
    strokes: strokes.map(({ layer, curve }) => ({ layer, curve: rotate(curve, quarter) })),
    letterings: letterings.map((lettering) => ({
      ...lettering,
      at: turned(lettering.at, quarter),
      angle: lettering.angle + quarter,
      ...(lettering.leader ? { leader: rotate(lettering.leader, quarter) } : {}),
    })),
  };
}
