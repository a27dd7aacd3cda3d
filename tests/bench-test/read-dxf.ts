/** Reads a DXF as a router would: closed curves and straight lines by layer, and the drawing's unit. */
import dxfParser from 'dxf-parser';
import type { Segment, XY } from './arcs.js';

interface Entity {
  type: string;
  layer: string;
  vertices?: { x: number; y: number; bulge?: number }[];
  shape?: boolean;
}

interface Parsed {
  header: Record<string, unknown>;
  entities: Entity[];
}

// the package's types describe its module build; what Node loads is the class itself
const Parser = dxfParser as unknown as new () => { parseSync(text: string): Parsed | null };

export interface Chain {
  closed: boolean;
  segments: Segment[];
}

export interface BenchDrawing {
  /** `$INSUNITS`: 4 is the millimetre */
  unit: unknown;
  layers: Map<string, Chain[]>;
}

export function readDxf(text: string): BenchDrawing {
  const parsed = new Parser().parseSync(text);
  if (parsed === null) throw new Error('dxf-parser found no drawing');
  const layers = new Map<string, Chain[]>();
  for (const entity of parsed.entities) {
    const chain = chainOf(entity);
    if (chain === null) continue;
    const layer = layers.get(entity.layer) ?? [];
    layers.set(entity.layer, [...layer, chain]);
  }
  return { unit: parsed.header.$INSUNITS, layers };
}

function chainOf(entity: Entity): Chain | null {
  const vertices = entity.vertices ?? [];
  if (entity.type === 'LINE') return { closed: false, segments: segmentsOf(vertices, false) };
  if (entity.type !== 'LWPOLYLINE') return null;
  const closed = entity.shape === true;
  return { closed, segments: segmentsOf(vertices, closed) };
}

function segmentsOf(vertices: NonNullable<Entity['vertices']>, closed: boolean): Segment[] {
  const point = (v: XY): XY => ({ x: v.x, y: v.y });
  return vertices.flatMap((from, i) => {
    const to = vertices[i + 1] ?? (closed ? vertices[0] : undefined);
    return to === undefined ? [] : [{ from: point(from), to: point(to), bulge: from.bulge ?? 0 }];
  });
}
