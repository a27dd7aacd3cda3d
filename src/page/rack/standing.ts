/** Marks of staves that stand already, in their order, as typed. Knows nothing of the page. */
import {
  checkRequest,
  type MatchRequest,
  type RequestCode,
  type RequestIssue,
  type Stock,
} from '../../index.js';

/** Between commas, semicolons or on lines of their own. */
export const marksIn = (text: string): string[] =>
  text
    .split(/[,;\r\n]+/)
    .map((mark) => mark.trim())
    .filter((mark) => mark !== '');

/** The same marks with this one at their end, or without it. */
export function toggled(text: string, mark: string): string {
  const marks = marksIn(text);
  const others = marks.filter((each) => each !== mark);
  return (others.length < marks.length ? others : [...marks, mark]).join(', ');
}

const codes: readonly RequestCode[] = ['standing-unknown', 'standing-doubled', 'standing-many'];

/** What is wrong with them, by the core's own rules; each once. */
export function standingIssues(
  stock: Stock,
  usual: MatchRequest,
  count: MatchRequest['count'] | undefined,
  standing: readonly string[],
): RequestIssue[] {
  if (standing.length === 0) return [];
  const asked = { ...usual, standing, ...(count && { count }) };
  return checkRequest(stock, asked).filter(
    ({ code, found }, i, all) =>
      codes.includes(code) &&
      all.findIndex((each) => each.code === code && each.found === found) === i,
  );
}
