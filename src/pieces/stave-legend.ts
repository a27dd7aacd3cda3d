/** What a stave's sheet says in words and in its table. */
import type { Legend, Table } from '../drawing/drawing.js';
import { angleText, lengthText, per100Text, shortLengthText } from '../drawing/length-text.js';
import { widestHeight } from '../vessel/profile.js';
import { stationsOf } from '../vessel/stations.js';
import { fixedBevelGap, type Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

export function staveLegend(vessel: Vessel, stave: Stave, words: Words): Legend {
  const notes = [
    ...shapeNotes(vessel, stave, words),
    ...bevelNotes(vessel, stave, words),
    ...endNotes(vessel, stave, words),
    ...workNotes(vessel, words),
  ];
  return { notes, tables: [stationTable(vessel, stave, words)] };
}

function shapeNotes({ spec, ring, staves }: Vessel, stave: Stave, words: Words): string[] {
  const { notes } = words.stave;
  const text = (mm: number): string => withUnit(mm, spec.units, words);
  const { inside, outside, thickness, widths } = spec.staves;
  const closes = widths ? notes.closesMixed : notes.closes;
  return [
    closes(staves.length, text(ring.closesAt)),
    notes.faces(text(stave.blankThickness)),
    notes.key,
    inside === 'hollowed' ? notes.hollow(text(thickness)) : notes.flatInside,
    outside === 'rounded' ? notes.rounded : notes.flatOutside,
  ];
}

function bevelNotes({ spec }: Vessel, stave: Stave, words: Words): string[] {
  const { notes } = words.stave;
  const widest = widestHeight(spec);
  const end = spec.height / 2;
  if (spec.vessel === 'tub') {
    const [angle, slope] = [angleText(stave.bevel(0)), per100Text(stave.bevel(0))];
    return [notes.evenBevel(angle, slope), notes.blade(angleText(stave.sawTilt(0)))];
  }
  const at = (z: number): [string, string] => [
    angleText(stave.bevel(z)),
    per100Text(stave.bevel(z)),
  ];
  const gap = withUnit(fixedBevelGap(stave, widest, end), spec.units, words, 2);
  return [notes.bevel(...at(widest), ...at(end)), notes.fixedBevel(gap)];
}

/** An end that is out of square by less than this, mm, is sawn square. */
const leastCut = 0.05;

function endNotes({ spec }: Vessel, stave: Stave, words: Words): string[] {
  const { notes } = words.stave;
  const text = (mm: number): string => withUnit(mm, spec.units, words);
  const longerBy = (end: 'top' | 'bottom'): number =>
    Math.abs(stave.ends[end].innerStation) - Math.abs(stave.ends[end].outerStation);
  const cut = (end: 'top' | 'bottom'): string => {
    const by = longerBy(end);
    if (Math.abs(by) < leastCut) return notes.squareEnd(words.ends[end]);
    const longer = by < 0 ? notes.shorter(text(-by)) : notes.longer(text(by));
    return notes.endCut(words.ends[end], angleText(stave.ends[end].angle, 1), longer);
  };
  const router = (['top', 'bottom'] as const)
    .filter((end) => spec.staves.ends === 'cut' && longerBy(end) > leastCut)
    .map((end) => notes.routerLength(words.ends[end], text(longerBy(end))));
  const overlong = spec.staves.ends === 'overlong' ? [notes.overlong(text(spec.staves.trim))] : [];
  return [cut('top'), cut('bottom'), ...overlong, ...router, notes.routerEdges];
}

function workNotes({ spec }: Vessel, words: Words): string[] {
  const bung = spec.bung
    ? [words.stave.notes.bung(withUnit(spec.bung.diameter, spec.units, words))]
    : [];
  return [words.stave.notes.grain, ...bung, words.caution.machines];
}

function stationTable(vessel: Vessel, stave: Stave, words: Words): Table {
  const { units } = vessel.spec;
  const text = (mm: number): string => shortLengthText(mm, units);
  return {
    title: words.stave.table.title,
    headings: words.stave.table.headings(words.unitNames[units]),
    rows: stationsOf(vessel, stave).map(({ s, z, width, bevel, thickness }) => [
      text(s),
      text(z),
      lengthText(width, units),
      angleText(bevel),
      per100Text(bevel),
      text(thickness),
    ]),
  };
}
