/** The keys of a spec that the page has a box for, in the order of the file. */
import type { Path } from './edit-spec.js';
import { forHead, type End } from './head-keys.js';

export type FieldKind = 'length' | 'count' | 'degrees' | 'share' | 'text' | 'choice' | 'lengths';

export interface Field {
  readonly path: Path;
  readonly kind: FieldKind;
  readonly choices?: readonly string[];
}

const field = (kind: FieldKind, ...path: (string | number)[]): Field => ({ path, kind });
const length = (...path: (string | number)[]): Field => field('length', ...path);
const choice = (choices: readonly string[], ...path: string[]): Field => ({
  ...field('choice', ...path),
  choices,
});

export const height = length('height');
export const bilge = length('bilge');
export const ends = length('ends');
export const top = length('top');
export const bottom = length('bottom');
export const staveCount = field('count', 'staves', 'count');
export const staveWidths = field('lengths', 'staves', 'widths');
export const staveThickness = length('staves', 'thickness');
export const grooveInset = length('heads', 'croze', 'inset');
export const title = field('text', 'title');
export const bung = length('bung', 'diameter');

/** Names of groups are keys of the page's words. */
export type GroupName = 'size' | 'staves' | 'chime' | 'heads' | 'dowels' | 'bung' | 'sheet';

export interface Group {
  readonly name: GroupName;
  readonly sections: readonly Section[];
}

/** Fields of one head only, or of both and of all else. */
export interface Section {
  readonly end: End | null;
  readonly fields: readonly Field[];
}

const staves = (mixed: boolean): Field[] => [
  mixed ? staveWidths : staveCount,
  staveThickness,
  length('staves', 'endThickness'),
  choice(['hollowed', 'flat'], 'staves', 'inside'),
  choice(['rounded', 'flat'], 'staves', 'outside'),
  choice(['overlong', 'cut'], 'staves', 'ends'),
  length('staves', 'trim'),
  field('share', 'staves', 'neutral'),
];

const chime: Field[] = [
  field('degrees', 'chime', 'bevelDegrees'),
  length('chime', 'flat'),
  length('howel', 'depth'),
  length('howel', 'beyondGroove'),
];

const heads = (mixed: boolean): Field[] => [
  length('heads', 'thickness'),
  mixed ? field('lengths', 'heads', 'widths') : field('count', 'heads', 'boards'),
  grooveInset,
  length('heads', 'croze', 'depth'),
  length('heads', 'croze', 'width'),
  length('heads', 'clearance'),
  length('heads', 'crossGrain'),
  ...['thickness', 'fromInside', 'outerBevel', 'innerBevel'].map((key) =>
    length('heads', 'edge', key),
  ),
];

const dowels = ['diameter', 'length', 'spacing', 'margin'].map((key) =>
  length('heads', 'dowels', key),
);

const sheet = ['owner', 'number', 'date', 'creator', 'approved'].map((key) =>
  field('text', 'sheet', key),
);

export interface Kind {
  readonly vessel: 'cask' | 'tub';
  readonly mixedStaves: boolean;
  /** heads whose boards each have a width of their own */
  readonly mixedBoards: readonly End[];
  /** whether the heads have boxes of their own */
  readonly headsApart: boolean;
}

export function groupsOf({ vessel, mixedStaves, mixedBoards, headsApart }: Kind): Group[] {
  const headEnds: End[] = vessel === 'cask' ? ['top', 'bottom'] : ['bottom'];
  const group = (name: GroupName, fields: readonly Field[]): Group => ({
    name,
    sections: [{ end: null, fields }],
  });
  const ofHeads = (name: GroupName, fields: (mixed: boolean) => readonly Field[]): Group => {
    if (!headsApart) return group(name, fields(mixedBoards.includes('bottom')));
    const own = (end: End): Field[] => fields(mixedBoards.includes(end)).map(fieldOfHead(end));
    return { name, sections: headEnds.map((end) => ({ end, fields: own(end) })) };
  };
  const size =
    vessel === 'cask'
      ? [bilge, ends, choice(['arc', 'parabola', 'ellipse'], 'profile')]
      : [top, bottom];
  return [
    group('size', [title, height, ...size]),
    group('staves', staves(mixedStaves)),
    group('chime', chime),
    ofHeads('heads', heads),
    ofHeads('dowels', () => dowels),
    group('bung', [bung]),
    group('sheet', sheet),
  ];
}

/** The same field of one head alone. */
export const fieldOfHead =
  (end: End) =>
  (both: Field): Field => ({ ...both, path: forHead(both.path, end) });

export const hoopFields = (i: number): Field[] => [
  field('text', 'hoops', i, 'name'),
  choice(['both', 'top', 'bottom'], 'hoops', `${i}`, 'end'),
  hoopOffset(i),
  length('hoops', i, 'width'),
  length('hoops', i, 'thickness'),
  length('hoops', i, 'lap'),
];

export const hoopOffset = (i: number): Field => length('hoops', i, 'offset');

/** `heads.croze.inset`, `hoops[1].offset`: as messages name it. */
export const keyOf = ({ path }: Pick<Field, 'path'>): string =>
  path.reduce<string>(
    (key, step) =>
      /^\d+$/.test(String(step)) ? `${key}[${step}]` : key ? `${key}.${step}` : `${step}`,
    '',
  );

/** The name of a field among the page's words: its key without the numbers of a list, and without which head. */
export const nameOf = ({ path }: Field): string =>
  forHead(path, null)
    .filter((step) => !/^\d+$/.test(String(step)))
    .join('.');
