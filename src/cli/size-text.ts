/** What `size` found, for people. */
import type { Sized, Spec } from '../index.js';
import { changesText } from './changes-text.js';
import { columns } from './columns.js';
import { figureFormat, type FigureFormat } from './figure-format.js';
import type { CliWords } from './words.js';

export function sizeText(sized: Sized, before: number, old: Spec, words: CliWords): string {
  const format = figureFormat(old.units, words);
  const { litres } = format;
  return [
    `${words.changes.capacity(litres(before, 2), litres(sized.litres, 2))}\n`,
    changesText(sized.changes, old, format),
    nearbyText(sized, old, format),
  ].join('');
}

function nearbyText({ nearby }: Sized, { units, outside }: Spec, format: FigureFormat): string {
  if (nearby.length === 0) return '';
  const { cell, number, words } = format;
  const { round: title, headings, diameters } = words.size;
  const signed = (value: number): string => `${value < 0 ? '' : '+'}${number(value, 2)}`;
  const rows = nearby.map(({ height, outside: round, litres, off }) => [
    cell(height),
    ...(round.kind === 'cask' ? [round.bilge, round.ends] : [round.top, round.bottom]).map(cell),
    number(litres, 2),
    signed(off),
    `${signed((100 * off) / (litres - off))} %`,
  ]);
  const heading = [...headings(units, diameters[outside.kind]), ''];
  return `${title(units === 'mm' ? '5 mm' : '1/4 in')}\n${columns([heading, ...rows], { indent: '  ' })}`;
}
