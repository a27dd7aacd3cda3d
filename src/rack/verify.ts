/**
 * Checks an answer by its own arithmetic: nothing here is shared with the search. Angles come from the circle itself
 * (a stave's corners as points, the angle between them), not from the closing formula.
 */

import type { MatchRequest, MatchResult, MatchedSet } from './request.js';
import type { Stock } from './stock.js';

/** What is wrong with an answer: a sentence for us, since it would be our own fault. */
export type Flaw = string;

/** Rounding that an honest answer may carry, mm. */
const SLACK = 1e-6;

/** Every flaw found; empty when the answer keeps to the request. */
export function verifyMatch(stock: Stock, request: MatchRequest, result: MatchResult): Flaw[] {
  const flaws: Flaw[] = [];
  const byMark = new Map(stock.staves.map((stave) => [stave.mark, stave]));
  const seen = new Map<string, number>();
  for (const [number, set] of result.sets.entries()) {
    for (const flaw of flawsOf(set, request)) flaws.push(`set ${number + 1}: ${flaw}`);
    for (const { mark, width } of set.staves) {
      if (byMark.get(mark)?.width !== width)
        flaws.push(`set ${number + 1}: ${mark} isn't on the rack`);
      if (seen.has(mark)) flaws.push(`${mark} is in sets ${seen.get(mark)! + 1} and ${number + 1}`);
      seen.set(mark, number);
    }
  }
  for (const mark of result.left) if (seen.has(mark)) flaws.push(`${mark} is used and left`);
  if (seen.size + result.left.length !== stock.staves.length) flaws.push('staves are missing');
  const standing = request.standing ?? [];
  if (result.sets.length > 0 && standing.some((mark) => seen.get(mark) !== 0))
    flaws.push('a standing stave is not in the first set');
  if (result.sets.length > result.upperBound) flaws.push('more sets than the bound');
  return flaws;
}

function flawsOf(set: MatchedSet, request: MatchRequest): string[] {
  const { diameter, tolerance, plane, count, bung, measured } = request;
  const flaws: string[] = [];
  const widths = set.staves.map(({ width, planeOff }) => width - planeOff);
  const planed = set.staves.reduce((total, { planeOff }) => total + planeOff, 0);
  if (set.count !== widths.length) flaws.push('its count is not its staves');
  if (widths.length < count.min || widths.length > count.max) flaws.push('count out of range');
  if (set.staves.some(({ planeOff }) => planeOff < 0) || planed > plane + SLACK)
    flaws.push(`${planed} mm planed`);
  if (Math.abs(set.closesAt - diameter) > tolerance + SLACK)
    flaws.push(`closes at ${set.closesAt}`);
  // the ring at `closesAt` turns once: a hair smaller it turns by more, a hair larger by less
  if (!(turnOf(widths, set.closesAt - SLACK, measured) > 1)) flaws.push('closes smaller than told');
  if (!(turnOf(widths, set.closesAt + SLACK, measured) < 1)) flaws.push('closes larger than told');
  const laid = widths.reduce((total, width) => total + width, 0);
  if (Math.abs(laid - set.laidWidth) > SLACK) flaws.push('laid width is not the sum of its widths');
  if (bung !== null) {
    const top = set.staves[0];
    if (top?.mark !== set.bungStave) flaws.push('the bung stave is not at the top');
    if (!top || top.width - top.planeOff < bung) flaws.push('the bung stave is narrow');
  }
  return flaws;
}

/** How many turns staves make side by side round a circle, each turned on from the last as a point is turned. */
function turnOf(widths: readonly number[], diameter: number, measured: string): number {
  const radius = diameter / 2;
  let turn = 0;
  for (const width of widths) {
    // from the middle of the stave to its corner, seen from the axis
    const across = width / 2;
    const out = measured === 'blank' ? radius : Math.sqrt(radius * radius - across * across);
    turn += (2 * Math.atan2(across, out)) / (2 * Math.PI);
  }
  return turn;
}
