/** Sets as a file for programs: lengths in mm. `schemas/match.schema.json` describes it. */
import type { MatchRequest, MatchResult, StockIssue } from '../index.js';
import { settled } from './figures-json.js';

export interface MatchFile extends MatchResult {
  /** of these keys */
  readonly version: 1;
  readonly title: string;
  readonly asked: Pick<
    MatchRequest,
    'diameter' | 'measured' | 'vessels' | 'count' | 'tolerance' | 'plane' | 'bung'
  >;
  /** what is doubtful in the rack list */
  readonly warnings: readonly {
    /** stable name of the rule */
    readonly code: string;
    readonly line: number;
    readonly column: number;
    readonly found: string;
  }[];
}

export function matchJson(
  title: string,
  request: MatchRequest,
  result: MatchResult,
  issues: readonly StockIssue[],
): string {
  const { diameter, measured, vessels, count, tolerance, plane, bung } = request;
  const file: MatchFile = {
    version: 1,
    title,
    asked: { diameter, measured, vessels, count, tolerance, plane, bung },
    ...result,
    warnings: issues.map(({ code, line, column, found }) => ({ code, line, column, found })),
  };
  return `${JSON.stringify(file, settled, 2)}\n`;
}
