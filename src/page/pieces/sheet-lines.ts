/** A drawing's lines for the screen: one path a layer, and the room they take up, in tenths of a millimetre. */
import { drawingBounds, layerNames, type Drawing, type Stroke } from '../../index.js';
import { pathInTenths, tenths } from '../vessel/path-data.js';

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
  const strokes = byLayer(drawing);
  const layers = layerNames.flatMap((layer) => {
    const drawn = strokes.get(layer);
    return drawn ? [{ layer, data: pathInTenths(drawn) }] : [];
  });
  const lines = { viewBox: viewBox.map(tenths).join(' '), layers };
  known.set(drawing, lines);
  return lines;
}

function byLayer({ strokes }: Drawing): Map<string, Stroke[]> {
  const layers = new Map<string, Stroke[]>();
  for (const stroke of strokes) {
    const those = layers.get(stroke.layer);
    if (those) those.push(stroke);
    else layers.set(stroke.layer, [stroke]);
  }
  return layers;
}
