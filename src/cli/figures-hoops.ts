/** The hoops, for people. */
import type { Figures } from '../index.js';
import { columns } from './columns.js';
import type { FigureFormat } from './figure-format.js';

export function hoopSection({ hoops }: Figures, { cell, mass, words }: FigureFormat): string {
  if (hoops.length === 0) return '';
  const rows = hoops.map((hoop) => [
    words.hoopName(hoop.name),
    words.ends[hoop.end],
    cell(hoop.offset),
    cell(hoop.width),
    cell(hoop.nearGirth),
    cell(hoop.farGirth),
    cell(hoop.cutLength),
    cell(hoop.splay),
    mass(hoop.mass),
  ]);
  const { title, headings } = words.figures.hoops;
  return `${title}\n${columns([headings, ...rows], { left: 2, indent: '  ' })}`;
}
