/** A drawing laid for paper: as it stands or turned by a quarter, with what is asked of its lines again and again. */
import type { Part } from '../drawing/build.js';
import type { Lettering } from '../drawing/drawing.js';
import { layerStyles } from '../drawing/layers.js';
import { letteringBox } from '../drawing/lettering.js';
import type { Curve } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { boundsOf, boundsOfPoints, together } from '../geometry/measure.js';
import { rotate } from '../geometry/transform.js';
import { turned } from '../geometry/vector.js';
import { isLegible } from './ink.js';
import { grown, spanned } from './rectangle.js';
import type { SheetStroke } from './sheet.js';
import type { Corners } from './shifts.js';

export interface LaidStroke extends SheetStroke {
  /** of the line itself, without its width */
  readonly bounds: Bounds;
}

export interface LaidLettering {
  readonly lettering: Lettering;
  /** of its box, as `letteringBox` gives them */
  readonly corners: Corners;
  /** the upright rectangle round its box */
  readonly box: Bounds;
}

export interface Laid {
  /** without leaders, which go where their lettering goes */
  readonly strokes: readonly LaidStroke[];
  readonly letterings: readonly LaidLettering[];
  readonly bounds: Bounds;
}

/** Half of the widest line and a little air: so far the ink may reach beyond the bounds of its lines. */
const inkReach = 0.5;

/** Throws a RangeError for an empty part, and for one that isn't finite. */
export function lay(part: Part): Laid {
  const extents: Bounds[] = [];
  const strokes: LaidStroke[] = [];
  for (const { curve, layer } of part.strokes) {
    const bounds = extentOf(curve);
    if (!bounds) continue;
    const { width, lineType } = layerStyles[layer];
    strokes.push({ curve, width, lineType, bounds });
    extents.push(bounds);
  }
  const letterings: LaidLettering[] = [];
  for (const lettering of part.letterings) {
    const corners = letteringBox(lettering);
    const box = boundsOfPoints(corners)!;
    if (isLegible(lettering.text)) letterings.push({ lettering, corners, box });
    extents.push(box);
    const leader = lettering.leader && boundsOf(lettering.leader);
    if (leader) extents.push(leader);
  }
  return { strokes, letterings, bounds: grown(finite(together(extents)), inkReach) };
}

/** Most lines have two ends and nothing else. */
function extentOf(curve: Curve): Bounds | null {
  const { vertices } = curve;
  const isStraight = vertices.length === 2 && vertices[0]!.bulge === 0 && vertices[1]!.bulge === 0;
  return isStraight ? spanned(vertices[0]!, vertices[1]!) : boundsOf(curve);
}

function finite(bounds: Bounds | null): Bounds {
  if (!bounds) throw new RangeError('an empty drawing has no bounds');
  if (!Object.values(bounds).every(Number.isFinite)) {
    throw new RangeError('a drawing without an end');
  }
  return bounds;
}

/** The stroke with its extent; nothing when it has no points. */
export function withBounds(stroke: SheetStroke): LaidStroke[] {
  const bounds = boundsOf(stroke.curve);
  return bounds ? [{ ...stroke, bounds }] : [];
}

/** The drawing turned by a quarter, about the origin. */
export function turnedPart(part: Part): Part {
  return turnPart(part, quarterOf(part) * (Math.PI / 2));
}

/** Which way a drawing is turned: to the left (1), unless more of its lettering can be read when it is turned right. */
export function quarterOf({ letterings }: Part): 1 | -1 {
  const upsideDown = (quarter: number) =>
    letterings.filter(({ angle }) => !isReadable(angle + quarter)).length;
  return upsideDown(Math.PI / 2) <= upsideDown(-Math.PI / 2) ? 1 : -1;
}

/** From the bottom or from the right of the sheet. */
function isReadable(angle: number): boolean {
  const slack = 1e-6;
  return Math.cos(angle) > slack || Math.abs(Math.sin(angle) - 1) < slack;
}

function turnPart({ strokes, letterings }: Part, quarter: number): Part {
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
