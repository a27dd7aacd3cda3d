/** Stock text -> staves, or everything that is wrong with it, each fault at its place. */

import { readCsv, type Delimiter, type Field } from './csv.js';
import { readLength, readReadings, type LengthUnits } from './length.js';
import { measuringStep } from './step.js';

/** A stave on the rack, in mm. `null`: the list doesn't say. */
export interface StockStave {
  readonly mark: string;
  /** at the bilge, the mean of its readings */
  readonly width: number;
  readonly length: number | null;
  readonly thickness: number | null;
  /** whether it may be the bung stave */
  readonly bung: boolean | null;
  readonly note: string;
}

export type StockCode =
  | 'empty'
  | 'quote-open'
  | 'quote-followed'
  | 'heading-missing'
  | 'heading-doubled'
  | 'heading-unknown'
  | 'fields-extra'
  | 'mark-missing'
  | 'mark-unprintable'
  | 'mark-doubled'
  | 'width-missing'
  | 'length-unreadable'
  | 'width-absurd'
  | 'length-absurd'
  | 'unit-mistaken'
  | 'readings-apart'
  | 'bung-unreadable';

/** What is wrong, or doubtful. The wording is in `stock-words.ts`. Line and column are 1-based. */
export interface StockIssue {
  readonly severity: 'error' | 'warning';
  readonly code: StockCode;
  readonly line: number;
  readonly column: number;
  readonly heading: string;
  readonly found: string;
  /** what else the sentence needs: an earlier line, a difference in mm, how the column should be headed */
  readonly detail: string;
}

export interface Stock {
  readonly staves: readonly StockStave[];
  /** the step that the widths were read to, in mm; 0 when there are no staves */
  readonly step: number;
}

/** `stock` is null when any issue is an error: nothing is half-read. */
export interface StockReading {
  readonly stock: Stock | null;
  readonly issues: readonly StockIssue[];
}

/** Widths outside these are slips of the pen, in mm. */
export const ORDINARY_WIDTH = { least: 10, most: 400 };
/** Lengths and thicknesses outside these are slips too, in mm. */
const ORDINARY_LENGTH = { least: 3, most: 10_000 };
/** A column of which so many are absurd, and nearly all, but would be a stave's in the other unit, is in that unit. */
const MISTAKEN = { fewest: 3, share: 0.9 };
/** Two readings of one stave further apart than this are asked about, in mm. */
export const READINGS_APART = 1;

const HEADINGS = ['mark', 'width', 'length', 'thickness', 'bung', 'note'] as const;
type Heading = (typeof HEADINGS)[number];
const HEADING_WRITTEN = /^([a-z]+)\s*(?:[([]?\s*(mm|in)\s*[)\]]?)?$/;

interface Column {
  readonly heading: Heading;
  readonly units: LengthUnits;
}

/**
 * Reads a rack list. `units` are those of lengths that carry none; a heading may name its own: `width (in)`.
 */
export function readStock(text: string, units: LengthUnits): StockReading {
  const table = readCsv(text);
  const reader = new StockReader(units, table.delimiter);
  for (const fault of table.faults) reader.note('error', fault.code, fault, '');
  const [heading, ...rows] = table.rows;
  if (!heading) reader.note('error', 'empty', { line: 1, column: 1, text: '' }, '');
  else if (reader.headings(heading)) for (const row of rows) reader.row(row);
  return reader.result();
}

class StockReader {
  private readonly issues: StockIssue[] = [];
  private readonly staves: StockStave[] = [];
  private readonly readings: number[] = [];
  private readonly lineOfMark = new Map<string, number>();
  private readonly columns: (Column | null)[] = [];
  /** of columns of lengths: how many were looked at, and the faults that another unit would cure */
  private readonly looked = new Map<Heading, { all: number; curable: StockIssue[] }>();

  constructor(
    private readonly units: LengthUnits,
    private readonly delimiter: Delimiter,
  ) {}

  note(
    severity: StockIssue['severity'],
    code: StockCode,
    at: { line: number; column: number; text?: string },
    heading: string,
    detail = '',
  ): StockIssue {
    const found = (at.text ?? '').trim();
    const issue = { severity, code, line: at.line, column: at.column, heading, found, detail };
    this.issues.push(issue);
    return issue;
  }

  /** Takes the heading row; false when rows can't be read by it. */
  headings(row: readonly Field[]): boolean {
    for (const field of row) this.columns.push(this.heading(field));
    const missing = (['mark', 'width'] as const).filter(
      (name) => !this.columns.some((column) => column?.heading === name),
    );
    for (const name of missing)
      this.note('error', 'heading-missing', { ...row[0]!, text: '' }, name);
    return missing.length === 0;
  }

  private heading(field: Field): Column | null {
    const found = HEADING_WRITTEN.exec(field.text.trim().toLowerCase());
    const name = HEADINGS.find((known) => known === found?.[1]);
    if (!name) {
      if (field.text.trim() !== '') this.note('warning', 'heading-unknown', field, '');
      return null;
    }
    if (this.columns.some((column) => column?.heading === name)) {
      this.note('error', 'heading-doubled', field, name);
      return null;
    }
    return { heading: name, units: (found?.[2] as LengthUnits | undefined) ?? this.units };
  }

  row(fields: readonly Field[]): void {
    const extra = fields.slice(this.columns.length).find((field) => field.text.trim() !== '');
    if (extra) this.note('error', 'fields-extra', extra, '', this.delimiter);
    const mark = this.mark(fields);
    const width = this.width(fields);
    const stave = {
      length: this.length(fields, 'length'),
      thickness: this.length(fields, 'thickness'),
      bung: this.bung(fields),
      note: this.field(fields, 'note')?.text.trim() ?? '',
    };
    if (mark !== null && width !== null) this.staves.push({ mark, width, ...stave });
  }

  private field(fields: readonly Field[], heading: Heading): Field | undefined {
    return fields[this.columns.findIndex((column) => column?.heading === heading)];
  }

  private unitsOf(heading: Heading): LengthUnits {
    return this.columns.find((column) => column?.heading === heading)?.units ?? this.units;
  }

  private mark(fields: readonly Field[]): string | null {
    const field = this.field(fields, 'mark');
    const mark = field?.text.trim() ?? '';
    if (!field || mark === '') {
      this.note('error', 'mark-missing', field ?? fields[0]!, 'mark');
      return null;
    }
    if (/\p{Cc}/u.test(mark))
      this.note('error', 'mark-unprintable', { ...field, text: '' }, 'mark');
    const earlier = this.lineOfMark.get(mark);
    if (earlier !== undefined) this.note('error', 'mark-doubled', field, 'mark', String(earlier));
    else this.lineOfMark.set(mark, field.line);
    return mark;
  }

  private width(fields: readonly Field[]): number | null {
    const field = this.field(fields, 'width');
    if (!field || field.text.trim() === '') {
      this.note('error', 'width-missing', field ?? fields.at(-1)!, 'width');
      return null;
    }
    const readings = this.ordinary(field, 'width', ORDINARY_WIDTH, readReadings);
    return readings && this.mean(readings, field);
  }

  /** What is read there, if it can be a stave's; otherwise its fault is noted, and whether the other unit would cure it. */
  private ordinary(
    field: Field,
    heading: 'width' | 'length' | 'thickness',
    range: Range,
    read: (text: string, units: LengthUnits) => readonly number[] | null,
  ): readonly number[] | null {
    const units = this.unitsOf(heading);
    const lengths = read(field.text, units);
    if (lengths && areWithin(lengths, range)) {
      this.look(heading, null);
      return lengths;
    }
    const absurd = heading === 'width' ? 'width-absurd' : 'length-absurd';
    const fault = lengths
      ? this.note('error', absurd, field, heading)
      : this.note('error', 'length-unreadable', field, heading, units);
    const others = read(field.text, otherThan(units));
    this.look(heading, others && areWithin(others, range) ? fault : null);
    return null;
  }

  /** Takes note of a length that was looked at; `fault`: what the other unit would cure. */
  private look(heading: Heading, fault: StockIssue | null): void {
    const column = this.looked.get(heading) ?? { all: 0, curable: [] };
    column.all++;
    if (fault) column.curable.push(fault);
    this.looked.set(heading, column);
  }

  private mean(readings: readonly number[], field: Field): number {
    const apart = Math.max(...readings) - Math.min(...readings);
    if (apart > READINGS_APART)
      this.note('warning', 'readings-apart', field, 'width', String(Math.round(apart * 100) / 100));
    this.readings.push(...readings);
    return readings.reduce((sum, width) => sum + width, 0) / readings.length;
  }

  private length(fields: readonly Field[], heading: 'length' | 'thickness'): number | null {
    const field = this.field(fields, heading);
    if (!field || field.text.trim() === '') return null;
    return this.ordinary(field, heading, ORDINARY_LENGTH, oneLength)?.[0] ?? null;
  }

  private bung(fields: readonly Field[]): boolean | null {
    const field = this.field(fields, 'bung');
    const word = field?.text.trim().toLowerCase() ?? '';
    if (!field || word === '') return null;
    if (word === 'yes' || word === 'no') return word === 'yes';
    this.note('error', 'bung-unreadable', field, 'bung');
    return null;
  }

  result(): StockReading {
    const refused = this.issues.some((issue) => issue.severity === 'error');
    const stock = { staves: this.staves, step: measuringStep(this.readings) };
    return { stock: refused ? null : stock, issues: this.withMistakenUnits() };
  }

  /** One fault in place of all those of a column that is in the other unit. */
  private withMistakenUnits(): readonly StockIssue[] {
    let issues: readonly StockIssue[] = this.issues;
    for (const [heading, { all, curable }] of this.looked) {
      if (curable.length < Math.max(MISTAKEN.fewest, MISTAKEN.share * all)) continue;
      const [first, ...others] = curable;
      const detail = `${heading} (${otherThan(this.unitsOf(heading))})`;
      const dropped = new Set(others);
      issues = issues
        .filter((issue) => !dropped.has(issue))
        .map((issue) => (issue === first ? { ...issue, code: 'unit-mistaken', detail } : issue));
    }
    return issues;
  }
}

function otherThan(units: LengthUnits): LengthUnits {
  return units === 'mm' ? 'in' : 'mm';
}

interface Range {
  readonly least: number;
  readonly most: number;
}

function areWithin(lengths: readonly number[], { least, most }: Range): boolean {
  return lengths.every((length) => length >= least && length <= most);
}

function oneLength(text: string, units: LengthUnits): readonly number[] | null {
  const length = readLength(text, units);
  return length === null ? null : [length];
}
