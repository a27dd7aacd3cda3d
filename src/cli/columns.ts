/** Sets text in columns for a terminal. */

/** Each as wide as its widest cell; the first `left` of them to the left, for words, the others to the right. */
export function columns(
  rows: readonly (readonly string[])[],
  { left = 0, indent = '    ' } = {},
): string {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) =>
    Math.max(...rows.map((row) => lengthOf(row[i] ?? ''))),
  );
  return rows.map((row) => `${indent}${rowText(row, widths, left)}\n`).join('');
}

/** Pairs of a name and a value, the values below each other. */
export function pairs(rows: readonly (readonly [name: string, value: string])[]): string {
  const width = Math.max(0, ...rows.map(([name]) => lengthOf(name)));
  return rows.map(([name, value]) => `  ${padded(name, width)}   ${value}\n`).join('');
}

function rowText(row: readonly string[], widths: readonly number[], left: number): string {
  const cells = row.map((cell, i) => {
    const fill = ' '.repeat(widths[i]! - lengthOf(cell));
    return i < left ? cell + fill : fill + cell;
  });
  return cells.join('   ').trimEnd();
}

const padded = (text: string, width: number): string =>
  text + ' '.repeat(Math.max(0, width - lengthOf(text)));

/** Characters, not the two halves that some of them are stored in. */
const lengthOf = (text: string): number => [...text].length;
