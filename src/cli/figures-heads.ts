/** The heads with their boards and dowels, for people. */
import type { Figures, Spec } from '../index.js';
import { columns, pairs } from './columns.js';
import type { FigureFormat } from './figure-format.js';

type Head = Figures['heads']['bottom'];

export function headSections({ heads }: Figures, spec: Spec, format: FigureFormat): string[] {
  const { top, bottom } = heads;
  if (!top) return [headSection('Bottom', bottom, spec, format)];
  if (JSON.stringify(top) === JSON.stringify(bottom))
    return [headSection('Heads, top and bottom alike', top, spec, format)];
  return [
    headSection('Top head', top, spec, format),
    headSection('Bottom head', bottom, spec, format),
  ];
}

function headSection(name: string, head: Head, { units }: Spec, format: FigureFormat): string {
  const { length, cell } = format;
  const boards = head.boards.map((board, i) => [
    String(i + 1),
    cell(board.width),
    cell(board.length),
  ]);
  return [
    `${name}\n`,
    pairs([
      ['diameter', length(head.diameter)],
      ['compass for the groove', `${length(head.crozeRadius)}, six steps round`],
      ['chime opens, in radius', length(head.chimeOpening)],
      ['chime opens, in girth', length(2 * Math.PI * head.chimeOpening)],
    ]),
    '\n',
    columns([['board', `width ${units}`, `blank length ${units}`], ...boards]),
    dowelTable(head, units, format),
  ].join('');
}

function dowelTable({ dowels }: Head, units: string, { cell }: FigureFormat): string {
  if (dowels.length === 0) return '';
  const joints = [...new Set(dowels.map(({ joint }) => joint))];
  const rows = joints.map((joint) => {
    const places = dowels.filter((dowel) => dowel.joint === joint).map(({ x }) => cell(x));
    return `    ${joint}: ${places.join(', ')}\n`;
  });
  return `\n    dowels of each joint, from the middle along it, ${units}\n${rows.join('')}`;
}
