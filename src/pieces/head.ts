/** The whole head, seen from outside: rim, bevels, board joints, dowels, compass point. */
import { circle, line } from '../geometry/curve.js';
import { arrowhead } from '../drawing/arrow.js';
import { drawingOf, label, leaderLabel, merge, strokes, type Part } from '../drawing/build.js';
import { dimensionLine } from '../drawing/dimension.js';
import type { Drawing } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { shortLengthText } from '../drawing/length-text.js';
import { textWidth } from '../drawing/lettering.js';
import type { HeadSpec, Units } from '../spec/spec.js';
import { halfChord } from '../vessel/boards.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { bores } from './head-bores.js';
import { headLegend } from './head-legend.js';
import { namedHeads } from './head-names.js';
import { halfChordInside, roundInside } from './rim.js';
import type { Words } from './words/index.js';

/** Space beside the rim for labels, and under it for the diameter. */
const aside = 12;

export function heads(vessel: Vessel, words: Words): Drawing[] {
  const { units } = vessel.spec;
  return namedHeads(vessel, words).map(({ head, name, title }) => {
    const part = merge(
      wood(head),
      bevels(head),
      bores(head.dowels, head.spec),
      centre(head),
      boardLabels(head, units, words),
      edgeLabels(head, units, words),
      grain(head, words),
      diameters(head, units, words),
    );
    return drawingOf(name, title, part, headLegend(head, units, words));
  });
}

function wood(head: Head): Part {
  const joints = head.joints.map((y) => {
    const half = halfChord(head.rim, y);
    return line({ x: -half, y }, { x: half, y });
  });
  return merge(strokes('outline', roundInside(head.rim, 0)), strokes('joint', ...joints));
}

function bevels({ rim, spec, landDepth }: Head): Part {
  const { outerBevel, innerBevel } = spec.edge;
  return strokes('bevel', ...[outerBevel, innerBevel, landDepth].map((by) => roundInside(rim, by)));
}

/** The upright centre line, and a level one unless a joint lies there. */
function centre({ rim, joints }: Head): Part {
  const small = strokes('centre', circle({ x: 0, y: 0 }, 1.5));
  const upright = line({ x: 0, y: -rim.across - 6 }, { x: 0, y: rim.across + 6 });
  const hasMiddleJoint = joints.some((y) => Math.abs(y) < 1);
  const level = line({ x: -rim.along - 6, y: 0 }, { x: rim.along + 6, y: 0 });
  return merge(small, strokes('centre', upright, ...(hasMiddleJoint ? [] : [level])));
}

/** Each board's number and blank, to the right of the head. */
function boardLabels({ boards, rim }: Head, units: Units, words: Words): Part {
  const text = (mm: number): string => shortLengthText(mm, units);
  const parts = boards.map((board, i) => {
    const y = (board.from + board.to) / 2;
    const shift = Math.abs(y) < 4 ? 8 : 0;
    return leaderLabel(
      words.head.board(i + 1, text(board.width), text(board.length)),
      { x: rim.along + aside, y: y + shift },
      { x: halfChord(rim, y + shift + 1.75) - 3, y: y + shift + 1.75 },
    );
  });
  return merge(...parts);
}

/** What the rings inside the rim are, to the left of the head, fanned out one above the other. */
function edgeLabels({ rim, spec, landDepth, dowels }: Head, units: Units, words: Words): Part {
  const { outerBevel, innerBevel } = spec.edge;
  const rings = [
    { by: landDepth, text: words.head.land },
    { by: innerBevel, text: words.head.innerBevel },
    { by: outerBevel, text: words.head.outerBevel },
  ].sort((a, b) => a.by - b.by);
  const labels = rings.map(({ by, text }, i) => {
    const y = rim.across * (0.62 - 0.1 * i);
    return leaderLabel(
      text,
      { x: -rim.along - aside, y: y - 1.75 },
      { x: -halfChordInside(rim, by, y), y },
      { align: 'right' },
    );
  });
  const dowel = dowels[0];
  if (!dowel) return merge(...labels);
  const text = dowelText(spec, units, words);
  const y = dowel.y - spec.dowels.length / 4;
  const target = { x: dowel.x - spec.dowels.diameter / 2, y };
  return merge(
    ...labels,
    leaderLabel(text, { x: -rim.along - aside, y: y - 1.75 }, target, { align: 'right' }),
  );
}

function dowelText({ dowels }: HeadSpec, units: Units, words: Words): string {
  const size = (mm: number): string => shortLengthText(mm, units);
  return words.head.dowel(size(dowels.diameter), size(dowels.length));
}

/** The grain's direction, above the head. */
function grain({ rim }: Head, words: Words): Part {
  const y = rim.across + 10;
  const [from, to] = [aside, aside + 50];
  return merge(
    strokes(
      'dimension',
      line({ x: from, y }, { x: to, y }),
      arrowhead({ x: from, y }, Math.PI),
      arrowhead({ x: to, y }, 0),
    ),
    label(words.grain, { x: (from + to) / 2, y: y + 2.2 }, { align: 'centre' }),
  );
}

function diameters({ rim, spec }: Head, units: Units, words: Words): Part {
  const text = (mm: number): string => shortLengthText(mm, units);
  const below = -rim.across - 18;
  const along = dimensionLine(
    words.head.diameter(text(2 * rim.along)),
    { x: -rim.along, y: 0 },
    { x: rim.along, y: 0 },
    { x: 0, y: below },
  );
  if (spec.crossGrain === 0) return along;
  const { land, innerBevel, outerBevel } = words.head;
  const leftLabels = [land, innerBevel, outerBevel, dowelText(spec, units, words)];
  const labelsWidth = Math.max(...leftLabels.map((each) => textWidth(each, heights.normal)));
  const x = -rim.along - aside - labelsWidth - 12;
  const across = dimensionLine(
    words.head.acrossDiameter(text(2 * rim.across)),
    { x: 0, y: -rim.across },
    { x: 0, y: rim.across },
    { x, y: 0 },
  );
  return merge(along, across);
}
