/** Plates whose slanting edge is a joint bevel or an end cut, full size, to set a sliding bevel by. */
import type { Point } from '../geometry/curve.js';
import { polygon } from '../geometry/curve.js';
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { angleText, per100Text } from '../drawing/length-text.js';
import { widestHeight } from '../vessel/profile.js';
import type { Vessel } from '../vessel/vessel.js';
import type { Words } from './words/index.js';

/** Every plate: length along the face, and height of its slanting edge. */
const plate = { length: 130, height: 60 };
const gap = 14;

interface Angle {
  readonly text: string;
  readonly angle: number;
}

export function endGauge(vessel: Vessel, words: Words): Drawing {
  const angles = anglesOf(vessel, words);
  const { title, notes } = words.endGauge;
  const part = merge(
    ...angles.map(({ text, angle }, i) =>
      plateAt({ x: 0, y: -i * (plate.height + gap) }, text, angle, words),
    ),
    label(
      `${title}. ${vessel.spec.title}`,
      { x: 0, y: plate.height + 8 },
      { height: heights.heading },
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
    return { text: joint(place, angleText(angle), per100Text(angle)), angle };
  };
  const cut = (place: string, angle: number): Angle => ({
    text: endCut(place, angleText(angle, 1), per100Text(angle)),
    angle,
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

/**
 * Stands on its long lower edge, which lies on the outer face. The slanting edge leans from square by the angle,
 * inwards as it leaves the face when the angle is positive: the stave's wood lies under the plate's other side.
 */
function plateAt(at: Point, text: string, angle: number, words: Words): Part {
  const lean = plate.height * Math.tan(angle);
  const corner = (x: number, y: number): Point => ({ x: at.x + x, y: at.y + y });
  return merge(
    strokes(
      'outline',
      polygon([
        corner(0, 0),
        corner(plate.length, 0),
        corner(plate.length - lean, plate.height),
        corner(0, plate.height),
      ]),
    ),
    label(text, corner(6, plate.height / 2 + 2), { height: heights.small }),
    label(words.endGauge.face, corner(6, 4), { height: heights.small }),
  );
}
