/** One broken stave of a chosen set, whose staves stand as they were planed. */
import { halfAngle } from '../rack/closing.js';
import type { MatchRequest, MatchedSet } from '../rack/request.js';
import { measureRing, ringFacts } from '../rack/ring-measure.js';
import type { StockStave } from '../rack/stock.js';
import { sum } from '../rack/sum.js';
import { swapStave, type Replacement, type Swap } from './swap.js';

/** What takes the place of the stave at `broken`, from 0, as `swapStave` finds it. */
export function swapInSet(
  set: MatchedSet,
  broken: number,
  spares: readonly StockStave[],
  request: MatchRequest,
): Swap | null {
  const ring = set.staves.map(({ mark, width, planeOff }) => ({ mark, width: width - planeOff }));
  const isBungStave = set.bungStave !== null && set.bungStave === ring[broken]?.mark;
  return swapStave({ ring, broken, spares, request, isBungStave });
}

/** The set with a replacement at that place; the others keep theirs. */
export function withReplacement(
  set: MatchedSet,
  broken: number,
  { mark, width, planeOff, closesAt }: Replacement,
  { measured, headJoints }: Pick<MatchRequest, 'measured' | 'headJoints'>,
): MatchedSet {
  const gone = set.staves[broken]!.mark;
  const staves = set.staves.map((stave, i) => (i === broken ? { mark, width, planeOff } : stave));
  const widths = staves.map((stave) => stave.width - stave.planeOff);
  const angles = widths.map((each) => halfAngle(each, closesAt, measured));
  const ring = measureRing(ringFacts(widths, angles, closesAt, headJoints ?? []), [
    ...widths.keys(),
  ]);
  return {
    ...set,
    staves,
    closesAt,
    bungStave: set.bungStave === gone ? mark : set.bungStave,
    ringMeasure: ring.measure,
    ring,
    laidWidth: sum(widths),
    cures: set.cures.filter(({ takeOut, putIn }) => takeOut !== gone && putIn !== mark),
  };
}
