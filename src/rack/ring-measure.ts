/**
 * How well an order round the ring is chosen, as one number that is better when lower. Common practice, no source:
 *
 * - `unevenJoints` (mm): how far the joints stray, root mean square, from joints that divide the girth evenly. Small
 *   when wide and narrow take turns all the way round.
 * - `imbalance` (mm): the swing of width once round the ring, of wide staves on one side and narrow ones on the other
 *   (the first harmonic of the widths by azimuth). 0 when widths balance about the axis.
 * - `lowNeighbours` (mm): by how much the two neighbours of the bung stave fall short of the mean width.
 * - `narrowPairs`: pairs of neighbours that both belong to the narrowest quarter (staves narrower than the widest of the
 *   rest; of equal widths none counts).
 * - `jointsInLine`: stave joints less than `IN_LINE` from a joint of the head boards, each counted 1 when exactly in
 *   line and less the further off it is.
 *
 * The measure is the first two lengths, plus `FAULT` mm for each mm of low neighbours, each narrow pair and each joint
 * in line.
 */

/** Stave joints nearer than this to a head-board joint, along the girth, are in line with it, mm. */
export const IN_LINE = 6;
/** What one narrow pair, one joint in line, or one mm of low neighbours weighs, mm. */
export const FAULT = 10;

export interface RingMeasure {
  readonly unevenJoints: number;
  readonly imbalance: number;
  readonly lowNeighbours: number;
  readonly narrowPairs: number;
  readonly jointsInLine: number;
  /** all of it in one number */
  readonly measure: number;
}

/** What is the same for every order of one set. Angles in radians, lengths in mm. */
export interface RingFacts {
  /** by stave: after planing */
  readonly widths: readonly number[];
  /** by stave: sum to pi */
  readonly halfAngles: readonly number[];
  readonly diameter: number;
  readonly meanWidth: number;
  /** by stave: whether it is one of the narrowest quarter */
  readonly narrow: readonly boolean[];
  /** azimuths of head-board joints from the middle of the first stave, within a turn, ascending */
  readonly headJoints: readonly number[];
}

export function ringFacts(
  widths: readonly number[],
  halfAngles: readonly number[],
  diameter: number,
  headJoints: readonly number[],
): RingFacts {
  const ascending = [...widths].sort((a, b) => a - b);
  const limit = ascending[Math.floor(widths.length / 4)] ?? 0;
  const turn = 2 * Math.PI;
  return {
    widths,
    halfAngles,
    diameter,
    meanWidth: widths.reduce((sum, width) => sum + width, 0) / widths.length,
    narrow: widths.map((width) => width < limit),
    headJoints: headJoints.map((a) => ((a % turn) + turn) % turn).sort((a, b) => a - b),
  };
}

/** Measures an order: stave numbers, the bung stave first, its middle at azimuth 0. */
export function measureRing(facts: RingFacts, order: readonly number[]): RingMeasure {
  const { unevenJoints, imbalance, jointsInLine } = joints(facts, order);
  const n = order.length;
  let narrowPairs = 0;
  for (let i = 0; i < n; i++) narrowPairs += narrowPair(facts, order[i]!, order[(i + 1) % n]!);
  const lowNeighbours = shortOfMean(facts, order[1]!) + shortOfMean(facts, order[n - 1]!);
  const faults = lowNeighbours + narrowPairs + jointsInLine;
  const measure = unevenJoints + imbalance + FAULT * faults;
  return { unevenJoints, imbalance, lowNeighbours, narrowPairs, jointsInLine, measure };
}

/** By how much a stave falls short of the mean width. */
export function shortOfMean({ widths, meanWidth }: RingFacts, stave: number): number {
  // equal widths fall short of their own mean by rounding only
  const short = meanWidth - widths[stave]!;
  return short > 1e-9 ? short : 0;
}

/** Walks round the joints. The first one lies beyond the first half of the bung stave. */
function joints(facts: RingFacts, order: readonly number[]) {
  const { widths, halfAngles, meanWidth } = facts;
  const n = order.length;
  let azimuth = -halfAngles[order[0]!]!;
  let [strays, straysSquared, east, north, jointsInLine] = [0, 0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const half = halfAngles[order[i]!]!;
    const middle = azimuth + half;
    const over = widths[order[i]!]! - meanWidth;
    east += over * Math.sin(middle);
    north += over * Math.cos(middle);
    azimuth = middle + half;
    const stray = azimuth - ((2 * i + 1) * Math.PI) / n;
    strays += stray;
    straysSquared += stray * stray;
    if (facts.headJoints.length > 0) jointsInLine += inLine(facts, azimuth);
  }
  return {
    unevenJoints: unevenness(facts, n, strays, straysSquared),
    imbalance: imbalanceOf(n, east, north),
    jointsInLine,
  };
}

/** 1 for two of the narrowest quarter, else 0. */
export function narrowPair({ narrow }: RingFacts, stave: number, next: number): 0 | 1 {
  return narrow[stave] && narrow[next] ? 1 : 0;
}

/** How far `n` joints stray from even places, mm on the circle, by the sums of their strays, radians, and of the squares. */
export function unevenness(
  { diameter }: RingFacts,
  n: number,
  strays: number,
  straysSquared: number,
): number {
  const variance = straysSquared / n - (strays / n) ** 2;
  return (Math.sqrt(Math.max(0, variance)) * diameter) / 2;
}

/** By the sum over `n` staves of what each is wider than their mean, towards where it stands. */
export function imbalanceOf(n: number, east: number, north: number): number {
  return (2 / n) * Math.hypot(east, north);
}

/** 1 for a stave joint on a head-board joint, falling to 0 at `IN_LINE` from the nearest. */
export function inLine({ headJoints, diameter }: RingFacts, azimuth: number): number {
  const turn = 2 * Math.PI;
  const at = azimuth < 0 ? azimuth + turn : azimuth % turn;
  let nearest = Infinity;
  for (const joint of headJoints) {
    const apart = Math.abs(joint - at);
    nearest = Math.min(nearest, apart, turn - apart);
  }
  return Math.max(0, 1 - (nearest * diameter) / 2 / IN_LINE);
}
