/** The staves and their stations, for people. */
import type { Figures, Spec } from '../index.js';
import { columns, pairs } from './columns.js';
import type { FigureFormat } from './figure-format.js';

type Row = readonly [name: string, value: string];

export function staveSection(figures: Figures, spec: Spec, format: FigureFormat): string {
  const { stave } = figures;
  const { length, gap } = format;
  const mean = figures.staves ? ', of the mean width' : '';
  const closes: Row[] =
    figures.closesAt === undefined ? [] : [['close at a diameter of', length(figures.closesAt)]];
  return [
    'Staves\n',
    pairs([
      ['count', String(stave.count)],
      ['laid edge to edge', length(figures.laidWidth)],
      ...closes,
    ]),
    `\n  One stave${mean}\n`,
    pairs([
      ['blank thickness', length(stave.blankThickness)],
      [`width at the ${widest(spec)}`, length(stave.bilgeWidth)],
      ...atEnds('width at', stave.endWidth, length),
      ['length of the outer face', length(stave.outerLength)],
      ['length of the inner face', length(stave.innerLength)],
      ...bevels(figures, spec, format),
      ...atEnds('end cut,', stave.endCutDegrees, format.bevel),
      ['one gauge for all leaves open', `${gap(stave.fixedBevelGap)} at each joint`],
      ['outer face stretches by', `${stave.outerStretchPercent.toFixed(2)} %`],
    ]),
    `\n  Stations, counted from the middle towards the top\n`,
    stationTable(figures, spec, format),
    eachStave(figures, spec, format),
  ].join('');
}

const widest = ({ vessel }: Spec): string => (vessel === 'cask' ? 'bilge' : 'wider end');

/** One line where both ends are alike, else one each. */
function atEnds(
  name: string,
  { top, bottom }: { top: number; bottom: number },
  text: (value: number) => string,
): Row[] {
  if (text(top) === text(bottom)) return [[`${name} both ends`, text(top)]];
  return [
    [`${name} top`, text(top)],
    [`${name} bottom`, text(bottom)],
  ];
}

function bevels({ stave }: Figures, spec: Spec, { bevel, degrees }: FigureFormat): Row[] {
  const { bilge, top, bottom } = stave.bevelDegrees;
  const tilt: Row[] =
    stave.bladeTiltDegrees === undefined
      ? []
      : [['saw blade tilts', degrees(stave.bladeTiltDegrees)]];
  // the wall of a tub leans the same all the way up
  if (spec.vessel === 'tub') return [['joint bevel', bevel(bilge)], ...tilt];
  return [['joint bevel, bilge', bevel(bilge)], ...atEnds('joint bevel,', { top, bottom }, bevel)];
}

function stationTable({ stave }: Figures, { units }: Spec, format: FigureFormat): string {
  const { cell, degrees, per100 } = format;
  const heading = [`station ${units}`, `height ${units}`, `width ${units}`, 'bevel', 'per 100'];
  return columns([
    [...heading, `blank ${units}`],
    ...stave.stations.map(({ s, z, width, bevelDegrees, thickness }) => [
      cell(s),
      cell(z),
      cell(width),
      degrees(bevelDegrees),
      per100(bevelDegrees),
      cell(thickness),
    ]),
  ]);
}

/** A mixed set, in ring order. */
function eachStave({ staves }: Figures, spec: Spec, format: FigureFormat): string {
  if (!staves) return '';
  const { cell, degrees } = format;
  const { units } = spec;
  const rows = staves.map(({ width, endWidth, bevelDegrees, blankThickness }, i) => [
    String(i + 1),
    cell(width),
    cell(endWidth.top),
    cell(endWidth.bottom),
    degrees(bevelDegrees.bilge),
    cell(blankThickness),
  ]);
  const heading = ['stave', `width ${units}`, `top ${units}`, `bottom ${units}`, 'bevel'];
  return `\n  Each stave, in the order round the ring\n${columns([[...heading, `blank ${units}`], ...rows])}`;
}
