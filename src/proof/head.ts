/** Holds a drawn head against the groove that the drawn staves give it: rim, joints, bevels and dowels. */
import type { Curve, Point } from '../geometry/curve.js';
import { boundsOf, signedArea } from '../geometry/measure.js';
import type { End } from '../spec/spec.js';
import { landBeyondGroove, type Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import type { Bending } from './bending.js';
import { samplesOf } from './contour.js';
import { judged, type Check, type Finding, type Place } from './finding.js';
import { dueGrooveHeight, grooveRadius, howelRadius } from './groove.js';
import type { Pattern } from './patterns.js';
import { tolerance } from './tolerance.js';

/** Half the diameter along and across the boards. */
export interface Round {
  readonly along: number;
  readonly across: number;
}

/** The rim of a head made for a groove that is cut at a height. */
export function dueRim(vessel: Vessel, bending: Bending, end: End, height: number): Round {
  const { clearance, crossGrain } = vessel.spec.heads[end]!;
  const along = grooveRadius(vessel, bending, end, height) - clearance / 2;
  return { along, across: along + crossGrain / 2 };
}

export const inset = ({ along, across }: Round, by: number): Round => ({
  along: along - by,
  across: across - by,
});

/** How far a point lies outside a round; near enough to square for one that is nearly a circle. */
export function outside({ along, across }: Round, { x, y }: Point): number {
  const share = Math.hypot(x / along, y / across);
  return ((share - 1) * Math.hypot(x, y)) / share;
}

export function checkHead(
  vessel: Vessel,
  pattern: Pattern,
  end: End,
  grooveHeight: number,
  bending: Bending,
): Finding[] {
  const { file } = pattern;
  const head = vessel.heads[end]!;
  const rims = [...pattern.curves('outline')].sort((a, b) => area(b) - area(a));
  const [rim] = rims;
  const count = counted('head-contour', file, { end }, rims.length, 1);
  if (!rim) return [count];
  const round = dueRim(vessel, bending, end, grooveHeight);
  const offs = samplesOf(rim).map(({ point }) => outside(round, point));
  return [
    count,
    mostOff('head-rim', file, { end }, offs),
    judged(
      'head-fit',
      file,
      { end },
      {
        measured: 2 * Math.sqrt(area(rim) / Math.PI),
        expected: 2 * Math.sqrt(round.along * round.across),
        tolerance: tolerance.head,
      },
    ),
    ...checkJoints(head, pattern, end, round),
    ...checkBevels(vessel, head, pattern, end, round, bending),
    ...checkDowels(head, pattern, end),
  ];
}

const area = (curve: Curve): number => Math.abs(signedArea(curve));

export function counted(
  check: Check,
  file: string,
  place: Place,
  measured: number,
  expected: number,
): Finding {
  return judged(check, file, place, { measured, expected, tolerance: 0, unit: 'count' });
}

export function mostOff(
  check: Check,
  file: string,
  place: Place,
  offs: readonly number[],
): Finding {
  const measured =
    offs.length === 0 ? NaN : offs.reduce((a, b) => (Math.abs(b) <= Math.abs(a) ? a : b));
  return judged(check, file, place, { measured, expected: 0, tolerance: tolerance.head });
}

function checkJoints({ joints }: Head, pattern: Pattern, end: End, round: Round): Finding[] {
  const drawn = pattern.curves('joint').map(({ vertices }) => vertices);
  const offs = joints.map((y, i) => {
    const half = round.along * Math.sqrt(Math.max(0, 1 - (y / round.across) ** 2));
    const ends = [-half, half].map((x) => ({ x, y }));
    const off = drawn.map((vertices) =>
      Math.max(...ends.map((due) => Math.min(...vertices.map((each) => far(each, due))))),
    );
    const place = { end, number: i + 1 };
    return mostOff('head-joint', pattern.file, place, off.length > 0 ? [Math.min(...off)] : []);
  });
  const part = { end, part: 'count' };
  return [counted('head-joint', pattern.file, part, drawn.length, joints.length), ...offs];
}

const far = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Where land and bevels end, by their distances from the rim. */
function checkBevels(
  vessel: Vessel,
  { spec }: Head,
  pattern: Pattern,
  end: End,
  round: Round,
  bending: Bending,
): Finding[] {
  const { outerBevel, innerBevel } = spec.edge;
  const widths = { outerBevel, innerBevel, land: landDepth(vessel, end, bending) };
  const rings = pattern.curves('bevel').map((curve) => samplesOf(curve).map(({ point }) => point));
  return Object.entries(widths).map(([part, width]) => {
    const offs = rings.map((points) => {
      const each = points.map((point) => outside(inset(round, width), point));
      return each.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
    });
    const best =
      offs.length > 0 ? [offs.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a))] : [];
    return mostOff('head-bevel', pattern.file, { end, part }, best);
  });
}

/** As deep as the groove at its deeper lip, and a little more. */
export function landDepth(vessel: Vessel, end: End, bending: Bending): number {
  const { croze } = vessel.spec.heads[end]!;
  const middle = dueGrooveHeight(vessel, end);
  const lips = [-1, 1].map((side) =>
    howelRadius(vessel, bending, middle + (side * croze.width) / 2),
  );
  return grooveRadius(vessel, bending, end, middle) - Math.min(...lips) + landBeyondGroove;
}

function checkDowels({ dowels, spec }: Head, pattern: Pattern, end: End): Finding[] {
  const { diameter, length } = spec.dowels;
  const boxes = pattern.curves('bore').flatMap((curve) => boundsOf(curve) ?? []);
  const offs = dowels.map(({ x, y }) => {
    const due = [x - diameter / 2, y - length / 2, x + diameter / 2, y + length / 2];
    return nearestBox(boxes, due);
  });
  const count = counted(
    'head-dowel',
    pattern.file,
    { end, part: 'count' },
    boxes.length,
    dowels.length,
  );
  return dowels.length === 0
    ? [count]
    : [count, mostOff('head-dowel', pattern.file, { end }, offs)];
}

type Box = NonNullable<ReturnType<typeof boundsOf>>;

/** The greatest difference of a side from where it is due, for the box that comes nearest to that. */
export function nearestBox(boxes: readonly Box[], due: readonly number[]): number {
  const offs = boxes.map((box) => {
    const sides = [box.minX, box.minY, box.maxX, box.maxY];
    return Math.max(...sides.map((side, i) => Math.abs(side - due[i]!)));
  });
  return offs.length > 0 ? Math.min(...offs) : NaN;
}
