/** What there is to say about one body: its name, its numbers, and the drawings that make it. */
import { degreesText } from './degrees-text.js';
import { figuresOf, rivetsOf, type Figures, type Vessel } from '../../index.js';
import { lengthWords, words } from '../words/index.js';
import { bungStaveOf, type PartId } from './parts.js';

export interface PartNumbers {
  readonly title: string;
  readonly rows: readonly (readonly [name: string, value: string])[];
  /** names that its drawing may have, the most particular first */
  readonly drawings: readonly string[];
}

export function partNumbers(vessel: Vessel, id: PartId): PartNumbers {
  if (id.kind === 'stave') return staveNumbers(figuresOf(vessel), vessel, id.index);
  if (id.kind === 'hoop') return hoopNumbers(vessel, id.index);
  return boardNumbers(vessel, id.end, id.index);
}

export function hoopName({ spec, end }: Vessel['hoops'][number]): string {
  const { hoops, numbers } = words.value;
  return `${hoops.name(spec.name)}, ${numbers.ends[end]}`;
}

function staveNumbers(figures: Figures, vessel: Vessel, index: number): PartNumbers {
  const { space, numbers } = words.value;
  const own = figures.staves?.[index];
  const { stave } = figures;
  const { bevelDegrees, endWidth } = own ?? stave;
  const at = (name: string, end: 'top' | 'bottom'): string => `${name}, ${numbers.ends[end]}`;
  return {
    title: space.stave(index + 1, vessel.staves.length),
    rows: [
      [numbers.bilgeWidth, lengthWords(own?.width ?? stave.bilgeWidth)],
      [at(space.width, 'top'), lengthWords(endWidth.top)],
      [at(space.width, 'bottom'), lengthWords(endWidth.bottom)],
      [numbers.blank, lengthWords(own?.blankThickness ?? stave.blankThickness)],
      [space.bevel, degreesText(bevelDegrees.bilge)],
      [at(space.bevelAt, 'top'), degreesText(bevelDegrees.top)],
      [at(space.bevelAt, 'bottom'), degreesText(bevelDegrees.bottom)],
      [numbers.outerLength, lengthWords(stave.outerLength)],
      [numbers.innerLength, lengthWords(stave.innerLength)],
      ...bungRow(vessel, index),
    ],
    drawings: [`stave-${String(index + 1).padStart(2, '0')}`, 'stave'],
  };
}

function bungRow(vessel: Vessel, index: number): [string, string][] {
  const { bung } = vessel.spec;
  if (!bung || index !== bungStaveOf(vessel)) return [];
  return [[words.value.fields['bung.diameter']!, `⌀ ${lengthWords(bung.diameter)}`]];
}

function boardNumbers({ heads }: Vessel, end: 'top' | 'bottom', index: number): PartNumbers {
  const { space } = words.value;
  const { boards, spec, dowels } = heads[end]!;
  const { width, length } = boards[index]!;
  const own = dowels.filter(({ joint }) => joint === index || joint === index + 1);
  return {
    title: `${space.boards[end]}: ${index + 1}/${boards.length}`,
    rows: [
      [space.boardWidth, lengthWords(width)],
      [space.boardLength, lengthWords(length)],
      [space.thick, lengthWords(spec.thickness)],
      [space.dowels, String(own.length)],
    ],
    drawings: [`head-${end}-board-${index + 1}`, `head-board-${index + 1}`],
  };
}

function hoopNumbers(vessel: Vessel, index: number): PartNumbers {
  const { space, numbers } = words.value;
  const hoop = vessel.hoops[index]!;
  const rivets = rivetsOf(hoop.spec, vessel.spec.units);
  const [, cut, near, far, splay] = numbers.hoopHeadings;
  return {
    title: `${space.hoop}: ${hoopName(hoop)}`,
    rows: [
      [cut!, lengthWords(hoop.cutLength)],
      [near!, lengthWords(hoop.nearGirth)],
      [far!, lengthWords(hoop.farGirth)],
      [splay!, lengthWords(hoop.splay)],
      [space.strap, `${lengthWords(hoop.spec.width)} × ${lengthWords(hoop.spec.thickness)}`],
      [words.value.fields['hoops.lap']!, lengthWords(hoop.spec.lap)],
      [
        space.rivets,
        rivets.count > 0 ? `${rivets.count} × ⌀ ${lengthWords(rivets.diameter)}` : '–',
      ],
    ],
    drawings: ['hoops'],
  };
}
