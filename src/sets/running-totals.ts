/** What a set measures on the bench, stave by stave. */
import type { MatchedSet } from '../rack/request.js';

/** Width of all staves up to each one, planed and laid edge to edge, in setting order, mm. */
export function runningTotals({ staves }: MatchedSet): number[] {
  let total = 0;
  return staves.map(({ width, planeOff }) => (total += width - planeOff));
}

/** Decimals of a millimetre that show its widths and what is planed off as they are: 1, or 2 where a width needs it. */
export function decimalsOf({ staves }: MatchedSet): 1 | 2 {
  const onTenth = (mm: number): boolean => Math.abs(mm * 10 - Math.round(mm * 10)) < 1e-6;
  return staves.every(({ width, planeOff }) => onTenth(width) && onTenth(planeOff)) ? 1 : 2;
}
