/**
 * A chosen set of staves as a picture to a standard scale: the ring cut at its widest place, seen from the top end, the
 * first stave at the top and the others clockwise in setting order; beside it the checklist. `x` and `y` are lengths in
 * the vessel times the scale, the axis at the origin.
 */
import { circle, line, polygon, type Curve, type Point } from '../geometry/curve.js';
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { headJoints } from '../sets/head-joints.js';
import { settingLabels, settingNumbers } from './setting-labels.js';
import { settingLegend } from './setting-legend.js';
import {
  markedOutside,
  ringPoint,
  ringView,
  tick,
  type RingView,
  type SettingPlan,
} from './setting-view.js';
import type { Words } from './words/index.js';

/** Its file is named `set-1`. */
export function settingPlan(plan: SettingPlan, words: Words): Drawing {
  const view = ringView(plan, words);
  const part = merge(
    wood(view),
    bungHole(view),
    headJointMarks(view),
    settingNumbers(view),
    settingLabels(view),
    middle(view),
  );
  const name = `set-${plan.number}`;
  const drawing = drawingOf(name, words.setting.title(plan.number), part, settingLegend(view));
  return { ...drawing, subject: plan.vessel.spec.title, scale: view.scale };
}

/** Both faces, each one closed line, and the joints between them. */
function wood(view: RingView): Part {
  const { spec, staves } = view.plan.vessel;
  const faceOf = (radius: number, flat: boolean): Curve =>
    flat ? flatFace(view, radius) : circle({ x: 0, y: 0 }, radius);
  const corner = (radius: number, flat: boolean, i: number): number =>
    flat ? radius / Math.cos(staves[i]!.alpha) : radius;
  const [flatOut, flatIn] = [spec.staves.outside === 'flat', spec.staves.inside === 'flat'];
  const joints = staves.map((stave, i) => {
    const next = (i + 1) % staves.length;
    const at = view.middles[i]! + stave.alpha;
    const from = Math.max(...[i, next].map((k) => corner(view.inside, flatIn, k)));
    const to = Math.min(...[i, next].map((k) => corner(view.outside, flatOut, k)));
    return line(ringPoint(from, at), ringPoint(to, at));
  });
  return merge(
    strokes('outline', faceOf(view.outside, flatOut), faceOf(view.inside, flatIn)),
    strokes('joint', ...joints),
  );
}

/** Flat faces, each touching the circle at its middle, with the steps that unlike neighbours leave. */
function flatFace({ plan, middles }: RingView, radius: number): Curve {
  const corners = plan.vessel.staves.flatMap(({ alpha }, i) =>
    [-1, 1].map((side) => ringPoint(radius / Math.cos(alpha), middles[i]! + side * alpha)),
  );
  return polygon(corners.filter((point, i) => !near(point, corners.at(i - 1)!)));
}

const near = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < 1e-3;

function bungHole({ plan, scale, outside, inside }: RingView): Part {
  const { bung } = plan.vessel.spec;
  if (!bung || plan.set.bungStave === null) return merge();
  const half = (bung.diameter / 2) * scale;
  const high = Math.sqrt(outside ** 2 - half ** 2);
  const low = Math.sqrt(inside ** 2 - half ** 2);
  const at = (x: number, y: number): Point => ({ x, y });
  return merge(
    strokes('bore', polygon([at(-half, low), at(half, low), at(half, high), at(-half, high)])),
    strokes('centre', line(at(0, inside - 1.5), at(0, outside + 1.5))),
  );
}

function headJointMarks(view: RingView): Part {
  const to = markedOutside(view);
  const marks = headJoints(view.plan.vessel).map((azimuth) =>
    line(ringPoint(to - tick.length, azimuth), ringPoint(to, azimuth)),
  );
  return strokes('station', ...marks);
}

/** On the axis: the diameter and the count. */
function middle({ plan, words, text }: RingView): Part {
  const { setting } = words;
  const centred = { align: 'centre' } as const;
  return merge(
    label(setting.diameter(text(plan.set.closesAt)), { x: 0, y: 1.2 }, centred),
    label(setting.staves(plan.set.count), { x: 0, y: -5 }, centred),
  );
}
