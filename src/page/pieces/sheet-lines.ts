/** A drawing's lines for the screen: one path a layer, and the room they take up. */
import { drawingBounds, layerNames, type Drawing } from '../../index.js';
import { pathOf } from '../vessel/path-data.js';

export interface SheetLines {
  readonly viewBox: string;
  readonly layers: readonly { readonly layer: string; readonly data: string }[];
}

const known = new WeakMap<Drawing, SheetLines>();

export function sheetLines(drawing: Drawing): SheetLines {
  const before = known.get(drawing);
  if (before) return before;
  const { minX, minY, maxX, maxY } = drawingBounds({ ...drawing, letterings: [] });
  const room = 0.02 * Math.max(maxX - minX, maxY - minY);
  const viewBox = [minX - room, -maxY - room, maxX - minX + 2 * room, maxY - minY + 2 * room];
  const layers = layerNames.flatMap((layer) => {
    const strokes = drawing.strokes.filter((stroke) => stroke.layer === layer);
    return strokes.length > 0 ? [{ layer, data: pathOf(strokes) }] : [];
  });
  const lines = { viewBox: viewBox.join(' '), layers };
  known.set(drawing, lines);
  return lines;
}
