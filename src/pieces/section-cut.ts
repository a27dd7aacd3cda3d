/** What a plane through the axis cuts on the right of it, in full size: `x` from the axis, `y` the height in the vessel. */
import type { Curve, Point, Vertex } from '../geometry/curve.js';
import { line, polygon } from '../geometry/curve.js';
import { closedFrom, joinCurves } from '../geometry/join.js';
import { reversedRun } from '../geometry/transform.js';
import type { Head } from '../vessel/head.js';
import type { Hoop } from '../vessel/hoop.js';
import type { Vessel } from '../vessel/vessel.js';
import { byHeight } from './edge-section.js';
import { pictureArcs } from './section-scale.js';

/** The stave cut through its middle: one closed curve, or one above and one below the bung hole. */
export function staveCut(vessel: Vessel, scale: number): Curve[] {
  const { profile, wall, spec } = vessel;
  const end = spec.height / 2;
  const run = (radius: (height: number) => number, from: number, to: number): Vertex[] =>
    pictureArcs(
      byHeight((y) => ({ x: radius(y), y })),
      from,
      to,
      scale,
    );
  const top = stoppedEnd(vessel, 'top', run);
  const bottom = stoppedEnd(vessel, 'bottom', run);
  const part = (from: number, to: number): Curve =>
    closedFrom([
      run(profile.radius, from, to),
      to === end ? top.run : [],
      run(wall.insideRadius, to === end ? top.inside : to, from === -end ? bottom.inside : from),
      from === -end ? reversedRun(bottom.run) : [],
    ]);
  if (!spec.bung) return [part(-end, end)];
  const half = spec.bung.diameter / 2;
  return [part(half, end), part(-end, -half)];
}

type Run = (radius: (height: number) => number, from: number, to: number) => Vertex[];

/** The worked end of a stave from the end plane inwards, and the height from which the plain inside runs on. */
function stoppedEnd(
  vessel: Vessel,
  end: 'top' | 'bottom',
  run: Run,
): { run: Vertex[]; inside: number } {
  const plane = ((end === 'top' ? 1 : -1) * vessel.spec.height) / 2;
  const head = vessel.heads[end];
  if (!head) return { run: [], inside: plane };
  const { chime, howelRadius, howelFrom, outerLip, innerLip, radius, howelTo } = head.groove;
  const corner = (x: number, y: number): Vertex => ({ x, y, bulge: 0 });
  const { vertices } = joinCurves([
    chime ? [corner(chime.endRadius, plane)] : [],
    run(howelRadius, howelFrom, outerLip),
    [corner(radius, outerLip), corner(radius, innerLip)],
    run(howelRadius, innerLip, howelTo),
  ]);
  return { run: [...vertices], inside: howelTo };
}

/** Half the head, cut across its boards, from the axis to the rim. */
export function headCut(head: Head): Curve {
  const { groove, insideFace, outsideFace, rim, section } = head;
  const wider = rim.across - rim.along;
  return polygon([
    { x: 0, y: insideFace },
    ...section.map(({ x, y }) => ({ x: x + wider, y: insideFace + groove.towardsEnd * y })),
    { x: 0, y: outsideFace },
  ]);
}

/** The joints between boards that the plane crosses, from face to face. */
export function jointCuts(head: Head): Curve[] {
  const { joints, insideFace, outsideFace, rim, spec } = head;
  const faces = rim.across - Math.max(spec.edge.innerBevel, spec.edge.outerBevel);
  return joints
    .filter((x) => x > 1 && x < faces)
    .map((x) => line({ x, y: insideFace }, { x, y: outsideFace }));
}

/** Dowels nearest to the plane, as far as they lie on this side of the axis. */
export function dowelsBehind({ dowels, joints, insideFace, outsideFace, spec }: Head): Curve[] {
  const { length, diameter } = spec.dowels;
  const middle = (insideFace + outsideFace) / 2;
  const dowelled = joints.filter((x, i) => x > -1 && dowels.some(({ joint }) => joint === i + 1));
  return dowelled.map((x) => {
    const [low, high] = [middle - diameter / 2, middle + diameter / 2];
    const [left, right] = [Math.max(0, x - length / 2), x + length / 2];
    return polygon([
      { x: left, y: low },
      { x: right, y: low },
      { x: right, y: high },
      { x: left, y: high },
    ]);
  });
}

/** The strap's four corners: near and far on the wood, far and near on its outer face. */
export function strapCorners(hoop: Hoop): readonly [Point, Point, Point, Point] {
  const { nearRadius, nearHeight, farRadius, farHeight, spec } = hoop;
  const length = Math.hypot(farRadius - nearRadius, farHeight - nearHeight);
  const out = (spec.thickness * Math.abs(farHeight - nearHeight)) / length;
  const up =
    (-spec.thickness * (farRadius - nearRadius) * Math.sign(farHeight - nearHeight)) / length;
  const moved = ({ x, y }: Point): Point => ({ x: x + out, y: y + up });
  const [near, far] = [
    { x: nearRadius, y: nearHeight },
    { x: farRadius, y: farHeight },
  ];
  return [near, far, moved(far), moved(near)];
}
