/** A set without a search: staves of given widths in the order given, closed by bisection. */
import type { MatchedSet } from '../../src/rack/request.js';

const ring = {
  unevenJoints: 3.1,
  imbalance: 0.2,
  lowNeighbours: 0,
  narrowPairs: 0,
  jointsInLine: 0.4,
  measure: 7.3,
};

/** The diameter for which the half-angles sum to pi, independent of the product's solver. */
export function closing(widths: readonly number[]): number {
  let [low, high] = [1, widths.reduce((sum, width) => sum + width, 0)];
  for (let turn = 0; turn < 200; turn++) {
    const middle = (low + high) / 2;
    const turned = widths.reduce((sum, width) => sum + Math.atan(width / middle), 0);
    if (turned > Math.PI) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export function setOf(
  widths: readonly number[],
  more: { marks?: readonly string[]; planeOff?: readonly number[] } & Partial<MatchedSet> = {},
): MatchedSet {
  const { marks, planeOff, ...rest } = more;
  const staves = widths.map((width, i) => ({
    mark: marks?.[i] ?? `A${i + 1}`,
    width,
    planeOff: planeOff?.[i] ?? 0,
  }));
  const planed = staves.map(({ width, planeOff: off }) => width - off);
  return {
    staves,
    closesAt: closing(planed),
    count: widths.length,
    bungStave: staves[0]!.mark,
    ringMeasure: ring.measure,
    ring,
    laidWidth: planed.reduce((sum, width) => sum + width, 0),
    standardDeviation: 0.25,
    cures: [],
    ...rest,
  };
}

/** 28 uneven widths that close near 678 mm, the bung stave first. */
export const caskWidths: readonly number[] = [
  ...[96, 78, 62, 84.5, 70, 76.25, 74],
  ...[81, 68, 79.5, 73, 77.5, 71, 83],
  ...[69.5, 80, 72, 78.5, 70.5, 82, 74.5],
  ...[75, 79, 66, 86, 73.5, 76, 79.25],
];
