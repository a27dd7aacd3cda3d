/**
 * Sets the bent staves in a ring and measures between them. Each stands with its middle plane on its nominal azimuth and its
 * outer face on the profile; the bevel is straight from face to face. Lengths in mm.
 */
import type { Vessel } from '../vessel/vessel.js';
import type { Bending, Section } from './bending.js';
import { judged, worst, type Finding, type Place, type Side } from './finding.js';
import type { DrawnStave } from './stave.js';
import { tolerance } from './tolerance.js';

interface Joint {
  /** number of the stave before the joint, from 1; 0 where all joints are alike */
  readonly number: number;
  readonly before: DrawnStave;
  readonly after: DrawnStave;
}

export interface GapPoint {
  readonly station: number;
  /** at the outer face, at the inner face, and at its worst in between; positive is open */
  readonly outer: number;
  readonly inner: number;
  readonly worst: number;
}

export interface MeasuredJoint extends Joint {
  /** close enough together to draw */
  readonly gaps: readonly GapPoint[];
}

export interface JointGaps {
  readonly files: readonly string[];
  readonly gaps: readonly GapPoint[];
}

/** Parts of the blank's thickness at which a joint is measured. */
const depths = [0, 0.25, 0.5, 0.75, 1] as const;
/** Places along a joint that are looked at beside the stations, about every 5 mm on a cask. */
const fine = 200;

/** Equal staves have but one kind of joint. */
function jointsOf(ring: readonly DrawnStave[]): Joint[] {
  const [first] = ring;
  if (!first) return [];
  if (ring.every((stave) => stave === first)) return [{ number: 0, before: first, after: first }];
  return ring.map((before, i) => ({ number: i + 1, before, after: ring[(i + 1) % ring.length]! }));
}

function gapAt({ before, after }: Joint, station: number, bending: Bending): GapPoint {
  const section = bending.sectionAtStation(station);
  if (!section) return { station, outer: NaN, inner: NaN, worst: NaN };
  const [one, other] = [
    standOff(before, 'upper', station, section),
    standOff(after, 'lower', station, section),
  ];
  const gaps = depths.map((part) => one(part) + other(part));
  const worst = gaps.reduce((a, b) => (Math.abs(b) <= Math.abs(a) ? a : b));
  return { station, outer: gaps[0]!, inner: gaps.at(-1)!, worst };
}

/**
 * From the joint plane, which goes through the axis, to a point of the stave's joint; positive where it falls short. The
 * point lies at a part of the blank's thickness, on the straight line from face to face.
 */
function standOff(
  { due, halfWidth }: DrawnStave,
  side: Side,
  station: number,
  section: Section,
): (part: number) => number {
  const [outer, inner] = [halfWidth('outer', side, station), halfWidth('inner', side, station)];
  const depth = due.depth(section, 'inner');
  return (part) =>
    (section.r - part * depth * section.cos) * Math.sin(due.alpha) -
    ((1 - part) * outer + part * inner) * Math.cos(due.alpha);
}

/** Every joint of the ring, with its gaps all along it. */
export function measureJoints(ring: readonly DrawnStave[], bending: Bending): MeasuredJoint[] {
  return jointsOf(ring).map((joint) => {
    const { from, to } = reachOf([joint.before, joint.after]);
    const places = Array.from({ length: fine + 1 }, (_, i) => from + ((to - from) * i) / fine);
    return { ...joint, gaps: places.map((station) => gapAt(joint, station, bending)) };
  });
}

/** The joint that is furthest from closed anywhere. */
export function worstJoint(joints: readonly MeasuredJoint[]): JointGaps {
  const most = ({ gaps }: MeasuredJoint): number =>
    gaps.reduce((sum, { worst: gap }) => Math.max(sum, Math.abs(gap)), 0);
  const found = joints.reduce((a, b) => (most(b) > most(a) ? b : a));
  return { files: filesOf(found), gaps: found.gaps };
}

const filesOf = ({ before, after }: Joint): string[] => [...new Set([before.file, after.file])];

/** A hair inside the drawn ends, where every face has its edges. */
function reachOf(staves: readonly DrawnStave[]): { from: number; to: number } {
  const hair = 1e-6;
  return {
    from: Math.max(...staves.map(({ from }) => from)) + hair,
    to: Math.min(...staves.map(({ to }) => to)) - hair,
  };
}

export function checkRing(
  vessel: Vessel,
  ring: readonly DrawnStave[],
  joints: readonly MeasuredJoint[],
  stations: readonly number[],
  bending: Bending,
): Finding[] {
  const reach = reachOf(ring);
  const places = stations.map((station) => Math.min(reach.to, Math.max(reach.from, station)));
  const gaps = places.map((station) =>
    worst(joints.map((joint) => gapFinding(joint, gapAt(joint, station, bending)))),
  );
  const between = worst(
    joints.flatMap((joint) => joint.gaps.map((gap) => gapFinding(joint, gap, 'between'))),
  );
  return [...gaps, between, ...checkGirths(vessel, ring, places, bending)];
}

function gapFinding(joint: Joint, gap: GapPoint, part?: string): Finding {
  const { number } = joint;
  const place: Place = {
    station: gap.station,
    ...(number > 0 && { stave: number }),
    ...(part !== undefined && { part }),
  };
  return judged('joint-gap', filesOf(joint), place, {
    measured: gap.worst,
    expected: 0,
    tolerance: tolerance.joint,
  });
}

/** Round the flat outer faces, and whether the angles that the staves fill make one whole turn. */
function checkGirths(
  vessel: Vessel,
  ring: readonly DrawnStave[],
  places: readonly number[],
  bending: Bending,
): Finding[] {
  const files = [...new Set(ring.map(({ file }) => file))];
  const allowed = ring.length * tolerance.joint;
  const tangents = vessel.ring.alphas.reduce((sum, alpha) => sum + Math.tan(alpha), 0);
  const measured = places.map((station) => {
    const r = bending.sectionAtStation(station)?.r ?? NaN;
    const halves = ring.flatMap(({ halfWidth }) =>
      (['upper', 'lower'] as const).map((side) => halfWidth('outer', side, station)),
    );
    const girth = halves.reduce((sum, half) => sum + half, 0);
    const angle = halves.reduce((sum, half) => sum + Math.atan(half / r), 0);
    return { station, r, girth, angle };
  });
  const girths = measured.map(({ station, girth, r }) =>
    judged(
      'girth',
      files,
      { station },
      {
        measured: girth,
        expected: 2 * r * tangents,
        tolerance: allowed,
      },
    ),
  );
  const closures = measured.map(({ station, angle, r }) =>
    judged(
      'closure',
      files,
      { station },
      {
        measured: (angle - 2 * Math.PI) * r,
        expected: 0,
        tolerance: allowed,
      },
    ),
  );
  return [...girths, worst(closures)];
}
