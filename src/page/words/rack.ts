/** What the sheet of the rack has to say. Lengths come in written, with their unit. */
import type { MatchProgress, RequestCode, Shortfall, StockCode } from '../../index.js';

export interface RackWords extends Readonly<
  Record<
    | 'title'
    | 'mark'
    | 'add'
    | 'noStave'
    | 'list'
    | 'open'
    | 'save'
    | 'clear'
    | 'bringBack'
    | 'bung'
    | 'nothingTaken'
    | 'choose'
    | 'stop'
    | 'vessels'
    | 'asMany'
    | 'measuredAs'
    | 'more'
    | 'count'
    | 'noBung'
    | 'searching'
    | 'failed'
    | 'sets'
    | 'forget'
    | 'caution'
    | 'draw'
    | 'begun'
    | 'begunHint'
    | 'standsNow'
    | 'files'
    | 'makingFiles'
    | 'noVessel'
    | 'offTheRack',
    string
  >
> {
  readonly handle: (staves: number) => string;
  readonly width: (unit: string) => string;
  readonly added: (mark: string, width: string, count: number) => string;
  readonly bungOf: (mark: string) => string;
  readonly remove: (mark: string) => string;
  readonly line: (line: number) => string;
  /** `found` is what stands there, or the heading of the column */
  readonly faults: Readonly<Record<StockCode, (found: string, detail: string) => string>>;
  readonly measured: Readonly<Record<'blank' | 'backed', string>>;
  readonly tolerance: (unit: string) => string;
  readonly plane: (unit: string) => string;
  readonly bungWidth: (unit: string) => string;
  readonly problems: Readonly<Record<'no-vessels' | 'no-count', string>>;
  readonly progress: (progress: MatchProgress) => string;
  readonly wrong: Readonly<Record<RequestCode, (found: string, allowed: string) => string>>;
  readonly set: (number: number) => string;
  readonly found: (sets: number) => string;
  readonly proven: (bound: number) => string;
  readonly bound: (bound: number) => string;
  readonly reasons: Readonly<
    Record<Shortfall['reason'], (girthMissing: string, bungWidth: string) => string>
  >;
  readonly help: (staves: number, from: string, to: string) => string;
  readonly closes: (diameter: string, staves: number, laid: string) => string;
  readonly standing: (done: number, of: number) => string;
  readonly stands: (mark: string) => string;
  readonly left: (count: number) => string;
  readonly headings: (unit: string) => readonly string[];
  readonly standsNowOf: (mark: string) => string;
  /** more vessels are asked for than the rack has staves for */
  readonly enough: (staves: number, fewest: number, vessels: number) => string;
  readonly broken: {
    readonly hint: string;
    readonly ask: (mark: string) => string;
    readonly about: (mark: string, place: number, of: number, width: string) => string;
    readonly bungStave: string;
    readonly none: string;
    readonly take: (mark: string) => string;
    readonly plane: (off: string) => string;
    readonly asItIs: string;
    readonly closes: (diameter: string) => string;
    readonly cut: (width: string, from: string, to: string) => string;
    readonly leaves: (mark: string) => string;
    readonly taken: (gone: string, mark: string) => string;
  };
}
