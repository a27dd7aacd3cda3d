/** What the page has to say; each language says all of it. Sentences with figures in them are functions. */
import type { Language, LetteringWay } from '../../index.js';
import type { SizeProblem } from '../output/piece-sizes.js';
import type { PartName } from '../parts.js';
import type { GroupName } from '../state/fields.js';
import type { FieldProblem } from '../state/read-field.js';
import type { LengthProblem } from '../state/read-length.js';
import type { Way } from '../state/ways.js';
import type { RackWords } from './rack.js';
import type { SpaceWords } from './space.js';

type Table = readonly string[];

export interface Words {
  readonly skip: string;
  readonly close: string;
  readonly bar: BarWords;
  readonly files: { readonly tooLarge: string; readonly notText: string };
  readonly vessel: Readonly<Record<'picture' | 'litres' | 'outOfDate', string>>;
  readonly notes: Readonly<Record<'errors' | 'warnings' | 'goThere', string>>;
  readonly strip: { readonly title: string };
  readonly parts: Readonly<Record<PartName | 'title', string>>;
  readonly settings: Readonly<
    Record<
      'about' | 'heads' | 'headsAlike' | 'headsApart' | 'stavesAre' | 'boardsAre' | 'bung',
      string
    >
  > & {
    readonly headOf: Readonly<Record<'top' | 'bottom', string>>;
    readonly staveWays: Readonly<Record<Way, string>>;
    readonly boardWays: Readonly<Record<Way, string>>;
    readonly bungs: Readonly<Record<'bored' | 'none', string>>;
  };
  readonly groups: Readonly<Record<GroupName | 'hoops', string>>;
  /** by key of the spec, without numbers of lists */
  readonly fields: Readonly<Record<string, string>>;
  readonly choices: Readonly<Record<string, string>>;
  readonly hoops: {
    readonly add: string;
    readonly remove: (name: string) => string;
    /** the trade's own names come in English from the spec */
    readonly name: (name: string) => string;
  };
  /** why what stands in a box cannot be used */
  readonly problems: Readonly<Record<FieldProblem | 'broken-text', string>>;
  readonly textPart: {
    readonly label: (file: string) => string;
    readonly line: (line: number, column: number) => string;
  };
  readonly viewer: ViewerWords;
  readonly output: OutputWords;
  readonly sizing: SizingWords;
  readonly dip: DipWords;
  readonly numbers: NumbersWords;
  readonly slips: SlipsWords;
  readonly space: SpaceWords;
  readonly rack: RackWords;
}

interface BarWords extends Readonly<
  Record<
    | 'begin'
    | 'open'
    | 'save'
    | 'undo'
    | 'redo'
    | 'toInches'
    | 'toMillimetres'
    | 'habits'
    | 'language'
    | 'look',
    string
  >
> {
  readonly languages: Readonly<Record<Language, string>>;
  readonly looks: Readonly<Record<'device' | 'light' | 'dark', string>>;
}

interface ViewerWords extends Readonly<
  Record<
    | 'before'
    | 'after'
    | 'larger'
    | 'smaller'
    | 'whole'
    | 'trueSize'
    | 'measure'
    | 'canvas'
    | 'takePoints'
    | 'notes',
    string
  >
> {
  readonly place: (x: string, y: string) => string;
  readonly station: (station: string, width: string, bevel: string, thickness: string) => string;
  readonly measured: (distance: string, dx: string, dy: string) => string;
}

interface OutputWords extends Readonly<
  Record<
    | 'caution'
    | 'paper'
    | 'across'
    | 'along'
    | 'printed'
    | 'badSide'
    | 'formats'
    | 'lettering'
    | 'pack'
    | 'packing'
    | 'spec'
    | 'wholeSpec',
    string
  >
> {
  readonly jobSheet: (format: string) => string;
  readonly papers: (name: string) => string;
  readonly fan: SizeWords;
  readonly plank: SizeWords;
  /** beside what is no length */
  readonly sizeProblems: Readonly<Record<Exclude<SizeProblem, LengthProblem>, string>>;
  readonly use: Readonly<Record<'svg' | 'dxf' | 'pdf', string>>;
  readonly letterings: Readonly<Record<LetteringWay, string>>;
  readonly give: (format: string) => string;
}

interface SizeWords {
  readonly title: string;
  readonly boxes: readonly [string, string];
  readonly about: string;
}

interface SizingWords extends Readonly<
  Record<'litres' | 'staveLength' | 'keep' | 'notLitres' | 'apply' | 'nearby' | 'take', string>
> {
  readonly keeps: Readonly<Record<'proportions' | 'heads' | 'height', string>>;
  readonly now: (litres: string) => string;
  readonly found: (litres: string) => string;
  /** null where there is no such vessel at all */
  readonly unreachable: (nearest: string | null) => string;
}

interface DipWords extends Readonly<Record<'posture' | 'table' | 'notForSale', string>> {
  readonly postures: Readonly<Record<'lying' | 'standing', string>>;
  readonly depth: (unit: string) => string;
  readonly holds: (litres: string) => string;
  readonly tooDeep: (full: string) => string;
  readonly headings: (unit: string) => Table;
}

interface NumbersWords extends Readonly<
  Record<
    | 'whole'
    | 'capacity'
    | 'recess'
    | 'empty'
    | 'full'
    | 'count'
    | 'blank'
    | 'outerLength'
    | 'innerLength'
    | 'bilgeWidth'
    | 'laidWidth'
    | 'endCut'
    | 'gap'
    | 'stretch'
    | 'stations'
    | 'heads'
    | 'hoops',
    string
  >
> {
  readonly stationHeadings: Table;
  readonly headHeadings: Table;
  readonly hoopHeadings: Table;
  readonly ends: Readonly<Record<'top' | 'bottom', string>>;
}

type SlipName =
  | 'bevels-steep'
  | 'bevels-flat'
  | 'staves-wide'
  | 'one-stave-wide'
  | 'groove-inset'
  | 'groove-depth';

interface SlipsWords {
  readonly about: string;
  readonly title: string;
  readonly headings: Table;
  readonly names: Readonly<Record<SlipName, (size: string) => string>>;
  readonly opens: (gap: string, where: 'inside' | 'outside') => string;
}
