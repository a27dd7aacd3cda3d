/** What `match` answers, in English. */
import { asWritten } from '../index.js';
import type { MatchWords } from './match-words.js';

const staves = (count: number): string => (count === 1 ? '1 stave' : `${count} staves`);
const sets = (count: number): string => (count === 1 ? '1 set' : `${count} sets`);

export const matchWordsEnglish: MatchWords = {
  typeset: asWritten,
  found: (found, wanted, count) =>
    `${wanted === null ? sets(found) : `${found} of ${sets(wanted)}`} from ${staves(count)}`,
  proven: (bound) => `no method makes more than ${bound}`,
  bound: (bound) => `more than ${bound} are ruled out`,
  best: 'proven best',
  asked: (diameter, tolerance, count, plane, bung) =>
    `asked: ${diameter} within ${tolerance}, ${count} staves, planing up to ${plane} a set, ${bung}`,
  bungOf: (width) => `bung stave of ${width} at least`,
  noBung: 'no bung stave',
  measured: {
    blank: 'widths are taken as measured across the flat outer face, before backing',
    backed: 'widths are taken as measured from corner to corner, after backing',
  },
  set: (set) => `Set ${set}`,
  names: {
    closes: 'closes at',
    staves: 'staves',
    bungStave: 'bung stave',
    order: 'order',
    large: 'if large',
    small: 'if small',
  },
  closes: (diameter, sure, off) => `${diameter} ± ${sure}, ${off} from the spec`,
  staves: (count, laid) => `${count}, laid edge to edge ${laid}`,
  bungStave: (mark, width) => `${mark}, ${width}`,
  order: (measure, parts) => `${measure}: ${parts}`,
  orderParts: {
    joints: (mm) => `joints stray ${mm}`,
    balance: (mm) => `widths lean ${mm}`,
    neighbours: (mm) => `neighbours of the first below the mean by ${mm}`,
    pairs: (count) => `${count} narrow pairs`,
    inLine: (count) => `${count} in line with head joints`,
  },
  cure: (takeOut, putIn, by) => `take out ${takeOut}, put in ${putIn}: ${by}`,
  headings: (unit) => [
    'place',
    'mark',
    `width ${unit}`,
    `plane off ${unit}`,
    `laid so far ${unit}`,
    '',
  ],
  bungMark: 'bung',
  legend: [
    'Beside a diameter: one standard deviation, from the step the widths were read to. Order: the measure, lower is better, and what it is made of.',
    'If large, if small: a spare from the rack that cures a ring that closes so.',
  ],
  left: (count) => `Left on the rack: ${staves(count)}`,
  leftMore: (count) => `and ${count} more`,
  unfit: {
    length: (count) => `too short: ${staves(count)}`,
    thickness: (count) => `too thin for their own blank: ${staves(count)}`,
    width: (count) => `too wide for this vessel: ${staves(count)}`,
  },
  shortfall: (set, why) => `No set ${set}: ${why}.`,
  reasons: {
    wood: (girth) => `not enough wood, the rack lacks ${girth} of girth`,
    counts: () => 'counts are out of range, so many staves of these widths do not make the girth',
    noBung: (_, width) =>
      `no stave on the rack can take the bung: none that may be the bung stave is at least ${width} wide`,
    bung: () => 'no bung stave is left for it',
    widths: () => 'the widths on the rack do not add up to it within the tolerance',
    search: () => 'none was found, though none is ruled out; another --seed may find it',
    stopped: () => 'the search was stopped',
    standing: () => 'the staves that stand cannot be completed',
  },
  help: (count, widths, set) => `${staves(count)} of ${widths} would make set ${set}.`,
  widths: (from, to) => `${from} to ${to}`,
  interrupted: 'stopped: this is the best so far',
  progress: {
    choosing: (done, of) => `choosing staves: ${done} of ${sets(of)}`,
    ordering: (done, of) => `ordering rings: ${done} of ${of}`,
  },
  wrote: (files, folder) => `wrote ${files} files to ${folder}`,
  noPatterns: (first, command) =>
    `the staves of set ${first} and later have no patterns of their own yet; ${command}`,
  carry: (plan) => `carry ${plan} to the rack: plan and checklist`,
  list: {
    tooLarge: (kilobytes) => `is too large: a rack list has at most ${kilobytes} kB`,
    notText: 'is not a text file: a rack list is CSV text',
    notUtf8: 'is not a text file in UTF-8: a rack list is CSV text, saved as UTF-8',
  },
  swap: {
    broken: (mark, place, of, width) => `broken: ${mark}, place ${place} of ${of}, ${width} wide`,
    closes: (diameter) => `the ring closes at ${diameter}, which its heads and hoops fit`,
    bungStave: 'it is the bung stave, and so must be what takes its place',
    headings: (unit) => ['mark', `width ${unit}`, `plane off ${unit}`, `ring closes at ${unit}`],
    none: 'No spare on the rack takes its place.',
    cut: (width, from, to) =>
      `Or cut one ${width} wide; ${from} to ${to} close within the tolerance.`,
  },
};
