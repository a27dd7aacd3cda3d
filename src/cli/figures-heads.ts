/** The heads with their boards and dowels, for people. */
import type { Figures, Spec } from '../index.js';
import { columns, pairs } from './columns.js';
import type { FigureFormat } from './figure-format.js';

type Head = Figures['heads']['bottom'];

export function headSections({ heads }: Figures, spec: Spec, format: FigureFormat): string[] {
  const { top, bottom } = heads;
  const { titles } = format.words.figures.heads;
  if (!top) return [headSection(titles.tub, bottom, spec, format)];
  if (JSON.stringify(top) === JSON.stringify(bottom))
    return [headSection(titles.alike, top, spec, format)];
  return [
    headSection(titles.top, top, spec, format),
    headSection(titles.bottom, bottom, spec, format),
  ];
}

function headSection(name: string, head: Head, { units }: Spec, format: FigureFormat): string {
  const { length, cell, words } = format;
  const say = words.figures.heads;
  const boards = head.boards.map((board, i) => [
    String(i + 1),
    cell(board.width),
    cell(board.length),
  ]);
  return [
    `${name}\n`,
    pairs([
      [say.diameter, length(head.diameter)],
      [say.compass, say.sixSteps(length(head.crozeRadius))],
      [say.opensRadius, length(head.chimeOpening)],
      [say.opensGirth, length(2 * Math.PI * head.chimeOpening)],
    ]),
    '\n',
    columns([say.boardHeadings(units), ...boards]),
    dowelTable(head, units, format),
  ].join('');
}

function dowelTable({ dowels }: Head, units: string, { cell, words }: FigureFormat): string {
  if (dowels.length === 0) return '';
  const joints = [...new Set(dowels.map(({ joint }) => joint))];
  const rows = joints.map((joint) => {
    const places = dowels.filter((dowel) => dowel.joint === joint).map(({ x }) => cell(x));
    return `    ${joint}: ${words.typeset(places.join(', '))}\n`;
  });
  return `\n    ${words.figures.heads.dowels(units)}\n${rows.join('')}`;
}
