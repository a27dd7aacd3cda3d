/** The parts of a vessel as a list: what the numbers in the section stand for. */
import type { Table } from '../drawing/drawing.js';
import { shortLengthText } from '../drawing/length-text.js';
import type { Head } from '../vessel/head.js';
import { strapsOf } from '../vessel/strap.js';
import type { Hoop } from '../vessel/hoop.js';
import type { Vessel } from '../vessel/vessel.js';
import { namedHeads } from './head-names.js';
import type { Words } from './words/index.js';

export interface PartItem {
  /** `3`, or `2a` for a part of item 2; a point would be taken for a decimal */
  readonly item: string;
  readonly part: string;
  readonly count: number;
  readonly size: string;
  /** the hoops or the heads that the item is */
  readonly hoops: readonly Hoop[];
  readonly heads: readonly Head[];
}

type Entry = Omit<PartItem, 'item'>;

/** Staves, heads with their boards and dowels, hoops from the top downwards, the bung hole. */
export function partsOf(vessel: Vessel, words: Words): PartItem[] {
  const groups: Entry[][] = [
    [staveEntry(vessel, words)],
    ...headEntries(vessel, words),
    ...hoopEntries(vessel, words).map((entry) => [entry]),
    ...bungEntries(vessel, words).map((entry) => [entry]),
  ];
  return groups.flatMap((group, i) =>
    group.map((entry, k) => ({ item: `${i + 1}${letters(k)}`, ...entry })),
  );
}

export function partsTable(parts: readonly PartItem[], vessel: Vessel, words: Words): Table {
  const { title, headings } = words.section.parts;
  return {
    title,
    headings: headings(words.unitNames[vessel.spec.units]),
    rows: parts.map(({ item, part, count, size }) => [item, part, String(count), size]),
  };
}

/** Nothing for 0, then `a` to `z`, `aa` and so on. */
function letters(k: number): string {
  if (k === 0) return '';
  const last = String.fromCharCode(97 + ((k - 1) % 26));
  return letters(Math.floor((k - 1) / 26)) + last;
}

const none = { hoops: [], heads: [] };

function staveEntry({ staves, meanStave, spec }: Vessel, words: Words): Entry {
  const text = (mm: number): string => shortLengthText(mm, spec.units);
  const { top, bottom } = meanStave.blankEnds;
  const length = Math.max(top.outer, top.inner) - Math.min(bottom.outer, bottom.inner);
  const widths = staves.map(({ width }) => width);
  const [narrow, wide] = [Math.min(...widths), Math.max(...widths)].map(text) as [string, string];
  const width = narrow === wide ? wide : words.section.parts.to(narrow, wide);
  return {
    part: words.section.parts.stave,
    count: staves.length,
    size: [text(length), width, text(meanStave.blankThickness)].join(' × '),
    ...none,
  };
}

function headEntries(vessel: Vessel, words: Words): Entry[][] {
  const { units } = vessel.spec;
  const text = (mm: number): string => shortLengthText(mm, units);
  return namedHeads(vessel, words).map(({ head, name, title }) => {
    const { top, bottom } = vessel.heads;
    const heads = name === 'head' && top ? [top, bottom] : [head];
    const count = heads.length;
    const { diameter, length } = head.spec.dowels;
    const whole = `${words.head.diameter(text(head.diameter))} × ${text(head.spec.thickness)}`;
    const dowels = {
      part: words.section.parts.dowel,
      count: count * head.dowels.length,
      size: `${words.head.diameter(text(diameter))} × ${text(length)}`,
      ...none,
    };
    return [
      { part: title, count, size: whole, hoops: [], heads },
      ...boardEntries(head, count, text, words),
      ...(head.dowels.length > 0 ? [dowels] : []),
    ];
  });
}

/** Boards of one size together, from the lowest. */
function boardEntries(
  { boards, spec }: Head,
  heads: number,
  text: (mm: number) => string,
  words: Words,
): Entry[] {
  const kinds = new Map<string, number[]>();
  for (const [i, { length, width }] of boards.entries()) {
    const size = [text(length), text(width), text(spec.thickness)].join(' × ');
    kinds.set(size, [...(kinds.get(size) ?? []), i + 1]);
  }
  return [...kinds].map(([size, numbers]) => ({
    part: words.section.parts.boards(numbers.join(', ')),
    count: heads * numbers.length,
    size,
    ...none,
  }));
}

function hoopEntries({ hoops, spec }: Vessel, words: Words): Entry[] {
  const text = (mm: number): string => shortLengthText(mm, spec.units);
  return strapsOf(hoops).map(({ hoop, hoops: alike }) => ({
    part: words.section.parts.hoop(hoop.spec.name),
    count: alike.length,
    size: [hoop.cutLength, hoop.spec.width, hoop.spec.thickness].map(text).join(' × '),
    hoops: alike,
    heads: [],
  }));
}

function bungEntries({ spec }: Vessel, words: Words): Entry[] {
  if (!spec.bung) return [];
  const size = words.head.diameter(shortLengthText(spec.bung.diameter, spec.units));
  return [{ part: words.section.parts.bung, count: 1, size, ...none }];
}
