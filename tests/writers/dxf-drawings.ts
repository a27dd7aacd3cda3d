/** Test helper: drawings to write as DXF, and a reader of what was written. */
import dxfParser from 'dxf-parser';
import type { IDxf, ILwpolylineEntity, ITextEntity } from 'dxf-parser';
import type { Drawing, Lettering, Stroke } from '../../src/drawing/drawing.js';
import { layerNames } from '../../src/drawing/layers.js';
import type { Curve } from '../../src/geometry/curve.js';
import { arc, circle, line } from '../../src/geometry/curve.js';
import { ellipse } from '../../src/geometry/ellipse.js';

// the package's types describe its module build; what Node loads is the class itself
const Parser = dxfParser as unknown as new () => { parseSync(text: string): IDxf | null };

export function drawingOf(
  strokes: readonly Stroke[],
  letterings: readonly Lettering[] = [],
): Drawing {
  return {
    name: 'sample',
    title: 'Sample',
    subject: '',
    strokes,
    letterings,
    legend: { notes: [], tables: [] },
  };
}

export function lettered(text: string, more: Partial<Lettering> = {}): Lettering {
  return { text, at: { x: 3, y: 4 }, height: 3.5, align: 'left', angle: 0, ...more };
}

/** Something on every layer. */
export function fullDrawing(): Drawing {
  const rings = layerNames
    .filter((layer) => layer !== 'lettering')
    .map((layer, i): Stroke => ({ layer, curve: circle({ x: 0, y: 0 }, 100 + 7 * i) }));
  return drawingOf(
    [
      ...rings,
      { layer: 'outline', curve: ellipse({ x: 0, y: 0 }, 300, 200) },
      { layer: 'centre', curve: line({ x: -310, y: 0 }, { x: 310, y: 0 }) },
    ],
    [
      lettered('⌀ 556,4 → 12,9°', {
        align: 'centre',
        angle: 0.5,
        leader: arc({ x: 0, y: 0 }, 9, 0, 1),
      }),
      lettered('größte Breite', { align: 'right', height: 5 }),
      lettered('bilge'),
    ],
  );
}

export function parsed(dxf: string): IDxf {
  const drawing = new Parser().parseSync(dxf);
  if (!drawing) throw new Error('dxf-parser found no drawing');
  return drawing;
}

export function polylinesOf(dxf: string): { layer: string; curve: Curve }[] {
  return parsed(dxf)
    .entities.filter((entity) => entity.type === 'LWPOLYLINE')
    .map((entity) => {
      const { layer, shape, vertices } = entity as ILwpolylineEntity;
      const corners = vertices.map(({ x, y, bulge }) => ({ x, y, bulge: bulge ?? 0 }));
      return { layer, curve: { closed: shape, vertices: corners } };
    });
}

export function textsOf(dxf: string): ITextEntity[] {
  return parsed(dxf).entities.filter((entity) => entity.type === 'TEXT') as ITextEntity[];
}
