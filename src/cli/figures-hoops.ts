/** The hoops, for people. */
import type { Figures } from '../index.js';
import { columns } from './columns.js';
import type { FigureFormat } from './figure-format.js';

export function hoopSection({ hoops }: Figures, { cell, mass }: FigureFormat): string {
  if (hoops.length === 0) return '';
  const rows = hoops.map((hoop) => [
    hoop.name,
    hoop.end,
    cell(hoop.offset),
    cell(hoop.width),
    cell(hoop.nearGirth),
    cell(hoop.farGirth),
    cell(hoop.cutLength),
    cell(hoop.splay),
    mass(hoop.mass),
  ]);
  const heading = [
    'hoop',
    'end',
    'offset',
    'width',
    'near girth',
    'far girth',
    'cut length',
    'splay',
  ];
  return `Hoops, girths at the edge near the end and the far one\n${columns([[...heading, 'mass'], ...rows], { left: 2, indent: '  ' })}`;
}
