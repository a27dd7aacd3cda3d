/** Templates for hollowing the inner face, held in the hollow in a section square to the stave. */
import { drawingOf } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import { shortLengthText } from '../drawing/length-text.js';
import { hollowingRadius } from '../vessel/stave-round.js';
import type { Vessel } from '../vessel/vessel.js';
import { gaugePlaces } from './gauge-places.js';
import { plateChord, stackedPlates } from './round-plate.js';
import { withUnit } from './with-unit.js';
import type { Words } from './words/index.js';

/** One drawing with a plate for each place, or none where the inside stays flat. */
export function hollowingGauge(vessel: Vessel, words: Words): Drawing[] {
  const { spec, wall, meanStave } = vessel;
  if (spec.staves.inside === 'flat') return [];
  const { title, plate, edge, notes } = words.gauges.hollowing;
  const plates = gaugePlaces(vessel, words).map(({ name, z }) => {
    const radius = hollowingRadius(vessel, z);
    return {
      radius,
      chord: plateChord(2 * meanStave.halfWidth(z, wall.thickness(z)), radius),
      hollow: false,
      title: plate(name, shortLengthText(radius, spec.units)),
      edge,
    };
  });
  const thickness = withUnit(spec.staves.thickness, spec.units, words);
  const legend = { notes: [notes.use, notes.depth(thickness), words.gauges.square], tables: [] };
  return [drawingOf('hollowing-gauge', title, stackedPlates(plates), legend)];
}
