/**
 * The long profile as two templates, outside and inside, to check the bend by: `x` is the height in the vessel, 0 at
 * mid-height, the top end on the right. Between them lies the stave, cut through its middle.
 */
import type { Vertex } from '../geometry/curve.js';
import { line } from '../geometry/curve.js';
import { fitArcs, type SmoothCurve } from '../geometry/fit.js';
import { closedFrom } from '../geometry/join.js';
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { lean, widestHeight } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';
import { hoopMarks, insideMarks, type Mark } from './bilge-sweep-marks.js';
import { crossLines } from './crosswise.js';
import { plateWords, wordsHeight } from './plate-words.js';
import type { Words } from './words/index.js';

/** Least width of either plate, and how far the middle line runs past them. */
const leastWidth = 40;
const overrun = 6;
/** Staves thinner than this have no room for a word. */
const thickEnough = 8;

interface PlateWords {
  readonly name: string;
  readonly held: string;
}

interface Plate {
  /** the edge along the stave, from the bottom end to the top end */
  readonly edge: readonly Vertex[];
  readonly edgeAt: (height: number) => number;
  /** the straight edge */
  readonly back: number;
}

export function bilgeSweep(vessel: Vessel, words: Words): Drawing {
  const { outer, inner } = platesOf(vessel);
  const { title, notes, outside, outsideHeld, inside, insideHeld } = words.gauges.sweep;
  const end = vessel.spec.height / 2;
  const part = merge(
    platePart(outer, hoopMarks(vessel, words), end, { name: outside, held: outsideHeld }),
    platePart(inner, insideMarks(vessel, words), end, { name: inside, held: insideHeld }),
    strokes('centre', line({ x: 0, y: inner.back - overrun }, { x: 0, y: outer.back + overrun })),
    endNames(vessel, outer, inner, words),
  );
  const cask = vessel.spec.vessel === 'cask';
  return drawingOf('bilge-sweep', title, part, {
    notes: [notes.use, cask ? notes.bend : notes.straight, notes.ends, notes.marks],
    tables: [],
  });
}

/** Heights from the outside at the widest place: it has `y` 0. */
function platesOf({ profile, wall, spec }: Vessel): { outer: Plate; inner: Plate } {
  const level = profile.radius(widestHeight(spec));
  const end = spec.height / 2;
  const plateOf = (radius: (height: number) => number, side: 1 | -1): Plate => {
    const edgeAt = (height: number): number => radius(height) - level;
    const furthest = [-end, 0, end].map(edgeAt);
    const back = side > 0 ? Math.max(...furthest) + leastWidth : Math.min(...furthest) - leastWidth;
    return { edge: fitArcs(byHeight(edgeAt), -end, end), edgeAt, back };
  };
  return { outer: plateOf(profile.radius, 1), inner: plateOf(wall.insideRadius, -1) };
}

function byHeight(y: (height: number) => number): SmoothCurve {
  const half = 0.05;
  return {
    at: (height) => ({ x: height, y: y(height) }),
    tangent: (height) => ({ x: 2 * half, y: y(height + half) - y(height - half) }),
  };
}

/** Closed by its back, with a line across at each mark and the mark's words beyond the back; its name inside. */
function platePart(plate: Plate, marks: readonly Mark[], end: number, words: PlateWords): Part {
  const { edge, edgeAt, back } = plate;
  const corner = (x: number): Vertex => ({ x, y: back, bulge: 0 });
  const side = back > edge[0]!.y ? 1 : -1;
  // a mark on an end plane is the plate's own end
  const inside = marks.map(({ height }) => height).filter((x) => Math.abs(x) < end - 0.01);
  const space = widestSpace([-end, ...inside, 0, end]);
  return merge(
    strokes('outline', closedFrom([edge, [corner(end), corner(-end)]])),
    strokes('station', ...inside.map((x) => line({ x, y: edgeAt(x) }, { x, y: back }))),
    crossLines(
      marks.map(({ height, text }) => ({ x: height, half: 0, text })),
      Math.abs(back),
      side,
    ),
    plateWords(words.name, [words.held], {
      left: space.from + 4,
      right: space.to - 4,
      top: side > 0 ? back - 5 : back + 5 + wordsHeight(1),
      beside: end + 5,
    }),
  );
}

function widestSpace(xs: readonly number[]): { from: number; to: number } {
  const sorted = [...xs].sort((a, b) => a - b);
  const spaces = sorted.slice(1).map((to, i) => ({ from: sorted[i]!, to }));
  // of spaces alike the first, whatever the rounding
  return spaces.reduce((a, b) => (b.to - b.from > a.to - a.from + 1e-6 ? b : a));
}

/** Beside the plates' ends, and in the stave's place. */
function endNames({ spec, profile, wall }: Vessel, outer: Plate, inner: Plate, words: Words): Part {
  const end = spec.height / 2;
  const tilt = -lean(profile, 0);
  const depth = wall.thickness(0) / 2 + heights.small / 2;
  const from = 8 + 2 * depth * Math.abs(Math.sin(tilt));
  const inStave = {
    x: from + depth * Math.sin(tilt),
    y: outer.edgeAt(from) - depth * Math.cos(tilt),
  };
  const stave = label(words.gauges.sweep.stave, inStave, { height: heights.small, angle: tilt });
  const bottom = { x: -end - 5, y: 0 };
  const top = { x: end + 5, y: 0 };
  const ys = [outer.edgeAt(-end) + 4, inner.edgeAt(-end) - 8];
  const topYs = [outer.edgeAt(end) + 4, inner.edgeAt(end) - 8];
  return merge(
    ...ys.map((y) => label(words.ends.bottom, { ...bottom, y }, { align: 'right' })),
    ...topYs.map((y) => label(words.ends.top, { ...top, y })),
    wall.thickness(0) > thickEnough ? stave : merge(),
  );
}
