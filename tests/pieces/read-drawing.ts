/** Takes the measures of a drawing from its lines, as a workshop would from the print. */
import type { Drawing, Stroke } from '../../src/drawing/drawing.js';
import type { Curve, Point } from '../../src/geometry/curve.js';
import { boundsOf } from '../../src/geometry/measure.js';
import { segmentArc } from '../../src/geometry/segment.js';

type Lines = Pick<Drawing, 'strokes'>;

export function curvesOn({ strokes }: Lines, layer: Stroke['layer']): Curve[] {
  return strokes.filter((stroke) => stroke.layer === layer).map(({ curve }) => curve);
}

export interface FoundArc {
  readonly radius: number;
  readonly centre: Point;
  readonly from: Point;
  readonly to: Point;
}

/** Every arc of the curve; its straight segments are left out. */
export function arcsOf({ vertices, closed }: Curve): FoundArc[] {
  return vertices.flatMap((from, i) => {
    const to = vertices[i + 1] ?? (closed ? vertices[0]! : undefined);
    const arc = to && segmentArc(from, to);
    return arc ? [{ radius: arc.radius, centre: arc.centre, from, to }] : [];
  });
}

/** Middles and diameters of the holes on `bore`, from left to right. */
export function holesOf(drawing: Lines): { x: number; y: number; diameter: number }[] {
  return curvesOn(drawing, 'bore')
    .map((curve) => {
      const { minX, maxX, minY, maxY } = boundsOf(curve)!;
      return { x: (minX + maxX) / 2, y: (minY + maxY) / 2, diameter: maxX - minX };
    })
    .sort((a, b) => a.x - b.x);
}

/** Places of the upright lines on a layer. */
export function uprightsOn(drawing: Lines, layer: Stroke['layer']): number[] {
  return curvesOn(drawing, layer)
    .filter(({ vertices }) => Math.abs(vertices[0]!.x - vertices.at(-1)!.x) < 1e-9)
    .map(({ vertices }) => vertices[0]!.x)
    .sort((a, b) => a - b);
}

export const textsOf = ({ letterings }: Pick<Drawing, 'letterings'>): string[] =>
  letterings.map(({ text }) => text);
