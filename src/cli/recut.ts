/** `staveloft recut`: a worn vessel cut shorter or shaved, as a new spec. */
import type { Command } from 'commander';
import { recut, type Recutting, type Spec, type Vessel } from '../index.js';
import { exitCode, type Answer, type ExitCode } from './exit-code.js';
import { giveSpec, whyNot, type Giving } from './give-spec.js';
import { givenLength, noLength } from './given-length.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { addLanguage, type Speaking } from './language-option.js';
import { planSpecs } from './plans.js';
import { recutText } from './recut-text.js';
import { refuse } from './refuse.js';
import { voiceOf } from './voice.js';

interface Options extends Giving, Speaking {
  readonly shorten?: string;
  readonly rim?: string;
  readonly shave?: string;
}

const help = helpText(
  'A cask is cut at both ends alike, so that its bilge stays in the middle; grooves, howel and chime are then those of the spec, at the new ends. Hoops stay where they sit on the wood, as far as there is wood. Shaving thins the staves by as much. The new spec is checked: too little wood behind the groove is refused.',
  examples(
    'staveloft recut old-cask.yaml --shorten 15 --out recut.yaml',
    'staveloft recut old-cask.yaml --shorten 70 --shave 2 --out recut.yaml',
    'staveloft draw recut.yaml --out recut                   the patterns of the new ends and heads',
  ),
);

export function addRecut(program: Command, io: Io, answer: Answer): void {
  const command = program
    .command('recut')
    .description('Cut a worn vessel shorter or shave its outside: the new spec and its capacity.')
    .argument('<spec>', 'a YAML file of the vessel as it is, or - for standard input')
    .option('--shorten <length>', 'off each end of a cask, off the bottom of a tub')
    .option('--rim <length>', 'off the rim of a tub')
    .option('--shave <length>', 'off the outside, square to it')
    .option('--out <file>', 'write the new spec to this file, not to standard output')
    .option('--replace', 'write over a file that is there already')
    .addHelpText('after', help)
    .action(async (spec: string, _options, command: Command) => {
      answer(await recutSpec(spec, command.optsWithGlobals<Options>(), io));
    });
  addLanguage(command);
}

async function recutSpec(name: string, options: Options, io: Io): Promise<ExitCode> {
  const voice = await voiceOf(options.language);
  const planned = (await planSpecs([name], io, voice))?.[0];
  if (!planned) return exitCode.badInput;
  const recutting = recuttingOf(options, planned.vessel);
  if (typeof recutting === 'string') return refuse(recutting, io);
  const { spec } = planned.vessel;
  const made = recut(spec, recutting);
  if ('issues' in made) return whyNot(made.spec, io, voice);
  return giveSpec(made.spec, recutText(made, planned.vessel, voice.words), options, io, voice);
}

/** Or why the options make no sense. */
function recuttingOf(options: Options, { spec }: Vessel): Required<Recutting> | string {
  const { shorten, rim, shave } = options;
  if (rim !== undefined && spec.vessel === 'cask')
    return '--rim is for tubs: a cask is cut at both ends alike, with --shorten';
  const lengths = { shorten: 0, rim: 0, shave: 0 };
  for (const [name, text] of Object.entries({ shorten, rim, shave })) {
    if (text === undefined) continue;
    const length = givenLength(text, spec.units, true);
    if (length === null) return noLength(`--${name}`, text, spec.units);
    lengths[name as keyof typeof lengths] = length;
  }
  return tooMuch(lengths, spec) ?? lengths;
}

function tooMuch({ shorten, rim, shave }: Required<Recutting>, spec: Spec): string | null {
  if (shorten + rim + shave === 0) return 'say what to take off: --shorten, --shave or --rim';
  const gone = spec.vessel === 'cask' ? 2 * shorten : shorten + rim;
  if (gone >= spec.height) return '--shorten: nothing would be left of the height';
  const { thickness, endThickness } = spec.staves;
  return shave >= Math.min(thickness, endThickness)
    ? '--shave: nothing would be left of the staves'
    : null;
}
