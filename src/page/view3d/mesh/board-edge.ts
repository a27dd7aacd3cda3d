/**
 * The edge of a head, cut along a line `y` across its boards: half the board's length there at each height above the inside
 * face. A bevel is a cone, which such a cut meets in a curve; so it is taken in several narrower cones.
 */
import type { Vessel } from '../../../index.js';
import type { ChainPlace } from './chain.js';

type Head = Vessel['heads']['bottom'];

/** Cones to a bevel, and the furthest that lines round the rim are apart, radians. */
const cones = 6;
const widestStep = 0.1;
/** Lines nearer than this are one, mm. */
const hair = 1e-6;

export interface BoardEdge {
  /** corners from the inside face over the rim to the outside face; as many at each line */
  at(y: number): ChainPlace[];
  /** which corners are of one smooth surface: lower bevel, step, rim, step, upper bevel */
  readonly surfaces: readonly (readonly [from: number, to: number])[];
  /** lines from one joint to the next, near enough together */
  lines(from: number, to: number): number[];
}

interface Corner {
  /** distance from the axis along the boards, and across them */
  readonly along: number;
  readonly across: number;
  readonly height: number;
}

export function boardEdge({ rim, section }: Head): BoardEdge {
  const corner = (x: number, height: number): Corner => ({
    along: x,
    across: rim.across - (rim.along - x),
    height,
  });
  const corners = section.flatMap(({ x, y }, i) => {
    const next = section[i + 1];
    const parts = i === 0 || i === section.length - 2 ? cones : 1;
    const share = (k: number): number => k / parts;
    return next
      ? Array.from({ length: parts }, (_, k) =>
          corner(x + share(k) * (next.x - x), y + share(k) * (next.y - y)),
        )
      : [corner(x, y)];
  });
  const last = corners.length - 1;
  const rimFrom = cones + 1;
  return {
    at: (y) => corners.map((_, i) => cornerAt(corners, i, Math.abs(y))),
    surfaces: [
      [0, cones],
      [cones, rimFrom],
      [rimFrom, rimFrom + 1],
      [rimFrom + 1, rimFrom + 2],
      [rimFrom + 2, last],
    ],
    lines: (from, to) => linesAcross(corners, rim.across, from, to),
  };
}

function cornerAt(corners: readonly Corner[], i: number, y: number): ChainPlace {
  const { along, across, height } = corners[i]!;
  if (y < across) return { radius: along * Math.sqrt(1 - (y / across) ** 2), height };
  // beyond this corner's own circle the board ends where the bevel is as far out as the line
  return { radius: 0, height: heightOnBevel(corners, i, y) };
}

function heightOnBevel(corners: readonly Corner[], from: number, y: number): number {
  const towardsRim = from < corners.length / 2 ? 1 : -1;
  let here = corners[from]!;
  for (let k = from + towardsRim; ; k += towardsRim) {
    const next = corners[k];
    if (!next || next.across <= here.across) return here.height;
    if (next.across >= y) {
      const share = (y - here.across) / (next.across - here.across);
      return here.height + share * (next.height - here.height);
    }
    here = next;
  }
}

/** Even steps round the rim, and where one of the corners runs out. */
function linesAcross(
  corners: readonly Corner[],
  reach: number,
  from: number,
  to: number,
): number[] {
  const turn = (y: number): number => Math.asin(Math.max(-1, Math.min(1, y / reach)));
  const [low, high] = [turn(from), turn(to)];
  const steps = Math.max(2, Math.ceil((high - low) / widestStep));
  const even = Array.from(
    { length: steps },
    (_, i) => reach * Math.sin(low + (i / steps) * (high - low)),
  );
  const ends = corners.flatMap(({ across }) => [across, -across]);
  const inner = [...even, ...ends]
    .filter((y) => y > from + hair && y < to - hair)
    .sort((a, b) => a - b);
  return [from, ...new Set(inner), to];
}
