/** The plan of each head in its vessel, to a standard scale, with places for a brand and a serial number. */
import { circle, line, polygon, type Curve } from '../geometry/curve.js';
import { scale as enlarged } from '../geometry/transform.js';
import { drawingOf, leaderLabel, merge, strokes, type Part } from '../drawing/build.js';
import { dimensionLine } from '../drawing/dimension.js';
import type { Drawing } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { shortLengthText } from '../drawing/length-text.js';
import { scaleText } from '../drawing/scale.js';
import type { Units } from '../spec/spec.js';
import { halfChord } from '../vessel/boards.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import { namedHeads } from './head-names.js';
import { roundInside } from './rim.js';
import { pictureScale, scaledLines } from './section-scale.js';
import type { Words } from './words/index.js';

/** Paper that figures and words take up beside, above and below the plan, mm. */
const beside = { width: 25, height: 36 };
const row = 9.5;
const overrun = 1.5;
const small = { height: heights.small };

interface View {
  readonly head: Head;
  readonly scale: number;
  /** radius of the vessel's outside at the end, full size */
  readonly outside: number;
  readonly words: Words;
  readonly text: (mm: number) => string;
  readonly units: Units;
}

export function sectionHeads(vessel: Vessel, words: Words): Drawing[] {
  const { profile, spec } = vessel;
  return namedHeads(vessel, words).map(({ head, name }) => {
    const end = name === 'head' && vessel.heads.top ? 'both' : head.groove.end;
    const outside = profile.radius(head.groove.towardsEnd * (spec.height / 2));
    const text = (mm: number): string => shortLengthText(mm, spec.units);
    const size = { width: 2 * outside, height: 2 * outside };
    const scale = pictureScale(size, beside, spec.units);
    const view: View = { head, scale, outside, words, text, units: spec.units };
    const { notes, plan } = words.section;
    const legend = {
      notes: [
        notes.picture(scaleText(scale)),
        plan.notes.seen,
        plan.notes.places,
        plan.notes.boards,
        plan.notes.brand,
      ],
      tables: [],
    };
    return { ...drawingOf(`section-${name}`, plan.title[end], planPart(view), legend), scale };
  });
}

function planPart(view: View): Part {
  const { head, scale, outside } = view;
  const { groove, rim } = head;
  const seen = groove.howelRadius(groove.outerLip);
  const rounds = groove.chime ? [groove.chime.endRadius, seen] : [seen];
  const about = (radius: number): Curve => circle({ x: 0, y: 0 }, radius);
  const joints = head.joints.map((y) => {
    const half = halfChord({ along: seen, across: seen }, y);
    return line({ x: -half, y }, { x: half, y });
  });
  return merge(
    scaledLines('outline', scale, [about(outside)]),
    scaledLines('joint', scale, [...rounds.map(about), ...joints]),
    strokes('hidden', enlarged(roundInside(rim, 0), scale)),
    scaledLines('bore', scale, dowels(head)),
    centreLines(view),
    diameters(view),
    boardNumbers(view),
    places(view),
  );
}

function dowels({ dowels: all, spec }: Head): Curve[] {
  const [across, along] = [spec.dowels.diameter / 2, spec.dowels.length / 2];
  return all.map(({ x, y }) => rectangle(x - across, y - along, x + across, y + along));
}

function rectangle(left: number, low: number, right: number, high: number): Curve {
  return polygon([
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ]);
}

function centreLines({ head, scale, outside }: View): Part {
  const reach = outside * scale + overrun;
  const upright = line({ x: 0, y: -reach }, { x: 0, y: reach });
  const hasMiddleJoint = head.joints.some((y) => Math.abs(y) < 1);
  const level = line({ x: -reach, y: 0 }, { x: reach, y: 0 });
  return strokes('centre', upright, ...(hasMiddleJoint ? [] : [level]));
}

/** Below the plan: the head, and below that the outside of the vessel's end. */
function diameters({ head, scale, outside, words, text }: View): Part {
  const low = -outside * scale;
  const across = (radius: number, y: number): Part =>
    dimensionLine(
      words.section.diameter(text(2 * radius)),
      { x: -radius * scale, y: 0 },
      { x: radius * scale, y: 0 },
      { x: 0, y },
    );
  return merge(across(head.rim.along, low - row), across(outside, low - 2 * row));
}

function boardNumbers({ head, scale, outside, words, text }: View): Part {
  return merge(
    ...head.boards.map(({ from, to, width }, i) => {
      const y = ((from + to) / 2) * scale;
      const shift = Math.abs(y) < 3 ? 3.5 : 0;
      const aim = { x: halfChord(head.rim, y / scale) * scale - 4, y: y + shift };
      const at = { x: outside * scale + 5, y: y + shift - heights.small / 2 };
      return leaderLabel(words.section.plan.board(i + 1, text(width)), at, aim, small);
    }),
  );
}

/** Clear of the board joints: for the brand above the middle, for the number below it. */
function places({ head, scale, outside, words, units }: View): Part {
  const { brand, serial } = words.section.plan;
  const whole = (mm: number): string => shortLengthText(mm, units, 0);
  const upper = placeOn(head, 0.12, 0.42, 0.3);
  const lower = placeOn(head, -0.34, -0.14, 0.4);
  const drawn = (
    { half, from, to }: Place,
    say: (width: string, height: string) => string,
    side: 1 | -1,
  ): Part =>
    merge(
      scaledLines('station', scale, [rectangle(-half, from, half, to)]),
      leaderLabel(
        say(whole(2 * half), whole(to - from)),
        { x: side * outside * scale, y: outside * scale + (side < 0 ? 4 : 9) },
        { x: side * half * scale, y: ((from + to) / 2) * scale },
        { ...small, align: side < 0 ? 'left' : 'right' },
      ),
    );
  return merge(drawn(upper, brand, -1), drawn(lower, serial, 1));
}

interface Place {
  /** half its width about the middle, and its lower and upper edge, in full size */
  readonly half: number;
  readonly from: number;
  readonly to: number;
}

/** The board that has most of a strip of the head (edges and half-width as parts of the radius), a little off its joints. */
function placeOn({ rim, boards }: Head, low: number, high: number, half: number): Place {
  const clear = 0.04 * rim.across;
  const clipped = boards.map(({ from, to }) => ({
    from: Math.max(from + clear, low * rim.across),
    to: Math.min(to - clear, high * rim.across),
  }));
  const best = clipped.reduce((a, b) => (b.to - b.from > a.to - a.from + 1e-9 ? b : a));
  // whole millimetres, such as an iron is made in
  return {
    half: Math.floor(half * rim.along),
    from: Math.ceil(best.from),
    to: Math.floor(best.to),
  };
}
