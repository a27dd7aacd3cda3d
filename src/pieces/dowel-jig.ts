/** A drilling guide for the dowels of all joints of a head, full size, as it is clamped on the joint of a board. */
import { circle, line, polygon } from '../geometry/curve.js';
import { drawingOf, leaderLabel, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing, Legend } from '../drawing/drawing.js';
import { shortLengthText } from '../drawing/length-text.js';
import type { Units } from '../spec/spec.js';
import { dowelGuide, type GuideRow } from '../vessel/dowel-guide.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { stacked } from './arrange.js';
import { crossLines } from './crosswise.js';
import { namedHeads } from './head-names.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

/** Wood past the outermost holes, mm. */
const past = 25;
const betweenRows = 10;
/** How thick a guide must be to lead a drill, in diameters of the hole (common practice, no source). */
const leads = 2.5;

/** One for each head that differs; none for heads without dowels. */
export function dowelJigs(vessel: Vessel, words: Words): Drawing[] {
  return namedHeads(vessel, words).flatMap(({ head, name }) => {
    const rows = dowelGuide(head);
    if (rows.length === 0) return [];
    const end = name === 'head' ? 'both' : head.groove.end;
    const { units } = vessel.spec;
    const guides = rows.map((row) => guidePart(row, head, units, words));
    const stem = name.replace('head', 'dowel-jig');
    const title = words.jigs.dowel.title[end];
    return [
      drawingOf(stem, title, stacked(guides, betweenRows), legendOf(head, rows, units, words)),
    ];
  });
}

/** The guide from the outside face (top) to the inside face of boards; holes at mid-thickness. */
function guidePart({ holes }: GuideRow, { spec }: Head, units: Units, words: Words): Part {
  const half = spec.thickness / 2;
  const reach = Math.max(...holes.map(({ x }) => Math.abs(x))) + past;
  const radius = spec.dowels.diameter / 2;
  const outline = polygon([
    { x: -reach, y: -half },
    { x: reach, y: -half },
    { x: reach, y: half },
    { x: -reach, y: half },
  ]);
  const across = holes
    .filter(({ x }) => Math.abs(x) > 1)
    .map(({ x }) => line({ x, y: -radius - 2 }, { x, y: radius + 2 }));
  const { dowel } = words.jigs;
  const named = holes.map(({ x, joints }) => ({
    x,
    half: 0,
    text: dowel.hole(joints.join(', '), shortLengthText(x, units)),
  }));
  return merge(
    strokes('outline', outline),
    strokes('bore', ...holes.map(({ x }) => circle({ x, y: 0 }, radius))),
    strokes(
      'centre',
      line({ x: -reach - 4, y: 0 }, { x: reach + 4, y: 0 }),
      line({ x: 0, y: -half - 6 }, { x: 0, y: half }),
      ...across,
    ),
    crossLines(named, half, 1),
    edgeWords(reach, half, words),
  );
}

/** To the left of the guide: which edge lies on which face; below it, what its middle is. */
function edgeWords(reach: number, half: number, words: Words): Part {
  const { outer, inner, middle } = words.jigs.dowel;
  const right = { align: 'right' } as const;
  return merge(
    leaderLabel(outer, { x: -reach - 12, y: half + 5 }, { x: -reach + 4, y: half }, right),
    leaderLabel(inner, { x: -reach - 12, y: -half - 8.5 }, { x: -reach + 4, y: -half }, right),
    leaderLabel(middle, { x: 14, y: -half - 14 }, { x: 0, y: -half - 6 }),
  );
}

function legendOf(head: Head, rows: readonly GuideRow[], units: Units, words: Words): Legend {
  const { notes, table } = words.jigs.dowel;
  const { diameter, length } = head.spec.dowels;
  const text = (mm: number): string => withUnit(mm, units, words);
  const joints = [...new Set(head.dowels.map(({ joint }) => joint))];
  const places = (joint: number): string =>
    head.dowels
      .filter((dowel) => dowel.joint === joint)
      .map(({ x }) => shortLengthText(x, units))
      .join(', ');
  return {
    notes: [
      notes.hold,
      notes.middle,
      notes.which,
      ...(rows.length > 1 ? [notes.rows] : []),
      notes.depth(text(diameter), text(length / 2)),
      notes.make(text(leads * diameter)),
      notes.caution,
    ],
    tables: [
      {
        title: table.title,
        headings: table.headings(words.unitNames[units]),
        rows: joints.map((joint) => [String(joint), places(joint)]),
      },
    ],
  };
}
