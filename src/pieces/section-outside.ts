/** The vessel seen from outside, left of its axis, in full size: outline, ends, hoops, joints between the hoops. */
import type { Curve, Point } from '../geometry/curve.js';
import { line, polyline } from '../geometry/curve.js';
import { mirrorX } from '../geometry/transform.js';
import type { Vessel } from '../vessel/vessel.js';
import { byHeight } from './edge-section.js';
import { strapCorners } from './section-cut.js';
import { pictureArcs } from './section-scale.js';

/** Shorter stretches of wood than this between two hoops are not drawn, mm. */
const shortest = 1;

/** The index of the stave that the section goes through: the widest, which takes the bung. */
export function cutStave({ staves }: Vessel): number {
  const widest = Math.max(...staves.map(({ alpha }) => alpha));
  return staves.findIndex(({ alpha }) => alpha > widest - 1e-9);
}

/** Edges seen: the sides between the hoops, both end planes, the hoops. */
export function seenEdges(vessel: Vessel, scale: number): Curve[] {
  const { profile, spec, hoops } = vessel;
  const side = bareHeights(vessel).map(([from, to]) => lineAt(vessel, 1, from, to, scale));
  const ends = [spec.height / 2, -spec.height / 2].map((y) =>
    line({ x: profile.radius(y), y }, { x: 0, y }),
  );
  const straps = hoops.map((hoop) => {
    const [, , far, near] = strapCorners(hoop);
    const inwards = ({ y }: Point): Point => ({ x: 0, y });
    return polyline([inwards(near), near, far, inwards(far)]);
  });
  return [...side, ...ends, ...straps].map(mirrorX);
}

/** Joints between staves on the near side, from the axis (in front) to the left edge. */
export function seenJoints(vessel: Vessel, scale: number): Curve[] {
  const shares = jointAzimuths(vessel)
    .map(Math.cos)
    .filter((share) => share < -0.01 && share > -0.999);
  return bareHeights(vessel).flatMap(([from, to]) =>
    shares.map((share) => mirrorX(lineAt(vessel, -share, from, to, scale))),
  );
}

/** Azimuths of the joints in front, from the middle of the stave that is cut (on the right, 0) round to the left. */
function jointAzimuths(vessel: Vessel): number[] {
  const { staves } = vessel;
  const first = cutStave(vessel);
  const ordered = [...staves.slice(first), ...staves.slice(0, first)];
  let azimuth = -ordered[0]!.alpha;
  return ordered.map(({ alpha }) => (azimuth += 2 * alpha)).filter((each) => each < Math.PI);
}

function lineAt(
  { profile }: Vessel,
  share: number,
  from: number,
  to: number,
  scale: number,
): Curve {
  const curve = byHeight((y) => ({ x: share * profile.radius(y), y }));
  return { closed: false, vertices: pictureArcs(curve, from, to, scale) };
}

/** Heights between which no hoop covers the wood, from the bottom upwards. */
function bareHeights({ hoops, spec }: Vessel): [number, number][] {
  const end = spec.height / 2;
  const covered = hoops
    .map(({ nearHeight, farHeight }) => [nearHeight, farHeight].sort((a, b) => a - b))
    .sort((a, b) => a[0]! - b[0]!);
  const starts = [-end, ...covered.map(([, high]) => high!)];
  const stops = [...covered.map(([low]) => low!), end];
  return starts
    .map((from, i): [number, number] => [from, stops[i]!])
    .filter(([from, to]) => to - from > shortest);
}
