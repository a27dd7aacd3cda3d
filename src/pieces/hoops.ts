/** Every strap of the hoops as a strip, full size, one below the other; on paper with its middle broken out. */
import { drawingOf, merge, type Part } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { strapsOf } from '../vessel/strap.js';
import type { Vessel } from '../vessel/vessel.js';
import { hoopsLegend } from './hoops-legend.js';
import { stripPart, stripRoom } from './hoop-strip.js';
import type { Words } from './words/index.js';

/** One drawing, or none for a vessel without hoops. */
export function hoops(vessel: Vessel, words: Words): Drawing[] {
  if (vessel.hoops.length === 0) return [];
  const legend = hoopsLegend(vessel, words);
  const { notes, title } = words.hoops;
  const drawing = drawingOf('hoops', title, stacked(vessel, words, false), legend);
  const broken = { ...legend, notes: [notes.broken, ...legend.notes] };
  return [{ ...drawing, forPaper: { ...stacked(vessel, words, true), legend: broken } }];
}

function stacked(vessel: Vessel, words: Words, broken: boolean): Part {
  const view = { units: vessel.spec.units, words, broken };
  let top = 0;
  const parts = strapsOf(vessel.hoops).map((strap) => {
    const part = stripPart(strap, top, view);
    top -= strap.spec.width + stripRoom.below + stripRoom.above;
    return part;
  });
  return merge(...parts);
}
