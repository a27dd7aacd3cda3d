/** The vessel's numbers at the head of the job sheet. */
import { massesOf } from '../capacity/mass.js';
import { capacityLitres } from '../capacity/volume.js';
import type { FormEntry } from '../drawing/form.js';
import type { Vessel } from '../vessel/vessel.js';
import type { Texts } from './texts.js';
import type { JobWords } from './words/job-words.js';

export function entriesOf(vessel: Vessel, words: JobWords, texts: Texts): FormEntry[] {
  const { spec, staves } = vessel;
  const { numbers: names } = words;
  const masses = massesOf(vessel);
  return [
    { name: names.capacity, value: texts.litres(capacityLitres(vessel)) },
    { name: names.height, value: texts.length(spec.height) },
    ...outside(vessel, words, texts),
    { name: names.wall, value: texts.length(spec.staves.thickness) },
    { name: names.staves, value: String(staves.length) },
    { name: names.empty, value: texts.mass(masses.empty) },
    { name: names.full, value: texts.mass(masses.fullWithWater) },
  ];
}

function outside({ spec }: Vessel, { numbers: names }: JobWords, texts: Texts): FormEntry[] {
  const { outside: size } = spec;
  const sizes =
    size.kind === 'cask'
      ? [
          [names.bilge, size.bilge],
          [names.ends, size.ends],
        ]
      : [
          [names.top, size.top],
          [names.bottom, size.bottom],
        ];
  return (sizes as [string, number][]).map(([name, mm]) => ({ name, value: texts.length(mm) }));
}
