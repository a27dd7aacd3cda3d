/** The gauge for the chime: what is left flat of the end, the bevel, and the howel that it runs into. */
import type { Point } from '../geometry/curve.js';
import { drawingOf, merge, type Part } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { angleText, per100Text, shortLengthText } from '../drawing/length-text.js';
import type { Groove } from '../vessel/groove.js';
import type { Vessel } from '../vessel/vessel.js';
import {
  depths,
  endPlace,
  endPlate,
  endViews,
  howelRun,
  outsideCorner,
  sayBeside,
  type EndView,
} from './end-plate.js';
import type { Words } from './words/index.js';

/** How far towards the groove the gauge follows the howel, as a share of the way. */
const alongHowel = 0.6;

type Chime = NonNullable<Groove['chime']>;

/** One for each end that has a groove, or one where both are worked alike; none without a chime bevel. */
export function chimeGauges(vessel: Vessel, words: Words): Drawing[] {
  return endViews(vessel, words).flatMap((view) => {
    const { chime } = view.head.groove;
    if (!chime) return [];
    const { title, notes } = words.gauges.chime;
    const part = gaugePart(view, chime, words);
    const legend = { notes: [notes.hold, notes.light, notes.order], tables: [] };
    return [drawingOf(`chime-gauge${view.suffix}`, title(view.end), part, legend)];
  });
}

function gaugePart(view: EndView, chime: Chime, words: Words): Part {
  const { vessel, head } = view;
  const { groove } = head;
  const say = words.gauges.chime;
  const corner = endPlace(view, chime.endRadius, groove.towardsEnd * (vessel.spec.height / 2));
  const foot = endPlace(view, chime.footRadius, chime.footHeight);
  const lowest = chime.footHeight + alongHowel * (groove.outerLip - chime.footHeight);
  const howel = howelRun(view, lowest, chime.footHeight);
  const plate = endPlate(view, [howel, [foot, corner]], say.plate(view.end), words);
  const { bevel, flat } = vessel.spec.chime;
  return merge(
    plate.part,
    depths(view, plate, [foot.y]),
    sayBeside(view, [
      {
        text: say.flat(shortLengthText(flat, vessel.spec.units)),
        target: middleOf(corner, outsideCorner(view)),
      },
      {
        text: say.bevel(angleText(bevel, 0), per100Text(bevel)),
        target: middleOf(foot, corner),
      },
      { text: say.howel, target: middleOf(howel[0]!, foot) },
    ]),
  );
}

const middleOf = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
