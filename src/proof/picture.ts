/** The gap along the worst joint as a picture: stations to a scale, the gap many times as large. */
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { reductions } from '../drawing/scale.js';
import { typesetDrawing } from '../drawing/typeset.js';
import { line, polyline } from '../geometry/curve.js';
import type { GapPoint, JointGaps } from './ring.js';
import { valueText } from './say.js';
import { tolerance } from './tolerance.js';
import { proofWords, type ProofWords } from './words.js';

/** Room of the picture, mm: its greatest width, and its height either way from the line of no gap. */
const room = { width: 200, height: 40 };
/** How many times as large as stations the gap is drawn at most. */
const greatestScale = 5000;
/** Marks along the scales, mm of the picture, and the room for their numbers. */
const mark = 2;
const beside = 3;

/** From the picture's own millimetres; gaps that could not be measured are left out. */
interface View {
  readonly points: readonly GapPoint[];
  readonly from: number;
  readonly to: number;
  readonly x: (station: number) => number;
  readonly y: (gap: number) => number;
  /** greatest gap that is shown, mm */
  readonly most: number;
  readonly words: ProofWords;
}

export function gapPicture(
  { files, gaps }: JointGaps,
  words: ProofWords = proofWords.en,
): Drawing | null {
  const points = gaps.filter(({ outer, inner }) => Number.isFinite(outer + inner));
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || first === last) return null;
  const length = last.station - first.station;
  const scale = [1, ...reductions].find((each) => length * each <= room.width) ?? 0.01;
  const worst = points.reduce((most, { worst: gap }) => Math.max(most, Math.abs(gap)), 0);
  const most = roundUp(Math.max(worst, 1.5 * tolerance.joint));
  const stretch = Math.min(greatestScale * scale, room.height / most);
  const view: View = {
    points,
    from: first.station,
    to: last.station,
    x: (station) => station * scale,
    y: (gap) => gap * stretch,
    most,
    words,
  };
  const { title, joint, notes, scales: scalesNote } = words.picture;
  const names = files.join(words.and);
  const times = String(Math.round(stretch / scale));
  const part = merge(
    frame(view),
    limitLines(view),
    traces(view),
    stationScale(view),
    gapScale(view),
  );
  const legend = { notes: [joint(names), scalesNote(times), ...notes], tables: [] };
  const drawing = { ...drawingOf('joint-gap', title, part, legend), scale };
  return typesetDrawing(drawing, words.typeset);
}

/** The next of 1, 2 and 5 times a power of ten. */
function roundUp(size: number): number {
  const power = 10 ** Math.floor(Math.log10(size));
  return ([1, 2, 5].find((each) => each * power >= size * (1 - 1e-9)) ?? 10) * power;
}

function frame({ from, to, x, y, most }: View): Part {
  return strokes(
    'centre',
    line({ x: x(from), y: 0 }, { x: x(to), y: 0 }),
    line({ x: x(from), y: y(-most) }, { x: x(from), y: y(most) }),
  );
}

/** What is allowed, either way. */
function limitLines({ from, to, x, y, words }: View): Part {
  const allowed = words.picture.allowed(valueText(tolerance.joint, 'mm', words));
  const lines = [-1, 1].map((sign) => {
    const level = y(sign * tolerance.joint);
    return line({ x: x(from), y: level }, { x: x(to), y: level });
  });
  const at = { x: x(to) + beside, y: y(tolerance.joint) - heights.small / 2 };
  return merge(strokes('bevel', ...lines), label(allowed, at, { height: heights.small }));
}

/** Each face named at its end; names that would run into each other are moved apart. */
function traces({ points, to, x, y, words }: View): Part {
  const last = points.at(-1)!;
  const trace = (layer: 'outline' | 'hidden', key: 'outer' | 'inner'): Part =>
    strokes(layer, polyline(points.map((each) => ({ x: x(each.station), y: y(each[key]) }))));
  const pitch = 1.6 * heights.small;
  const above = last.outer >= last.inner ? 1 : -1;
  const middle = Math.max(-1, Math.min(1, (last.outer + last.inner) / 2 / tolerance.joint));
  const centre = y(middle * tolerance.joint) - heights.small / 2 - (middle > 0.4 ? 2 * pitch : 0);
  const spread = Math.max(pitch / 2, (above * (y(last.outer) - y(last.inner))) / 2);
  const name = (text: string, sign: number): Part =>
    label(text, { x: x(to) + beside, y: centre + sign * spread }, { height: heights.small });
  return merge(
    trace('hidden', 'inner'),
    trace('outline', 'outer'),
    name(words.picture.outer, above),
    name(words.picture.inner, -above),
  );
}

function stationScale({ from, to, x, y, most, words }: View): Part {
  const foot = y(-most);
  const marks = multiples(roundUp((to - from) / 8), from, to).map((station) => {
    const at = { x: x(station), y: foot - mark - 1.6 * heights.small };
    return merge(
      strokes('station', line({ x: at.x, y: foot }, { x: at.x, y: foot - mark })),
      label(String(station), at, { align: 'centre', height: heights.small }),
    );
  });
  const axis = strokes('station', line({ x: x(from), y: foot }, { x: x(to), y: foot }));
  const below = { x: (x(from) + x(to)) / 2, y: foot - mark - 3.6 * heights.small };
  const name = label(words.picture.station, below, { align: 'centre', height: heights.small });
  return merge(axis, name, ...marks);
}

function gapScale({ from, y, x, most, words }: View): Part {
  const left = x(from);
  const marks = multiples(roundUp(most / 4), -most, most).map((gap) => {
    const at = { x: left - mark - 1, y: y(gap) - heights.small / 2 };
    return merge(
      strokes('station', line({ x: left - mark, y: y(gap) }, { x: left, y: y(gap) })),
      label(String(Number(gap.toFixed(4))), at, { align: 'right', height: heights.small }),
    );
  });
  const above = { x: left, y: y(most) + heights.small };
  return merge(...marks, label(words.picture.gapHeading, above, { height: heights.small }));
}

function multiples(step: number, from: number, to: number): number[] {
  const [first, last] = [Math.ceil(from / step - 1e-9), Math.floor(to / step + 1e-9)];
  return Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
}
