/** Whether a request makes sense for this stock: everything that is wrong with it, as data. */

import type { MatchRequest } from './request.js';
import type { Stock } from './stock.js';

export type RequestCode =
  | 'diameter'
  | 'vessels'
  | 'count-whole'
  | 'count-few'
  | 'count-order'
  | 'tolerance'
  | 'plane'
  | 'bung'
  | 'standing-unknown'
  | 'standing-doubled'
  | 'standing-many';

export interface RequestIssue {
  readonly code: RequestCode;
  /** the number or mark at fault */
  readonly found: string;
  /** what it may be, as a number or a range; '' when that goes without saying */
  readonly allowed: string;
}

/** No ring has fewer staves. */
export const FEWEST_STAVES = 3;
/** No ring has more: beyond this a count is a slip of the keyboard. */
const MOST_STAVES = 400;
/** A tolerance of more than this share of the diameter is a slip too: it would let the count change at will. */
const WIDEST_TOLERANCE = 0.1;
/** More planing than this share of the girth is a slip: no set of staves is that far out. */
const MOST_PLANING = 0.1;

/** All that is wrong; empty when the request can be tried. */
export function checkRequest(stock: Stock, request: MatchRequest): readonly RequestIssue[] {
  return [
    ...checkNumbers(request),
    ...checkCount(request.count),
    ...checkStanding(stock, request.standing ?? [], request.count.max),
  ];
}

function checkNumbers(request: MatchRequest): RequestIssue[] {
  const { diameter, vessels, tolerance, plane, bung } = request;
  if (!(diameter > 0 && diameter < Infinity)) return [issue('diameter', diameter, '> 0')];
  const mostTolerance = WIDEST_TOLERANCE * diameter;
  const mostPlaning = MOST_PLANING * Math.PI * diameter;
  const issues: RequestIssue[] = [];
  if (vessels !== 'max' && !(Number.isSafeInteger(vessels) && vessels >= 1))
    issues.push(issue('vessels', vessels, '>= 1'));
  if (!within(tolerance, mostTolerance))
    issues.push(issue('tolerance', tolerance, `0-${Math.floor(mostTolerance)}`));
  if (!within(plane, mostPlaning))
    issues.push(issue('plane', plane, `0-${Math.floor(mostPlaning)}`));
  if (bung !== null && !(bung > 0 && bung < diameter))
    issues.push(issue('bung', bung, `> 0, < ${Math.round(diameter)}`));
  return issues;
}

function checkCount({ min, max }: MatchRequest['count']): RequestIssue[] {
  const allowed = `${FEWEST_STAVES}-${MOST_STAVES}`;
  const odd = [min, max].filter((count) => !Number.isInteger(count));
  if (odd.length > 0) return odd.map((count) => issue('count-whole', count, allowed));
  if (min > max) return [issue('count-order', `${min}-${max}`, '')];
  const out = [min, max].filter((count) => count < FEWEST_STAVES || count > MOST_STAVES);
  return [...new Set(out)].map((count) => issue('count-few', count, allowed));
}

function checkStanding(stock: Stock, standing: readonly string[], most: number): RequestIssue[] {
  const known = new Set(stock.staves.map(({ mark }) => mark));
  const issues: RequestIssue[] = [];
  const unknown = standing.filter((mark) => !known.has(mark));
  const doubled = standing.filter((mark, i) => standing.indexOf(mark) < i);
  for (const mark of unknown) issues.push(issue('standing-unknown', mark, ''));
  for (const mark of doubled) issues.push(issue('standing-doubled', mark, ''));
  if (standing.length > most) issues.push(issue('standing-many', standing.length, `<= ${most}`));
  return issues;
}

function within(value: number, most: number): boolean {
  return value >= 0 && value <= most;
}

function issue(code: RequestCode, found: string | number, allowed: string): RequestIssue {
  return { code, found: String(found), allowed };
}
