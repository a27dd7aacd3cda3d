/** Templates for rounding the outer face, held on it in a section square to the stave. */
import { drawingOf } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { shortLengthText } from '../drawing/length-text.js';
import { backingRadius } from '../vessel/stave-round.js';
import type { Vessel } from '../vessel/vessel.js';
import { gaugePlaces } from './gauge-places.js';
import { plateChord, stackedPlates } from './round-plate.js';
import type { Words } from './words/index.js';

/** One drawing with a plate for each place, or none where the outside stays flat. */
export function backingGauge(vessel: Vessel, words: Words): Drawing[] {
  if (vessel.spec.staves.outside === 'flat') return [];
  const { title, plate, edge, notes } = words.gauges.backing;
  const plates = gaugePlaces(vessel, words).map(({ name, z }) => {
    const radius = backingRadius(vessel, z);
    return {
      radius,
      chord: plateChord(2 * vessel.meanStave.halfWidth(z, 0), radius),
      hollow: true,
      title: plate(name, shortLengthText(radius, vessel.spec.units)),
      edge,
    };
  });
  const legend = { notes: [...notes, words.gauges.square], tables: [] };
  return [drawingOf('backing-gauge', title, stackedPlates(plates), legend)];
}
