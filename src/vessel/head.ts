/** One head: its size, the section of its edge, its boards and dowels, and the groove that holds it. */
import type { Point } from '../geometry/curve.js';
import type { HeadSpec } from '../spec/spec.js';
import { boardsOf, dowelsOf, jointsOf, type Board, type Dowel, type Rim } from './boards.js';
import type { Groove } from './groove.js';

/** By how much the land is deeper than the groove, so that the rim is home before wood meets wood (mm). */
export const landBeyondGroove = 0.5;

export interface Head {
  readonly spec: HeadSpec;
  readonly groove: Groove;
  readonly diameter: number;
  /** half the diameter along and across the boards; they differ by half the cross-grain allowance */
  readonly rim: Rim;
  /** depth of the parallel land, from the rim inwards */
  readonly landDepth: number;
  /** heights of the faces in the vessel: the one that meets the liquid and the one that is seen */
  readonly insideFace: number;
  readonly outsideFace: number;
  /** half section of the edge: `x` the distance from the axis, `y` from the inside face outwards; from inside to outside */
  readonly section: readonly Point[];
  readonly joints: readonly number[];
  readonly boards: readonly Board[];
  readonly dowels: readonly Dowel[];
}

export function headOf(spec: HeadSpec, groove: Groove): Head {
  const diameter = 2 * groove.radius - spec.clearance;
  const rim = { along: diameter / 2, across: (diameter + spec.crossGrain) / 2 };
  const landDepth = groove.lipDepth + landBeyondGroove;
  const insideFace = groove.middle - groove.towardsEnd * spec.edge.fromInside;
  const joints = jointsOf(spec, rim);
  const boards = boardsOf(spec, rim, joints);
  return {
    spec,
    groove,
    diameter,
    rim,
    landDepth,
    insideFace,
    outsideFace: insideFace + groove.towardsEnd * spec.thickness,
    section: edgeSection(spec, diameter / 2, landDepth),
    joints,
    boards,
    dowels: dowelsOf(spec, rim, joints, boards),
  };
}

/** The edge from the inside face over the inner bevel, the land and the outer bevel to the outside face. */
function edgeSection(spec: HeadSpec, radius: number, landDepth: number): Point[] {
  const { thickness, fromInside, outerBevel, innerBevel } = spec.edge;
  const [low, high] = [fromInside - thickness / 2, fromInside + thickness / 2];
  return [
    { x: radius - innerBevel, y: 0 },
    { x: radius - landDepth, y: low },
    { x: radius, y: low },
    { x: radius, y: high },
    { x: radius - landDepth, y: high },
    { x: radius - outerBevel, y: spec.thickness },
  ];
}
