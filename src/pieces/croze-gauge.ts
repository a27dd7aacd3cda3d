/** The gauge for howel and groove, held on the finished stave end from inside; its tongue fills the groove. */
import type { Vertex } from '../geometry/curve.js';
import { line } from '../geometry/curve.js';
import { drawingOf, merge, strokes, type Part } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { shortLengthText } from '../drawing/length-text.js';
import type { Vessel } from '../vessel/vessel.js';
import {
  depths,
  endPlace,
  endPlate,
  endViews,
  howelRun,
  sayBeside,
  type EndView,
  type Pointed,
} from './end-plate.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

/** One for each end that has a groove, or one where both are worked alike. */
export function crozeGauges(vessel: Vessel, words: Words): Drawing[] {
  return endViews(vessel, words).map((view) => {
    const { title, notes } = words.gauges.croze;
    const radius = withUnit(view.head.groove.radius, vessel.spec.units, words);
    return drawingOf(`croze-gauge${view.suffix}`, title(view.end), gaugePart(view, words), {
      notes: [notes.hold, notes.light, notes.compass(radius), notes.wear],
      tables: [],
    });
  });
}

function gaugePart(view: EndView, words: Words): Part {
  const { groove } = view.head;
  const plate = endPlate(view, edgeOf(view), words.gauges.croze.plate(view.end), words);
  const middle = endPlace(view, groove.radius, groove.middle);
  const foot = endPlace(view, groove.howelRadius(groove.howelTo), groove.howelTo);
  const across = line({ x: plate.left - 4, y: middle.y }, { x: -groove.lipDepth - 2, y: middle.y });
  return merge(
    plate.part,
    strokes('centre', across),
    depths(view, plate, [middle.y, foot.y]),
    sayBeside(view, labelsOf(view, words)),
  );
}

function labelsOf(view: EndView, words: Words): Pointed[] {
  const { vessel, head } = view;
  const { groove, spec } = head;
  const { croze, hook } = words.gauges;
  const text = (mm: number): string => shortLengthText(mm, vessel.spec.units);
  const onHowel = (height: number) => endPlace(view, groove.howelRadius(height), height);
  return [
    { text: hook, target: { x: 0, y: 0 } },
    {
      text: croze.groove(text(groove.width), text(spec.croze.depth)),
      target: endPlace(view, groove.radius, groove.middle),
    },
    {
      text: croze.howel(text(vessel.spec.howel.depth)),
      target: onHowel((groove.innerLip + groove.howelTo) / 2),
    },
    { text: croze.foot, target: onHowel(groove.howelTo) },
  ];
}

/** From the howel's inner edge up: howel, groove, howel, past the chime bevel without touching it, to the end. */
function edgeOf(view: EndView): Vertex[][] {
  const { groove } = view.head;
  const at = (radius: number, height: number) => endPlace(view, radius, height);
  const foot = at(groove.howelRadius(groove.howelFrom), groove.howelFrom);
  return [
    howelRun(view, groove.howelTo, groove.innerLip),
    [at(groove.radius, groove.innerLip), at(groove.radius, groove.outerLip)],
    howelRun(view, groove.outerLip, groove.howelFrom),
    [{ x: foot.x, y: 0, bulge: 0 }],
  ];
}
