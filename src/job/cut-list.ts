/** What to cut: staves and two spares, the boards and dowels of the heads, the straps of the hoops. */
import type { Table } from '../drawing/drawing.js';
import type { Head } from '../vessel/head.js';
import type { Stave } from '../vessel/stave.js';
import { strapsOf } from '../vessel/strap.js';
import type { Vessel } from '../vessel/vessel.js';
import { spareStaves } from './allowances.js';
import { headsOf } from './heads.js';
import type { Texts } from './texts.js';
import type { JobWords } from './words/job-words.js';

/** Piece, count, length, width, thickness. */
type Row = [string, string, string, string, string];

export function cutList(vessel: Vessel, words: JobWords, texts: Texts): Table {
  return {
    title: words.list.title,
    headings: words.list.headings,
    rows: [
      staveRow(vessel, words, texts),
      ...headsOf(vessel).flatMap(({ head, which, count }) =>
        headRows(head, words.list.heads[which], count, words, texts),
      ),
      ...hoopRows(vessel, words, texts),
    ],
  };
}

/** Of the longer face, trim included. */
export function blankLength({ blankEnds: { top, bottom } }: Stave): number {
  return Math.max(top.outer, top.inner) - Math.min(bottom.outer, bottom.inner);
}

function staveRow({ staves, meanStave }: Vessel, words: JobWords, texts: Texts): Row {
  const widths = staves.map(({ width }) => width);
  const thickest = Math.max(...staves.map(({ blankThickness }) => blankThickness));
  return [
    words.list.stave,
    `${staves.length} + ${spareStaves}`,
    texts.length(blankLength(meanStave)),
    rangeText(Math.min(...widths), Math.max(...widths), texts),
    texts.length(thickest),
  ];
}

function rangeText(least: number, most: number, texts: Texts): string {
  const [from, to] = [texts.length(least), texts.length(most)];
  return from === to ? to : `${from} – ${to}`;
}

/** Boards of one size together, then the dowels. */
function headRows(
  { boards, dowels, spec }: Head,
  name: string,
  count: number,
  words: JobWords,
  texts: Texts,
): Row[] {
  const kinds = new Map<string, { numbers: number[]; size: [string, string] }>();
  for (const [i, { length, width }] of boards.entries()) {
    const size: [string, string] = [texts.length(length), texts.length(width)];
    const kind = kinds.get(size.join()) ?? { numbers: [], size };
    kinds.set(size.join(), { size, numbers: [...kind.numbers, i + 1] });
  }
  const rows = [...kinds.values()].map(({ numbers, size }): Row => [
    words.list.boards(name, numbers.join(', ')),
    String(count * numbers.length),
    ...size,
    texts.length(spec.thickness),
  ]);
  const { diameter, length } = spec.dowels;
  const dowel: Row = [
    words.list.dowels(name),
    String(count * dowels.length),
    texts.length(length),
    `⌀ ${texts.length(diameter)}`,
    '',
  ];
  return dowels.length > 0 ? [...rows, dowel] : rows;
}

function hoopRows({ hoops }: Vessel, words: JobWords, texts: Texts): Row[] {
  return strapsOf(hoops).map(({ hoop, hoops: alike, spec }) => [
    words.list.strap(texts.hoop(spec.name), spec.end === 'both' ? '' : words.ends[spec.end]),
    String(alike.length),
    texts.length(hoop.cutLength),
    texts.length(spec.width),
    texts.length(spec.thickness),
  ]);
}
