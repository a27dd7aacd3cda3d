/** What small errors of the bench do, for people. */
import type { Figures, Spec } from '../index.js';
import { columns } from './columns.js';
import type { FigureFormat } from './figure-format.js';

type Slip = Figures['sensitivity'][number];

export function sensitivitySection(
  { sensitivity }: Figures,
  { units }: Spec,
  { gap, number, words }: FigureFormat,
): string {
  const { title, headings, faces, names } = words.figures.slips;
  const bare = (mm: number): string => gap(mm).replace(` ${units}`, '');
  const change = (mm: number): string => (Math.abs(mm) < 5e-4 ? '0' : signed(bare(mm)));
  const amountOf = ({ slip, amount }: Slip): string =>
    slip.startsWith('bevels') ? `${words.typeset(String(amount))}°` : gap(amount);
  const rows = sensitivity.map((slip) => [
    names[slip.slip](amountOf(slip)),
    slip.opensAt === null ? '0' : `${bare(slip.jointGap)} ${faces[slip.opensAt]}`,
    change(slip.diameter),
    change(slip.girth),
    change(slip.headClearance),
    Math.abs(slip.litres) < 5e-3 ? '0' : signed(number(slip.litres, 2)),
  ]);
  return `${title(units)}\n${columns([headings, ...rows], { left: 1, indent: '  ' })}`;
}

const signed = (text: string): string => (text.startsWith('-') ? text : `+${text}`);
