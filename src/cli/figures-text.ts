/** Figures for people: one section after the other, in the units of the spec. */
import type { Figures, Message, Spec } from '../index.js';
import { pairs } from './columns.js';
import { headSections } from './figures-heads.js';
import { figureFormat, type FigureFormat } from './figure-format.js';
import { hoopSection } from './figures-hoops.js';
import { sensitivitySection } from './figures-sensitivity.js';
import { staveSection } from './figures-staves.js';
import { oneLine } from './say.js';

export function figuresText(figures: Figures, spec: Spec, warnings: readonly Message[]): string {
  const format = figureFormat(spec.units);
  return [
    `${oneLine(spec.title)}${spec.vessel}, ${format.note}\n`,
    capacitySection(figures, spec, format),
    staveSection(figures, spec, format),
    ...headSections(figures, spec, format),
    hoopSection(figures, format),
    sensitivitySection(figures, spec, format),
    warningSection(warnings),
  ]
    .filter((section) => section !== '')
    .join('\n');
}

function capacitySection(figures: Figures, spec: Spec, { litres, mass }: FigureFormat): string {
  const from = spec.vessel === 'cask' ? 'between the heads' : 'from the bottom to the rim';
  const { oimlLimitLitres: limit, masses } = figures;
  const law = `±${litres(limit ?? 0, 2)}: OIML R 138:2007, wooden casks, for information`;
  return `Capacity\n${pairs([
    [from, litres(figures.capacityLitres, 1)],
    ['groove, howel and bevels', `${litres(figures.recessLitres, 2)}, left out of it`],
    ...(limit === undefined ? [] : [['sold by measure, may be off', law] as const]),
    [
      'empty, of air-dry oak',
      `${mass(masses.empty)}: wood ${mass(masses.wood)}, hoops ${mass(masses.steel)}`,
    ],
    ['full with water', mass(masses.fullWithWater)],
  ])}`;
}

function warningSection(warnings: readonly Message[]): string {
  if (warnings.length === 0) return '';
  const lines = warnings.map(({ key, text }) =>
    oneLine(`  ${key === '' ? '' : `${key}: `}${text}`),
  );
  return `Warnings\n${lines.join('')}`;
}
