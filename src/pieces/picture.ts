/**
 * The vessel to look at, full size and without words: seen from outside on the left of its axis, cut on the right. `x` is the
 * distance from the axis and `y` the height from mid-height.
 */
import type { Stroke } from '../drawing/drawing.js';
import { polygon, type Curve } from '../geometry/curve.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { headCut, jointCuts, staveCut, strapCorners } from './section-cut.js';
import { seenEdges, seenJoints } from './section-outside.js';

/** As true as a pattern is at this scale: for screens. */
const pictureScale = 0.1;

export interface VesselPicture {
  /** closed: what the plane through the axis cuts */
  readonly wood: readonly Stroke[];
  readonly steel: readonly Stroke[];
  /** what is seen outside */
  readonly seen: readonly Stroke[];
}

export function vesselPicture(vessel: Vessel): VesselPicture {
  const heads = [vessel.heads.top, vessel.heads.bottom].filter((head): head is Head => !!head);
  const on = (layer: Stroke['layer'], curves: readonly Curve[]): Stroke[] =>
    curves.map((curve) => ({ layer, curve }));
  return {
    wood: on('outline', [...staveCut(vessel, pictureScale), ...heads.map(headCut)]),
    steel: on(
      'outline',
      vessel.hoops.map((hoop) => polygon(strapCorners(hoop))),
    ),
    seen: [
      ...on('joint', seenEdges(vessel, pictureScale)),
      ...on('station', seenJoints(vessel, pictureScale)),
      ...on('joint', heads.flatMap(jointCuts)),
    ],
  };
}
