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
    edgeNote(head, text, words),
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

/** The sheet of one board: its blank, its own dowels, and the edge it shares with the others. */
export function boardLegend(head: Head, index: number, units: Units, words: Words): Legend {
  const { notes, boardNotes } = words.head;
  const { spec } = head;
  const text = (mm: number): string => withUnit(mm, units, words);
  const dowels = dowelTable(head, units, words, [index, index + 1]);
  const drilled = dowels.rows.some((row) => row[1] !== noDowel);
  const sentences = [
    boardNotes.seen,
    boardNotes.blank,
    ...(drilled
      ? [boardNotes.dowels(text(spec.dowels.diameter), text(spec.dowels.length / 2))]
      : []),
    edgeNote(head, text, words),
    notes.land(text(spec.edge.fromInside), text(spec.thickness)),
    words.caution.machines,
  ];
  const boards = boardTable(head, units, words);
  const own = { ...boards, rows: boards.rows.slice(index, index + 1) };
  return { notes: sentences, tables: [own, ...(drilled ? [dowels] : [])] };
}

function edgeNote({ spec, landDepth }: Head, text: (mm: number) => string, words: Words): string {
  const { thickness, outerBevel, innerBevel } = spec.edge;
  return words.head.notes.edge(
    text(thickness),
    text(landDepth),
    text(outerBevel),
    text(innerBevel),
  );
}

function boardTable({ boards }: Head, units: Units, words: Words): Table {
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

const noDowel = '-';

/** Of all joints, or of those that are named and exist. */
function dowelTable(
  { dowels, joints }: Head,
  units: Units,
  words: Words,
  of?: readonly number[],
): Table {
  const numbers = joints.map((_, i) => i + 1).filter((joint) => !of || of.includes(joint));
  const rows = numbers.map((number) => {
    const places = dowels.filter(({ joint }) => joint === number);
    return [
      String(number),
      places.map(({ x }) => shortLengthText(x, units)).join(',  ') || noDowel,
    ];
  });
  const headings = words.head.dowels.headings(words.unitNames[units]);
  return { title: words.head.dowels.title, headings, rows };
}
