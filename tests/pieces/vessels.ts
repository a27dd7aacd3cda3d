/** Vessels that the tests of pieces draw: one of each kind that draws differently, and every template. */
import { readFileSync, readdirSync } from 'node:fs';
import { readSpec } from '../../src/spec/read.js';
import { solveVessel } from '../../src/vessel/solve.js';
import type { Vessel } from '../../src/vessel/vessel.js';

/** The vessel of a YAML text; a text that cannot be built is a mistake of the test. */
export function vesselOf(text: string): Vessel {
  const read = readSpec(text);
  if (!read.spec) throw new Error(JSON.stringify(read.issues));
  const solved = solveVessel(read.spec);
  if (!('vessel' in solved)) throw new Error(JSON.stringify(solved.issues));
  return solved.vessel;
}

export const wineCask = `
vessel: cask
title: Invented cask
units: mm
height: 945
bilge: 678
ends: 572
profile: arc
staves:
  count: 28
`;

export const wideTub = `
vessel: tub
title: Invented tub
units: mm
height: 300
top: 620
bottom: 520
staves:
  count: 24
  inside: flat
`;

const kinds: Record<string, string> = {
  'wine cask': wineCask,
  'cut ends': `${wineCask}  ends: cut\n`,
  'thinned, flat inside': `${wineCask}  inside: flat\n  endThickness: 23\n`,
  'mixed widths': wineCask.replace(
    '  count: 28',
    `  widths: [${[92, ...new Array<number>(9).fill(71), ...new Array<number>(17).fill(80.1)].join(', ')}]`,
  ),
  'larger across the boards': `${wineCask}heads: { crossGrain: 3, boards: 5 }\n`,
  'unlike heads': `${wineCask}heads: { top: { boards: 5 }, bottom: { boards: 7 } }\n`,
  'one board': `${wineCask}heads: { boards: 1 }\n`,
  'wide tub': wideTub,
  'tub that narrows upwards': wideTub.replace('top: 620', 'top: 460'),
  cylinder: wideTub.replace('top: 620', 'top: 520'),
  'small, in inches':
    'vessel: cask\ntitle: Invented keg\nunits: in\nheight: 13 3/8\nbilge: 10\nends: 8 1/2\nstaves:\n  count: 16\n',
  'eighty narrow staves': wineCask.replace('28', '80'),
};

const templates = new URL('../../templates/', import.meta.url);
const ofTemplates = readdirSync(templates)
  .filter((name) => name.endsWith('.yaml'))
  .map((name): [string, string] => [name, readFileSync(new URL(name, templates), 'utf8')]);

/** Name and YAML text of each. */
export const everyVessel: readonly (readonly [string, string])[] = [
  ...Object.entries(kinds),
  ...ofTemplates,
];
