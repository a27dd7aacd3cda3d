/** The lines and lettering of a drawing as DXF entities. */
import type { Drawing, Lettering } from '../drawing/drawing.js';
import type { LayerName } from '../drawing/layers.js';
import { layerNames, layerStyles } from '../drawing/layers.js';
import type { Curve } from '../geometry/curve.js';
import { checked, type Handles } from './dxf-tags.js';
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

/**
 * The text of the entities, layer by layer in the order of `layerNames`; on each layer in the drawing's own order. They are by far the
 * most of a file, so that they are written as lines at once and not as tags.
 */
export function entities(
  drawing: Drawing,
  style: LetteringStyle,
  handles: Handles,
  owner: string,
): string {
  const head = (type: string, layer: LayerName) => {
    const behind = `\n330\n${owner}\n100\nAcDbEntity\n8\n${layer}\n`;
    return () => `0\n${type}\n5\n${handles.next()}${behind}`;
  };
  const written: string[] = [];
  const curves = curvesByLayer(drawing, style);
  for (const layer of layerNames) {
    const lineHead = head('LWPOLYLINE', layer);
    for (const curve of curves.get(layer)!) {
      const vertices = distinctVertices(curve);
      if (vertices.length < 2) continue;
      written.push(lineHead(), polyline(layer, curve.closed, vertices));
    }
  }
  if (style.letteringAs === 'outlines') return written.join('');
  const textHead = head('TEXT', 'lettering');
  for (const lettering of drawing.letterings) {
    const content = dxfText(lettering.text);
    if (content !== '') written.push(textHead(), text(lettering, content));
  }
  return written.join('');
}

function curvesByLayer(
  { strokes, letterings }: Drawing,
  style: LetteringStyle,
): ReadonlyMap<LayerName, Curve[]> {
  const curves = new Map<LayerName, Curve[]>(layerNames.map((layer) => [layer, []]));
  for (const { layer, curve } of strokes) curves.get(layer)!.push(curve);
  for (const lettering of letterings) {
    if (lettering.leader) curves.get('dimension')!.push(lettering.leader);
    if (style.letteringAs === 'outlines')
      curves.get('lettering')!.push(...style.outlinesOf(lettering));
  }
  return curves;
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
    if (isSamePoint(distinct[distinct.length - 1], written)) distinct.pop();
    distinct.push(written);
  }
  if (closed && distinct.length > 1 && isSamePoint(distinct[0], distinct.at(-1)!)) distinct.pop();
  return distinct;
}

function isSamePoint(a: WrittenVertex | undefined, b: WrittenVertex): boolean {
  return a !== undefined && a.x === b.x && a.y === b.y;
}

function polyline(layer: LayerName, closed: boolean, vertices: readonly WrittenVertex[]): string {
  const dashed = layerStyles[layer].lineType !== 'continuous';
  const flags = (closed ? closedFlag : 0) + (dashed ? dashesRunOn : 0);
  let lines = `100\nAcDbPolyline\n90\n${vertices.length}\n70\n${flags}\n`;
  for (let i = 0; i < vertices.length; i++) {
    const { x, y, bulge } = vertices[i]!;
    lines += `10\n${x}\n20\n${y}\n`;
    if (bulge !== '0' && (closed || i < vertices.length - 1)) lines += `42\n${bulge}\n`;
  }
  return lines;
}

function text({ at, height, align, angle }: Lettering, content: string): string {
  const x = formatNumber(at.x);
  const y = formatNumber(at.y);
  const degrees = formatNumber((angle * 180) / Math.PI);
  const aligned = align === 'left' ? '' : `11\n${x}\n21\n${y}\n31\n0\n`;
  return (
    `100\nAcDbText\n10\n${x}\n20\n${y}\n30\n0\n40\n${formatNumber(height)}\n1\n${checked(content)}\n` +
    `50\n${degrees}\n7\n${textStyle}\n72\n${halignment[align]}\n${aligned}100\nAcDbText\n73\n0\n`
  );
}
