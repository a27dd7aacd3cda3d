/** All sets as one table for a spreadsheet: a row a stave, lengths in the units of the spec. */
import { runningTotals, toCsv, type MatchResult, type Spec } from '../index.js';

export function setsCsv({ sets }: MatchResult, { units }: Spec): string {
  const text = (mm: number): string =>
    units === 'mm' ? String(Number(mm.toFixed(3))) : String(Number((mm / 25.4).toFixed(5)));
  const headings = ['set', 'place', 'mark', 'bung', `width_${units}`, `plane_off_${units}`];
  const rows = sets.flatMap((set, k) => {
    const totals = runningTotals(set);
    return set.staves.map(({ mark, width, planeOff }, i) => [
      String(k + 1),
      String(i + 1),
      mark,
      mark === set.bungStave ? 'yes' : 'no',
      text(width),
      text(planeOff),
      text(totals[i]!),
      text(set.closesAt),
    ]);
  });
  return toCsv([[...headings, `laid_so_far_${units}`, `closes_at_${units}`], ...rows]);
}
