/**
 * Reads delimited text by the rules of RFC 4180 (2005, section 2), kept small: quoted fields, doubled
 * quotes, line breaks inside quotes, any line ending. It knows nothing of what the fields mean.
 */

export type Delimiter = ',' | ';' | '\t';

/** One field as it stands; `line` and `column` (characters) are 1-based and point at its first character. */
export interface Field {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

/** A quote that is never closed, or text after a closing quote. */
export interface CsvFault {
  readonly code: 'quote-open' | 'quote-followed';
  readonly line: number;
  readonly column: number;
}

export interface CsvTable {
  readonly delimiter: Delimiter;
  /** rows with at least one character that isn't a space */
  readonly rows: readonly (readonly Field[])[];
  readonly faults: readonly CsvFault[];
}

/** Splits text into rows of fields. The delimiter is the one in the heading: tab, else semicolon, else comma. */
export function readCsv(text: string): CsvTable {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const delimiter = findDelimiter(body);
  const reader = new Reader(body, delimiter);
  const rows: Field[][] = [];
  while (!reader.atEnd()) {
    const row = reader.row();
    if (row.some((field) => field.text.trim() !== '')) rows.push(row);
  }
  return { delimiter, rows, faults: reader.faults };
}

/** Looks at the first line that has anything on it, outside quotes. */
function findDelimiter(text: string): Delimiter {
  const heading = text.split(/\r\n|\n|\r/, 200).find((line) => line.trim() !== '') ?? '';
  const bare = heading.replace(/"[^"]*"/g, '');
  if (bare.includes('\t')) return '\t';
  return bare.includes(';') ? ';' : ',';
}

class Reader {
  readonly faults: CsvFault[] = [];
  private at = 0;
  private line = 1;
  private lineStart = 0;

  constructor(
    private readonly text: string,
    private readonly delimiter: Delimiter,
  ) {}

  atEnd(): boolean {
    return this.at >= this.text.length;
  }

  row(): Field[] {
    const fields = [this.field()];
    while (this.text[this.at] === this.delimiter) {
      this.at++;
      fields.push(this.field());
    }
    this.lineBreak();
    return fields;
  }

  private field(): Field {
    const line = this.line;
    const column = this.at - this.lineStart + 1;
    const text = this.text[this.at] === '"' ? this.quoted(line, column) : this.plain();
    return { text, line, column };
  }

  private plain(): string {
    const start = this.at;
    while (!this.atEnd() && !this.endsField(this.text[this.at])) this.at++;
    return this.text.slice(start, this.at);
  }

  private quoted(line: number, column: number): string {
    let content = '';
    this.at++;
    for (;;) {
      if (this.atEnd()) {
        this.faults.push({ code: 'quote-open', line, column });
        return content;
      }
      if (this.text[this.at] !== '"') {
        const character = this.text[this.at]!;
        if (this.lineBreak()) content += '\n';
        else {
          content += character;
          this.at++;
        }
      } else if (this.text[this.at + 1] === '"') {
        content += '"';
        this.at += 2;
      } else {
        this.at++;
        return content + this.afterQuote(line, column);
      }
    }
  }

  private afterQuote(line: number, column: number): string {
    const rest = this.plain();
    if (rest.trim() === '') return '';
    this.faults.push({ code: 'quote-followed', line, column });
    return rest;
  }

  private endsField(character: string | undefined): boolean {
    return character === this.delimiter || character === '\n' || character === '\r';
  }

  /** Steps over one line break, if there is one here. */
  private lineBreak(): boolean {
    const character = this.text[this.at];
    if (character !== '\n' && character !== '\r') return false;
    this.at += character === '\r' && this.text[this.at + 1] === '\n' ? 2 : 1;
    this.line++;
    this.lineStart = this.at;
    return true;
  }
}
