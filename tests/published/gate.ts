/** Compares our number with a published one. */
import type { Entry } from './entry.js';

export interface Row {
  id: string;
  published: string;
  ours: number;
  error: number;
  tolerance: number;
  passed: boolean;
}

export function compare(entry: Entry, ours: number): Row {
  const [low, high] = typeof entry.value === 'number' ? [entry.value, entry.value] : entry.value;
  const tolerance =
    'relative' in entry.tolerance
      ? entry.tolerance.relative * Math.abs(low)
      : entry.tolerance.absolute;
  // NaN is below and above nothing: it must not pass for agreement
  const error = ours >= low && ours <= high ? 0 : ours < low ? ours - low : ours - high;
  const agrees = Math.abs(error) <= tolerance;
  return {
    id: entry.id,
    published: (low === high ? `${low}` : `${low} to ${high}`) + ` ${entry.unit}`,
    ours,
    error,
    tolerance,
    passed: entry.relation === 'differs' ? Number.isFinite(ours) && !agrees : agrees,
  };
}

export function tableOf(rows: Row[]): string {
  const cells = rows.map((row) => [
    row.passed ? '' : 'FAILS',
    row.id,
    row.published,
    row.ours.toPrecision(7),
    row.error.toExponential(1),
    row.tolerance.toExponential(1),
  ]);
  const all = [['', 'check', 'published', 'ours', 'error', 'tolerance'], ...cells];
  const widths = [0, 1, 2, 3, 4, 5].map((i) => Math.max(...all.map((row) => row[i]?.length ?? 0)));
  return all
    .map((row) =>
      row
        .map((cell, i) => cell.padEnd(widths[i] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
