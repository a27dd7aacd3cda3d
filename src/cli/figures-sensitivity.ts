/** What small errors of the bench do, for people. */
import type { Figures, Spec } from '../index.js';
import { columns } from './columns.js';
import type { FigureFormat } from './figure-format.js';

type Slip = Figures['sensitivity'][number];

export function sensitivitySection(
  { sensitivity }: Figures,
  { units }: Spec,
  { gap }: FigureFormat,
): string {
  const bare = (mm: number): string => gap(mm).replace(` ${units}`, '');
  const change = (mm: number): string => (Math.abs(mm) < 5e-4 ? '0' : signed(bare(mm)));
  const rows = sensitivity.map((slip) => [
    nameOf(slip, gap),
    slip.opensAt === null ? '0' : `${bare(slip.jointGap)} ${slip.opensAt}`,
    change(slip.diameter),
    change(slip.girth),
    change(slip.headClearance),
    Math.abs(slip.litres) < 5e-3 ? '0' : signed(slip.litres.toFixed(2)),
  ]);
  const headings = ['slip', 'joint opens', 'diameter', 'girth', 'head looser by', 'litres'];
  return `Small errors and what they do, ${units} and litres\n${columns([headings, ...rows], { left: 1, indent: '  ' })}`;
}

const signed = (text: string): string => (text.startsWith('-') ? text : `+${text}`);

function nameOf({ slip, amount }: Slip, length: (mm: number) => string): string {
  const names: Record<Slip['slip'], string> = {
    'bevels-steep': `every bevel ${amount}° too much`,
    'bevels-flat': `every bevel ${amount}° too little`,
    'staves-wide': `every stave ${length(amount)} wide`,
    'one-stave-wide': `one stave ${length(amount)} wide`,
    'groove-inset': `groove ${length(amount)} further from the end`,
    'groove-depth': `groove ${length(amount)} deeper`,
  };
  return names[slip];
}
