/** `staveloft dip`: a table of dips, for people, programs or spreadsheets. */
import type { Command } from 'commander';
import {
  dipTable,
  fullDip,
  mostDipRows,
  postures,
  usualPosture,
  type Posture,
  type Vessel,
} from '../index.js';
import { dipCsv, dipJson, dipText } from './dip-text.js';
import { exitCode, type Answer } from './exit-code.js';
import { givenLength, noLength } from './given-length.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { addLanguage, type Speaking } from './language-option.js';
import { oneOf } from './option-values.js';
import { planSpecs } from './plans.js';
import { refuse } from './refuse.js';
import { voiceOf } from './voice.js';

interface Options extends Speaking {
  readonly posture?: Posture;
  readonly step?: string;
  readonly json?: true;
  readonly csv?: true;
}

const usualStep = { mm: 10, in: 12.7 } as const;

const help = helpText(
  "Lying: a rod through the bung to the lowest place of the bilge. Standing: a rod on the bottom's inside face. Beside the litres stands what the gauger's old rule makes of the same depth, and its error; the rule has no answer near empty and full. With --json depths are mm; for people and with --csv they are in the units of the spec. These are tables for making and for the cellar, not for sale by measure.",
  examples(
    'staveloft dip my-cask.yaml',
    'staveloft dip my-cask.yaml --posture standing --step 5 --csv > dips.csv',
  ),
);

export function addDip(program: Command, io: Io, answer: Answer): void {
  const command = program
    .command('dip')
    .description('Show what the wet depth on a dip rod means in litres, in even steps up to full.')
    .argument('<spec>', 'a YAML file, or - for standard input')
    .option(
      '--posture <how>',
      `${postures.join(' or ')}; a cask lies and a tub stands unless given`,
      oneOf(postures),
    )
    .option('--step <length>', 'in the units of the spec; 10 mm or 1/2 in unless given')
    .option('--json', 'as JSON, for programs')
    .option('--csv', 'as comma-separated values, for spreadsheets')
    .addHelpText('after', help)
    .action(async (spec: string, options: Options) => {
      answer(await dip(spec, options, io));
    });
  addLanguage(command);
}

async function dip(name: string, options: Options, io: Io): Promise<0 | 2> {
  if (options.json && options.csv) return refuse('--json or --csv, not both', io);
  const voice = await voiceOf(options.language);
  const planned = (await planSpecs([name], io, voice))?.[0];
  if (!planned) return exitCode.badInput;
  const { vessel } = planned;
  const posture = options.posture ?? usualPosture(vessel);
  const step = stepOf(options.step, vessel, posture);
  if (typeof step === 'string') return refuse(step, io);
  const table = dipTable(vessel, posture, step);
  const write = options.json ? dipJson : options.csv ? dipCsv : dipText;
  io.out(write(table, vessel.spec, voice.words));
  return exitCode.done;
}

/** In mm, or why not. */
function stepOf(text: string | undefined, vessel: Vessel, posture: Posture): number | string {
  const { units } = vessel.spec;
  if (text === undefined) return usualStep[units];
  const step = givenLength(text, units);
  if (step === null) return noLength('--step', text, units);
  return fullDip(vessel, posture) / step < mostDipRows - 1
    ? step
    : `--step: ${text} ${units} makes more than ${mostDipRows} rows`;
}
