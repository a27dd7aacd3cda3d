/** A broken stave of a chosen set, and the stave that takes its place. Knows nothing of the page. */
import {
  requestFor,
  swapInSet,
  withReplacement,
  type MatchRequest,
  type Replacement,
  type StockStave,
  type Swap,
} from '../../index.js';
import { vesselFor, type Chosen } from './chosen.js';

/** Which stave of which set, both from 1. */
export interface Place {
  readonly number: number;
  readonly place: number;
}

/** Null where the set is no vessel any more. */
export function swapFor(
  chosen: Chosen,
  { number, place }: Place,
  staves: readonly StockStave[],
): Swap | null {
  const set = chosen.result.sets[number - 1];
  const request = requestOf(chosen);
  if (!set || !request) return null;
  return swapInSet(set, place - 1, sparesOf(chosen, staves), request);
}

/** What was asked for; of sets that an older page kept, what is usual. */
export function requestOf(chosen: Chosen): MatchRequest | null {
  const vessel = vesselFor(chosen);
  return vessel && requestFor(vessel, chosen.wishes ?? { measured: chosen.measured });
}

/** What lies on the rack and belongs to no set. */
function sparesOf({ result }: Chosen, staves: readonly StockStave[]): StockStave[] {
  const used = new Set(result.sets.flatMap((set) => set.staves.map(({ mark }) => mark)));
  return staves.filter(({ mark }) => !used.has(mark));
}

/** The sets with the replacement in its place, yet to be set up. */
export function replaced(
  chosen: Chosen,
  { number, place }: Place,
  replacement: Replacement,
): Chosen {
  const { sets, left } = chosen.result;
  const request = requestOf(chosen);
  const set = sets[number - 1];
  const gone = set?.staves[place - 1]?.mark;
  if (!request || !set || gone === undefined) return chosen;
  const mended = withReplacement(set, place - 1, replacement, request);
  return {
    ...chosen,
    result: {
      ...chosen.result,
      sets: sets.map((each) => (each === set ? mended : each)),
      left: left.filter((mark) => mark !== replacement.mark),
    },
    setUp: chosen.setUp.filter((mark) => mark !== gone),
  };
}
