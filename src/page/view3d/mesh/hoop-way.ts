/** The way of a hoop round the vessel: round, or from corner to corner along flat faces. Seen from the top, anticlockwise. */
import type { Vessel } from '../../../index.js';

const facets = 96;
const round = 2 * Math.PI;
/** A bend nearer than this to either end, radians, is that end. */
const hair = 1e-6;

export interface HoopWay {
  /** azimuths at which the strap bends, from one on, for as many turns as are wanted */
  bends(from: number, to: number): number[];
  /** how far out the strap lies at an azimuth, as a share of the radius to the middle of a face */
  stretch(azimuth: number): number;
  /** where one is after a length of strap whose inside radius is `radius` */
  after(from: number, length: number, radius: number): number;
}

export function hoopWay({ spec, ring }: Vessel): HoopWay {
  return spec.staves.outside === 'flat' ? alongFaces(ring.alphas) : roundAbout();
}

function roundAbout(): HoopWay {
  const step = round / facets;
  return {
    bends: (from, to) => {
      const first = Math.floor((from + hair) / step) + 1;
      const beyond = Math.ceil((to - hair) / step);
      return Array.from({ length: Math.max(0, beyond - first) }, (_, i) => (first + i) * step);
    },
    stretch: () => 1,
    after: (from, length, radius) => from + length / radius,
  };
}

interface Corner {
  readonly azimuth: number;
  readonly stretch: number;
}

/** At each joint, at the corner that stands out further. Staves follow one another clockwise. */
function alongFaces(alphas: readonly number[]): HoopWay {
  const corners = cornersOf(alphas);
  const azimuths = corners.map(({ azimuth }) => azimuth);
  const stretch = (azimuth: number): number => {
    const turned = within(azimuth, azimuths[0]!);
    const next = corners.findIndex((corner) => corner.azimuth > turned);
    const to = next < 0 ? { ...corners[0]!, azimuth: corners[0]!.azimuth + round } : corners[next]!;
    const from = corners[next < 0 ? corners.length - 1 : next - 1]!;
    // where a ray from the axis meets the straight line between both corners
    const [before, behind] = [turned - from.azimuth, to.azimuth - turned];
    return (
      (from.stretch * to.stretch * Math.sin(before + behind)) /
      (from.stretch * Math.sin(before) + to.stretch * Math.sin(behind))
    );
  };
  const after = (from: number, length: number, radius: number): number => {
    let [here, left] = [from, length / radius];
    for (const bend of [...bendsBetween(azimuths, from, from + round), from + round]) {
      const chord = chordBetween(stretch(here), stretch(bend), bend - here);
      if (chord >= left)
        return here + turnFor(stretch(here), stretch(bend), bend - here, left / chord);
      [here, left] = [bend, left - chord];
    }
    return here;
  };
  return { bends: (from, to) => bendsBetween(azimuths, from, to), stretch, after };
}

function cornersOf(alphas: readonly number[]): Corner[] {
  let azimuth = alphas[0]!;
  const clockwise = alphas.map((alpha, i) => {
    const corner = { azimuth, stretch: 1 / Math.cos(Math.max(alphas.at(i - 1)!, alpha)) };
    azimuth -= 2 * alpha;
    return corner;
  });
  return clockwise.reverse();
}

/** The same azimuth in the turn that begins at `least`. */
const within = (azimuth: number, least: number): number =>
  azimuth - round * Math.floor((azimuth - least) / round);

/** All bends, those of every turn, strictly between two azimuths. */
function bendsBetween(azimuths: readonly number[], from: number, to: number): number[] {
  const turns = Math.ceil((to - from) / round) + 1;
  return Array.from({ length: turns }, (_, k) => k * round)
    .flatMap((turn) => azimuths.map((azimuth) => within(azimuth, from) + turn))
    .filter((azimuth) => azimuth > from + hair && azimuth < to - hair)
    .sort((a, b) => a - b);
}

/** By the cosine rule. */
const chordBetween = (a: number, b: number, turn: number): number =>
  Math.sqrt(a * a + b * b - 2 * a * b * Math.cos(turn));

/** The turn from `a` to a share of the straight line that ends at `b`. */
function turnFor(a: number, b: number, turn: number, share: number): number {
  const along = a + share * (b * Math.cos(turn) - a);
  return Math.atan2(share * b * Math.sin(turn), along);
}
