/** The stave: flat blank with both faces, stations, hoops, groove and ends. */
import { line } from '../geometry/curve.js';
import { drawingOf, label, merge, strokes, type Part } from '../drawing/build.js';
import { arrowhead } from '../drawing/arrow.js';
import type { Drawing } from '../drawing/drawing.js';
import { heights } from '../drawing/heights.js';
import { textWidth } from '../drawing/lettering.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import { crossLines } from './crosswise.js';
import { staveLegend } from './stave-legend.js';
import { innerFace, outerFace } from './stave-outline.js';
import { featureLines, stationLines } from './stave-stations.js';
import type { Words } from './words/index.js';

/** How far the centre line runs past the ends. */
const overrun = 6;

/** The stave of a vessel with equal staves, or the one of mean width of a mixed set. */
export function stave(vessel: Vessel, words: Words): Drawing {
  const title = words.stave.title(vessel.staves.length);
  return staveDrawing(vessel, vessel.meanStave, 'stave', title, words);
}

/** One drawing for each stave of a mixed set, in ring order; none for equal staves. */
export function mixedStaves(vessel: Vessel, words: Words): Drawing[] {
  if (!vessel.spec.staves.widths) return [];
  const count = vessel.staves.length;
  return vessel.staves.map((each, i) => {
    const width = each.width.toFixed(1);
    const name = `stave-${String(i + 1).padStart(2, '0')}`;
    return staveDrawing(vessel, each, name, words.stave.mixedTitle(i + 1, count, width), words);
  });
}

export function staveDrawing(
  vessel: Vessel,
  of: Stave,
  name: string,
  title: string,
  words: Words,
): Drawing {
  const edge = greatestHalfWidth(vessel, of);
  const [left, right] = [of.blankEnds.bottom, of.blankEnds.top];
  const from = Math.min(left.outer, left.inner);
  const to = Math.max(right.outer, right.inner);
  const features = featureLines(vessel, of, words);
  const stations = stationLines(vessel, of, words);
  const part = merge(
    strokes('outline', outerFace(vessel, of)),
    strokes('hidden', innerFace(vessel, of)),
    strokes('centre', line({ x: from - overrun, y: 0 }, { x: to + overrun, y: 0 })),
    crossLines(stations, edge, 1),
    crossLines(features, edge, -1),
    faceWords(
      [...stations, ...features].map(({ x }) => x),
      edge,
      words,
    ),
  );
  return drawingOf(name, title, part, staveLegend(vessel, of, words));
}

function greatestHalfWidth({ spec }: Vessel, of: Stave): number {
  return Math.max(
    of.halfWidth(spec.height / 2, 0),
    of.halfWidth(0, 0),
    of.halfWidth(-spec.height / 2, 0),
  );
}

/** "outer face" and the grain's direction, in the widest clear space between lines; left out where there is none. */
function faceWords(xs: readonly number[], edge: number, words: Words): Part {
  const height = heights.normal;
  const need = Math.max(textWidth(words.outerFace, height), textWidth(words.grain, height)) + 24;
  const sorted = [...xs].sort((a, b) => a - b);
  const gaps = sorted.slice(1).map((x, i) => ({ from: sorted[i]!, width: x - sorted[i]! }));
  const best = gaps.reduce((a, b) => (b.width > a.width + 1e-6 ? b : a), { from: 0, width: 0 });
  if (best.width < need || edge < 18) return merge();
  const middle = best.from + best.width / 2;
  const [low, high] = [-edge * 0.45, edge * 0.3];
  const reach = Math.min(best.width / 2 - 5, 30);
  return merge(
    label(words.outerFace, { x: middle, y: high }, { align: 'centre' }),
    label(words.grain, { x: middle, y: low + 2.5 }, { align: 'centre' }),
    strokes(
      'dimension',
      line({ x: middle - reach, y: low }, { x: middle + reach, y: low }),
      arrowhead({ x: middle - reach, y: low }, Math.PI),
      arrowhead({ x: middle + reach, y: low }, 0),
    ),
  );
}
