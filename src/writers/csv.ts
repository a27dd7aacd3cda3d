/** Rows as comma-separated values, by RFC 4180 (2005, section 2): CRLF, quotes where they are needed. */

/** What a spreadsheet takes for the beginning of a formula. */
const formula = /^[=+\-@\t\r]/;
const number = /^[+-]?\d+([.,]\d+)?$/;
const needsQuotes = /[",;\r\n\t]|^\s|\s$/;

/** A text that a spreadsheet would work out is marked as text by an apostrophe; numbers stay numbers. */
export function toCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

function cell(text: string): string {
  const safe = formula.test(text) && !number.test(text) ? `'${text}` : text;
  return needsQuotes.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
