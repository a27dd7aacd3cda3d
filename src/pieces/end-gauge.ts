/** Corner gauges for the joint bevels and the end cuts, full size, held on the outer face. */
import type { Point } from '../geometry/curve.js';
import { polygon } from '../geometry/curve.js';
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, per100Text } from '../drawing/length-text.js';
import { widestHeight } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';
import type { Words } from './words/index.js';

/** Every gauge: its foot lies on the outer face, its arm hangs down past the corner along the joint or the end. */
const foot = { length: 105, height: 28 };
const arm = { width: 28, length: 60 };
const gap = 14;

interface Angle {
  readonly text: string;
  /** how far the edge leans inwards, away from the outer face's corner; negative where it leans out past it */
  readonly inward: number;
}

export function endGauge(vessel: Vessel, words: Words): Drawing {
  const angles = anglesOf(vessel, words);
  const { title, notes } = words.endGauge;
  const part = merge(
    ...angles.map((each, i) =>
      gaugeAt({ x: 0, y: -i * (arm.length + foot.height + gap) }, each, words),
    ),
  );
  const blade =
    vessel.spec.vessel === 'tub' ? [notes.blade(angleText(vessel.meanStave.sawTilt(0)))] : [];
  return drawingOf('end-gauge', title, part, {
    notes: [notes.use, notes.set, ...blade],
    tables: [],
  });
}

function anglesOf({ spec, meanStave }: Vessel, words: Words): Angle[] {
  const { joint, endCut, widest, atEnds, even, bothEnds } = words.endGauge;
  const bevel = (place: string, z: number): Angle => {
    const angle = meanStave.bevel(z);
    return { text: joint(place, angleText(angle), per100Text(angle)), inward: angle };
  };
  const cut = (place: string, angle: number): Angle => ({
    text: endCut(place, angleText(angle, 1), per100Text(angle)),
    inward: -angle,
  });
  const bevels =
    spec.vessel === 'tub'
      ? [bevel(even, 0)]
      : [bevel(widest, widestHeight(spec)), bevel(atEnds, spec.height / 2)];
  const { top, bottom } = meanStave.ends;
  const alike = Math.abs(top.angle - bottom.angle) < 1e-9;
  const cuts = alike
    ? [cut(bothEnds, top.angle)]
    : [cut(words.ends.top, top.angle), cut(words.ends.bottom, bottom.angle)];
  return [...bevels, ...cuts];
}

/** Fits the corner between the outer face, along -x, and the joint or end, downwards; the wood lies in the notch. */
function gaugeAt(at: Point, { text, inward }: Angle, words: Words): Part {
  const corner = (x: number, y: number): Point => ({ x: at.x + x, y: at.y + y });
  const run = -arm.length * Math.tan(inward);
  const right = arm.width + Math.max(0, run);
  const outline = polygon([
    corner(-foot.length, 0),
    corner(0, 0),
    corner(run, -arm.length),
    corner(right, -arm.length),
    corner(right, foot.height),
    corner(-foot.length, foot.height),
  ]);
  const small = { height: heights.small };
  return merge(
    strokes('outline', outline),
    label(text, corner(4 - foot.length, foot.height - 11), small),
    label(words.endGauge.face, corner(4 - foot.length, 5), small),
    label(words.endGauge.wood, corner(12 - foot.length, -14), small),
  );
}
