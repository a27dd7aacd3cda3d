/** The drawing as a maker.js model, for those who carry on with it; load this file only when it is asked for. */
import makerjs from 'makerjs';
import type { IModel, IPath } from 'makerjs';
import type { Curve } from '../geometry/curve.js';
import type { Segment } from '../geometry/segment.js';
import { segmentsOf } from '../geometry/segment.js';
import type { Drawing, Lettering } from './drawing.js';
import { frameAt } from './frame.js';
import type { LayerName } from './layers.js';
import { layerNames } from './layers.js';
import { letteringBox, printable } from './lettering.js';

/**
 * One model for each layer in use, named and layered as the drawing's; in it one model for each curve. Lettering becomes
 * captions, which have no extent in maker.js; leaders stand on `dimension`.
 */
export function toMakerModel(drawing: Pick<Drawing, 'strokes' | 'letterings'>): IModel {
  const leaders = drawing.letterings.flatMap(({ leader }) =>
    leader ? [{ layer: 'dimension' as const, curve: leader }] : [],
  );
  const models: Record<string, IModel> = {};
  for (const layer of layerNames) {
    const curves = [...drawing.strokes, ...leaders].filter((stroke) => stroke.layer === layer);
    if (curves.length > 0)
      models[layer] = layerModel(
        layer,
        curves.map((s) => curveModel(s.curve)),
      );
  }
  if (drawing.letterings.length > 0)
    models['lettering'] = layerModel('lettering', drawing.letterings.map(captionModel));
  return { units: makerjs.unitType.Millimeter, models };
}

function layerModel(layer: LayerName, children: readonly IModel[]): IModel {
  return {
    layer,
    models: Object.fromEntries(children.map((child, i) => [`${layer}${i + 1}`, child])),
  };
}

function curveModel(curve: Curve): IModel {
  const paths = segmentsOf(curve).map(pathOf);
  return { paths: Object.fromEntries(paths.map((path, i) => [`segment${i + 1}`, path])) };
}

/** maker.js draws arcs counter-clockwise, in degrees. */
function pathOf(segment: Segment): IPath {
  const { from, to, fromTangent, curvature, sweep } = segment;
  if (curvature === 0) return new makerjs.paths.Line([from.x, from.y], [to.x, to.y]);
  const centre = [from.x - fromTangent.y / curvature, from.y + fromTangent.x / curvature];
  const first = sweep > 0 ? from : to;
  const start = (Math.atan2(first.y - centre[1]!, first.x - centre[0]!) * 180) / Math.PI;
  const turn = (Math.abs(sweep) * 180) / Math.PI;
  return new makerjs.paths.Arc(centre, 1 / Math.abs(curvature), start, start + turn);
}

/** A caption is centred on its anchor: the middle line of the text's box. */
function captionModel(lettering: Lettering): IModel {
  const frame = frameAt(lettering.at, lettering.angle);
  const [left, right, top] = letteringBox(lettering).map(frame.inward);
  const y = (left!.y + top!.y) / 2;
  const ends = [left!.x, right!.x].map((x) => frame.outward({ x, y }));
  const anchor = new makerjs.paths.Line(ends.map(({ x, y: height }) => [x, height]));
  return { caption: { text: printable(lettering.text), anchor } };
}
