/** Small builders and moves for what is drawn on a sheet. */
import type { Part } from '../drawing/build.js';
import type { LayerName, LineType } from '../drawing/layers.js';
import { layerStyles } from '../drawing/layers.js';
import { printable } from '../drawing/lettering.js';
import type { Curve, Point } from '../geometry/curve.js';
import { line, polygon } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import { translate } from '../geometry/transform.js';
import type { Ink, Placed, SheetLettering, SheetStroke } from './sheet.js';

/** Line widths in mm: ISO 128 series. */
export const lineWidths = { frame: 0.7, wide: 0.35, narrow: 0.18, fine: 0.13 } as const;

export const noInk: Ink = { strokes: [], letterings: [] };

export function inkTogether(...inks: readonly Ink[]): Ink {
  const strokes: SheetStroke[] = [];
  const letterings: SheetLettering[] = [];
  // every sheet is put together by this: loops take a third of what flatMap does
  for (const ink of inks) {
    for (const stroke of ink.strokes) strokes.push(stroke);
    for (const lettering of ink.letterings) letterings.push(lettering);
  }
  return { strokes, letterings };
}

export function stroked(curve: Curve, width: number, lineType: LineType = 'continuous'): Ink {
  return { strokes: [{ curve, lineType, width }], letterings: [] };
}

export function rule(from: Point, to: Point, width: number = lineWidths.narrow): Ink {
  return stroked(line(from, to), width);
}

export function rectangle(bounds: Bounds, width: number, lineType?: LineType): Ink {
  const { minX, minY, maxX, maxY } = bounds;
  const corners = [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
  return stroked(polygon(corners), width, lineType);
}

/** A line of text; nothing when there is nothing to read. */
export function words(
  text: string,
  at: Point,
  height: number,
  options: Partial<Pick<SheetLettering, 'align' | 'angle'>> = {},
): Ink {
  if (!isLegible(text)) return noInk;
  return { strokes: [], letterings: [{ text, at, height, align: 'left', angle: 0, ...options }] };
}

/** The lines and letterings of a drawing as ink, moved if need be; leaders become lines. */
export function inkOf(part: Part, dx = 0, dy = 0): Ink {
  const strokes: SheetStroke[] = [];
  const letterings: SheetLettering[] = [];
  const isMoved = dx !== 0 || dy !== 0;
  const draw = (curve: Curve, layer: LayerName): void => {
    const { width, lineType } = layerStyles[layer];
    strokes.push({ curve: isMoved ? translate(curve, dx, dy) : curve, width, lineType });
  };
  for (const { curve, layer } of part.strokes) draw(curve, layer);
  for (const { text, at, height, align, angle, leader } of part.letterings) {
    if (leader) draw(leader, 'dimension');
    if (!isLegible(text)) continue;
    const place = isMoved ? { x: at.x + dx, y: at.y + dy } : at;
    letterings.push({ text, at: place, height, align, angle });
  }
  return { strokes, letterings };
}

/** Whether there is anything to read. */
export function isLegible(text: string): boolean {
  return printable(text).trim() !== '';
}

/** The same in the sheet's coordinates. */
export function inkOnSheet(placed: Placed): Ink {
  return moveInk(placed, placed.at.x, placed.at.y);
}

export function moveInk(ink: Ink, dx: number, dy: number): Ink {
  const strokes: SheetStroke[] = [];
  const letterings: SheetLettering[] = [];
  for (const { curve, lineType, width } of ink.strokes) {
    strokes.push({ curve: translate(curve, dx, dy), lineType, width });
  }
  for (const { text, at, height, align, angle } of ink.letterings) {
    letterings.push({ text, at: { x: at.x + dx, y: at.y + dy }, height, align, angle });
  }
  return { strokes, letterings };
}
