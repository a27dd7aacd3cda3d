/** What `size` found, for people. */
import type { Sized, Spec } from '../index.js';
import { changesText } from './changes-text.js';
import { columns } from './columns.js';
import { figureFormat, type FigureFormat } from './figure-format.js';

export function sizeText(sized: Sized, before: number, old: Spec): string {
  const format = figureFormat(old.units);
  const { litres } = format;
  return [
    `capacity ${litres(before, 2)} -> ${litres(sized.litres, 2)}\n`,
    changesText(sized.changes, old, format),
    nearbyText(sized, old, format),
  ].join('');
}

function nearbyText({ nearby }: Sized, { units, outside }: Spec, { cell }: FigureFormat): string {
  if (nearby.length === 0) return '';
  const names = outside.kind === 'cask' ? ['bilge', 'ends'] : ['top', 'bottom'];
  const step = units === 'mm' ? '5 mm' : '1/4 in';
  const rows = nearby.map(({ height, outside: round, litres, off }) => [
    cell(height),
    ...(round.kind === 'cask' ? [round.bilge, round.ends] : [round.top, round.bottom]).map(cell),
    litres.toFixed(2),
    signed(off),
    `${signed((100 * off) / (litres - off))} %`,
  ]);
  const headings = [`height ${units}`, ...names.map((name) => `${name} ${units}`), 'litres', 'off'];
  return `round dimensions near these, whole ${step} where they may change\n${columns(
    [[...headings, ''], ...rows],
    { indent: '  ' },
  )}`;
}

const signed = (value: number): string => `${value < 0 ? '' : '+'}${value.toFixed(2)}`;
