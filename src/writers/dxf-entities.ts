/** The lines and lettering of a drawing as DXF entities. */
import type { Drawing, Lettering } from '../drawing/drawing.js';
import type { LayerName } from '../drawing/layers.js';
import { layerNames, layerStyles } from '../drawing/layers.js';
import type { Curve } from '../geometry/curve.js';
import type { Handles, Tag } from './dxf-tags.js';
import { textStyle } from './dxf-tables.js';
import { dxfText } from './dxf-text.js';
import { formatBulge, formatNumber } from './number.js';

/** How lettering goes out: as text, or as the outlines that a function draws of it. */
export type LetteringStyle =
  | { readonly letteringAs: 'text' }
  | {
      readonly letteringAs: 'outlines';
      readonly outlinesOf: (lettering: Lettering) => readonly Curve[];
    };

const closedFlag = 1;
/** dashes run on round the vertices instead of starting anew at each */
const dashesRunOn = 128;
const halignment = { left: 0, centre: 1, right: 2 } as const;

/** Entities layer by layer, in the order of `layerNames`; on each layer in the drawing's own order. */
export function entities(
  drawing: Drawing,
  style: LetteringStyle,
  handles: Handles,
  owner: string,
): Tag[] {
  const head = (type: string, layer: LayerName): Tag[] => [
    [0, type],
    [5, handles.next()],
    [330, owner],
    [100, 'AcDbEntity'],
    [8, layer],
  ];
  const polyline = (layer: LayerName, curve: Curve): Tag[] => {
    const vertices = distinctVertices(curve);
    if (vertices.length < 2) return [];
    return [...head('LWPOLYLINE', layer), ...polylineTags(layer, curve.closed, vertices)];
  };
  const text = (lettering: Lettering): Tag[] => {
    const content = dxfText(lettering.text);
    return content === '' ? [] : [...head('TEXT', 'lettering'), ...textTags(lettering, content)];
  };
  const tags = layerNames.flatMap((layer) =>
    curvesOn(drawing, style, layer).flatMap((curve) => polyline(layer, curve)),
  );
  return style.letteringAs === 'text' ? [...tags, ...drawing.letterings.flatMap(text)] : tags;
}

function curvesOn(drawing: Drawing, style: LetteringStyle, layer: LayerName): readonly Curve[] {
  const { strokes, letterings } = drawing;
  if (layer === 'lettering') {
    return style.letteringAs === 'outlines' ? letterings.flatMap(style.outlinesOf) : [];
  }
  const curves = strokes.filter((stroke) => stroke.layer === layer).map(({ curve }) => curve);
  if (layer !== 'dimension') return curves;
  return [...curves, ...letterings.flatMap(({ leader }) => (leader ? [leader] : []))];
}

interface WrittenVertex {
  readonly x: string;
  readonly y: string;
  readonly bulge: string;
}

/** The vertices as they are written; of neighbours that round to the same point one is left. */
function distinctVertices({ vertices, closed }: Curve): WrittenVertex[] {
  const distinct: WrittenVertex[] = [];
  for (const vertex of vertices) {
    const written = {
      x: formatNumber(vertex.x),
      y: formatNumber(vertex.y),
      bulge: formatBulge(vertex.bulge),
    };
    // the segment between the two is gone: the one that leaves the second leaves the first
    if (isSamePoint(distinct.at(-1), written)) distinct.pop();
    distinct.push(written);
  }
  if (closed && distinct.length > 1 && isSamePoint(distinct[0], distinct.at(-1)!)) distinct.pop();
  return distinct;
}

function isSamePoint(a: WrittenVertex | undefined, b: WrittenVertex): boolean {
  return a !== undefined && a.x === b.x && a.y === b.y;
}

function polylineTags(
  layer: LayerName,
  closed: boolean,
  vertices: readonly WrittenVertex[],
): Tag[] {
  const dashed = layerStyles[layer].lineType !== 'continuous';
  return [
    [100, 'AcDbPolyline'],
    [90, vertices.length],
    [70, (closed ? closedFlag : 0) + (dashed ? dashesRunOn : 0)],
    ...vertices.flatMap(({ x, y, bulge }, i): Tag[] => {
      const leaves = bulge !== '0' && (closed || i < vertices.length - 1);
      return [[10, x], [20, y], ...(leaves ? ([[42, bulge]] as const) : [])];
    }),
  ];
}

function textTags({ at, height, align, angle }: Lettering, content: string): Tag[] {
  const anchor = (code: number): Tag[] => [
    [code, formatNumber(at.x)],
    [code + 10, formatNumber(at.y)],
    [code + 20, 0],
  ];
  return [
    [100, 'AcDbText'],
    ...anchor(10),
    [40, formatNumber(height)],
    [1, content],
    [50, formatNumber((angle * 180) / Math.PI)],
    [7, textStyle],
    [72, halignment[align]],
    ...(align === 'left' ? [] : anchor(11)),
    [100, 'AcDbText'],
    [73, 0],
  ];
}
