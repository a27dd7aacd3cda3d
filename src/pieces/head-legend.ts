/** What a head's sheet says in words and in its tables. */
import type { Legend, Table } from '../drawing/drawing.js';
import { lengthText, shortLengthText } from '../drawing/length-text.js';
import type { Units } from '../spec/spec.js';
import { boardLengthAllowance } from '../vessel/boards.js';
import type { Head } from '../vessel/head.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

export function headLegend(head: Head, units: Units, words: Words): Legend {
  const { notes } = words.head;
  const { spec, groove } = head;
  const text = (mm: number): string => withUnit(mm, units, words);
  const girth = 2 * Math.PI * groove.opening;
  const sentences = [
    notes.seen,
    notes.groove(text(groove.radius)),
    notes.edge(
      text(spec.edge.thickness),
      text(head.landDepth),
      text(spec.edge.outerBevel),
      text(spec.edge.innerBevel),
    ),
    notes.land(text(spec.edge.fromInside), text(spec.thickness)),
    ...(groove.opening > 0 ? [notes.opening(text(groove.opening), text(girth))] : []),
    notes.allowance(text(boardLengthAllowance)),
    ...(spec.crossGrain === 0 ? [] : [notes.crossGrain(text(spec.crossGrain))]),
    notes.blanks,
    words.caution.machines,
  ];
  const tables = [
    boardTable(head, units, words),
    ...(head.dowels.length > 0 ? [dowelTable(head, units, words)] : []),
  ];
  return { notes: sentences, tables };
}

export function boardTable({ boards }: Head, units: Units, words: Words): Table {
  return {
    title: words.head.boards.title,
    headings: words.head.boards.headings(words.unitNames[units]),
    rows: boards.map((board, i) => [
      String(i + 1),
      lengthText(board.width, units),
      lengthText(board.length, units),
      shortLengthText(board.chord, units),
    ]),
  };
}

function dowelTable({ dowels, joints }: Head, units: Units, words: Words): Table {
  const rows = joints.map((_, i) => {
    const places = dowels
      .filter(({ joint }) => joint === i + 1)
      .map(({ x }) => shortLengthText(x, units));
    return [String(i + 1), places.join(',  ') || '-'];
  });
  return {
    title: words.head.dowels.title,
    headings: words.head.dowels.headings(words.unitNames[units]),
    rows,
  };
}
