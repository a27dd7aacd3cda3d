/** Figures for people: one section after the other, in the units of the spec. */
import type { Figures, Message, Spec } from '../index.js';
import { pairs } from './columns.js';
import { headSections } from './figures-heads.js';
import { figureFormat, type FigureFormat } from './figure-format.js';
import { hoopSection } from './figures-hoops.js';
import { sensitivitySection } from './figures-sensitivity.js';
import { staveSection } from './figures-staves.js';
import { oneLine } from './say.js';
import type { CliWords } from './words.js';

export function figuresText(
  figures: Figures,
  spec: Spec,
  warnings: readonly Message[],
  words: CliWords,
): string {
  const format = figureFormat(spec.units, words);
  return [
    `${oneLine(spec.title)}${words.vessels[spec.vessel]}, ${format.note}\n`,
    capacitySection(figures, spec, format),
    staveSection(figures, spec, format),
    ...headSections(figures, spec, format),
    hoopSection(figures, format),
    sensitivitySection(figures, spec, format),
    warningSection(warnings, words),
  ]
    .filter((section) => section !== '')
    .join('\n');
}

function capacitySection(figures: Figures, spec: Spec, format: FigureFormat): string {
  const { litres, mass, words } = format;
  const say = words.figures.capacity;
  const { oimlLimitLitres: limit, masses } = figures;
  const weights = [masses.empty, masses.wood, masses.steel].map(mass) as [string, string, string];
  return `${say.title}\n${pairs([
    [say.from[spec.vessel], litres(figures.capacityLitres, 1)],
    [say.recess, say.leftOut(litres(figures.recessLitres, 2))],
    ...(limit === undefined ? [] : [[say.law, say.limit(litres(limit, 2))] as const]),
    [say.empty, say.masses(...weights)],
    [say.full, mass(masses.fullWithWater)],
  ])}`;
}

function warningSection(warnings: readonly Message[], { figures }: CliWords): string {
  if (warnings.length === 0) return '';
  const lines = warnings.map(({ key, text }) =>
    oneLine(`  ${key === '' ? '' : `${key}: `}${text}`),
  );
  return `${figures.warnings}\n${lines.join('')}`;
}
