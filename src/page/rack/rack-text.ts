/** The rack as text: for the core's reader, for a file, and for the browser to keep. */
import {
  readStock,
  toCsv,
  writtenLength,
  type StockReading,
  type StockStave,
} from '../../index.js';
import type { Units } from '../state/read-length.js';

const headings = ['mark', 'width', 'length', 'thickness', 'bung', 'note'] as const;

/** The same list as a file of these units. */
export function savedRack(staves: readonly StockStave[], units: Units): string {
  const length = (mm: number | null): string =>
    mm === null ? '' : String(writtenLength(rounded(mm), units));
  const named = headings.map((name) =>
    ['width', 'length', 'thickness'].includes(name) ? `${name} (${units})` : name,
  );
  return toCsv([named, ...staves.map((stave) => cells(stave, length))]);
}

/**
 * What the search works with: read by the core, so that the page and the command take a rack alike; to the last digit,
 * or of two choices that are equally good they might take different ones.
 */
export function stockOf(staves: readonly StockStave[]): StockReading {
  const mm = (length: number | null): string => (length === null ? '' : `${length} mm`);
  const rows = [[...headings], ...staves.map((stave) => cells(stave, mm))];
  const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;
  return readStock(rows.map((row) => row.map(quoted).join(',')).join('\n'), 'mm');
}

function cells(
  { mark, width, length, thickness, bung, note }: StockStave,
  text: (mm: number | null) => string,
): string[] {
  const may = bung === null ? '' : bung ? 'yes' : 'no';
  return [mark, text(width), text(length), text(thickness), may, note];
}

const rounded = (mm: number): number => Math.round(mm * 1e6) / 1e6;

/** Null where what was kept is no rack. */
export function keptRack(text: string | null): readonly StockStave[] | null {
  try {
    const staves = JSON.parse(text ?? 'null') as unknown;
    return Array.isArray(staves) && staves.every(isStave) ? staves : null;
  } catch {
    return null;
  }
}

function isStave(value: unknown): value is StockStave {
  if (typeof value !== 'object' || value === null) return false;
  const { mark, width, length, thickness, bung, note } = value as Record<string, unknown>;
  const size = (x: unknown): boolean => x === null || typeof x === 'number';
  return (
    typeof mark === 'string' &&
    typeof width === 'number' &&
    size(length) &&
    size(thickness) &&
    (bung === null || typeof bung === 'boolean') &&
    typeof note === 'string'
  );
}
