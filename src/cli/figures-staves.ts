/** The staves and their stations, for people. */
import type { Figures, Spec } from '../index.js';
import { columns, pairs } from './columns.js';
import type { FigureFormat } from './figure-format.js';

type Row = readonly [name: string, value: string];

export function staveSection(figures: Figures, spec: Spec, format: FigureFormat): string {
  const { length, words } = format;
  const say = words.figures.staves;
  const closes: Row[] =
    figures.closesAt === undefined ? [] : [[say.closes, length(figures.closesAt)]];
  return [
    `${say.title}\n`,
    pairs([
      [say.count, String(figures.stave.count)],
      [say.laid, length(figures.laidWidth)],
      ...closes,
    ]),
    `\n  ${figures.staves ? say.mean : say.one}\n`,
    pairs(oneStave(figures, spec, format)),
    `\n  ${say.stations}\n`,
    stationTable(figures, spec, format),
    eachStave(figures, spec, format),
  ].join('');
}

function oneStave(figures: Figures, spec: Spec, format: FigureFormat): Row[] {
  const { stave } = figures;
  const { length, gap, number, words } = format;
  const say = words.figures.staves;
  return [
    [say.thickness, length(stave.blankThickness)],
    [say.widest[spec.vessel], length(stave.bilgeWidth)],
    ...atEnds(say.width, stave.endWidth, length),
    [say.outerLength, length(stave.outerLength)],
    [say.innerLength, length(stave.innerLength)],
    ...bevels(figures, spec, format),
    ...atEnds(say.endCut, stave.endCutDegrees, format.bevel),
    [say.gap, say.atEachJoint(gap(stave.fixedBevelGap))],
    [say.stretch, `${number(stave.outerStretchPercent, 2)} %`],
  ];
}

/** One line where both ends are alike, else one each. */
function atEnds(
  names: Readonly<Record<'both' | 'top' | 'bottom', string>>,
  { top, bottom }: { top: number; bottom: number },
  text: (value: number) => string,
): Row[] {
  if (text(top) === text(bottom)) return [[names.both, text(top)]];
  return [
    [names.top, text(top)],
    [names.bottom, text(bottom)],
  ];
}

function bevels({ stave }: Figures, spec: Spec, { bevel, degrees, words }: FigureFormat): Row[] {
  const say = words.figures.staves;
  const { bilge, top, bottom } = stave.bevelDegrees;
  const tilt: Row[] =
    stave.bladeTiltDegrees === undefined ? [] : [[say.blade, degrees(stave.bladeTiltDegrees)]];
  // the wall of a tub leans the same all the way up
  if (spec.vessel === 'tub') return [[say.bevel, bevel(bilge)], ...tilt];
  return [[say.bevelBilge, bevel(bilge)], ...atEnds(say.bevels, { top, bottom }, bevel)];
}

function stationTable({ stave }: Figures, { units }: Spec, format: FigureFormat): string {
  const { cell, degrees, per100, words } = format;
  return columns([
    words.figures.staves.stationHeadings(units),
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
function eachStave({ staves }: Figures, { units }: Spec, format: FigureFormat): string {
  if (!staves) return '';
  const { cell, degrees, words } = format;
  const { each, eachHeadings } = words.figures.staves;
  const rows = staves.map(({ width, endWidth, bevelDegrees, blankThickness }, i) => [
    String(i + 1),
    cell(width),
    cell(endWidth.top),
    cell(endWidth.bottom),
    degrees(bevelDegrees.bilge),
    cell(blankThickness),
  ]);
  return `\n  ${each}\n${columns([eachHeadings(units), ...rows])}`;
}
