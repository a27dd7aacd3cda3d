/** `staveloft size`: dimensions for a capacity. */
import { InvalidArgumentError, type Command } from 'commander';
import {
  capacityLitres,
  keeps,
  sizeFor,
  type Keep,
  type SizeRequest,
  type Unreachable,
} from '../index.js';
import { exitCode, type Answer, type ExitCode } from './exit-code.js';
import { giveSpec, whyNot, type Giving } from './give-spec.js';
import { givenLength, noLength } from './given-length.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { oneOf } from './option-values.js';
import { addLanguage, type Speaking } from './language-option.js';
import { planSpecs } from './plans.js';
import { refuse } from './refuse.js';
import { oneLine } from './say.js';
import { sizeText } from './size-text.js';
import { voiceOf, type Voice } from './voice.js';

interface Options extends Giving, Speaking {
  readonly litres: number;
  readonly keep: Keep;
  readonly staveLength?: string;
}

const help = helpText(
  {
    heading: 'What stays (--keep):',
    names: [
      [
        'proportions',
        'height and diameters change by one factor; with --stave-length, the diameters do',
      ],
      [
        'heads',
        "the head's diameter, and a cask's bilge or a tub's top: the height changes; with --stave-length, which settles the height, the bilge or top changes",
      ],
      ['height', 'the diameters change by one factor'],
    ],
  },
  'The stave length is that of the outer face between the end cuts, without trim. Wood and tool sizes stay; hoops move with the height, staves of uneven width with the girth.',
  examples(
    'staveloft size my-cask.yaml --litres 225 --out cask-225.yaml',
    'staveloft size my-cask.yaml --litres 225 --keep heads --out cask-225.yaml',
    'staveloft size my-cask.yaml --litres 225 --stave-length 950 > cask-225.yaml',
  ),
);

export function addSize(program: Command, io: Io, answer: Answer): void {
  const command = program
    .command('size')
    .description('Find the dimensions of a vessel for a capacity, and round ones near them.')
    .argument('<spec>', 'a YAML file to start from, or - for standard input')
    .requiredOption('--litres <number>', 'what it is to hold', litresOf)
    .option('--keep <what>', `${keeps.join(', ')}; see below`, oneOf(keeps), 'proportions')
    .option('--stave-length <length>', 'of the outer face, in the units of the spec')
    .option('--out <file>', 'write the new spec to this file, not to standard output')
    .option('--replace', 'write over a file that is there already')
    .addHelpText('after', help)
    .action(async (spec: string, _options, command: Command) => {
      answer(await size(spec, command.optsWithGlobals<Options>(), io));
    });
  addLanguage(command);
}

const most = 1e6;

function litresOf(text: string): number {
  const litres = /^\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : NaN;
  if (litres > 0 && litres <= most) return litres;
  throw new InvalidArgumentError('Give litres above 0, such as 225 or 37.5.');
}

async function size(name: string, options: Options, io: Io): Promise<ExitCode> {
  const { litres, keep, staveLength } = options;
  if (keep === 'height' && staveLength !== undefined) {
    io.err('--stave-length settles the height: leave it out, or keep something else\n');
    return exitCode.badInput;
  }
  const voice = await voiceOf(options.language);
  const planned = (await planSpecs([name], io, voice))?.[0];
  if (!planned) return exitCode.badInput;
  const { spec } = planned.vessel;
  const length = staveLength === undefined ? undefined : givenLength(staveLength, spec.units);
  if (length === null) return refuse(noLength('--stave-length', staveLength ?? '', spec.units), io);
  const request = { litres, keep, ...(length !== undefined && { staveLength: length }) };
  const found = sizeFor(spec, request);
  if ('unreachable' in found) return unreachable(found.unreachable, request, voice, io);
  const before = capacityLitres(planned.vessel);
  return giveSpec(found.spec, sizeText(found, before, spec, voice.words), options, io, voice);
}

function unreachable(
  { nearest, spec }: Unreachable,
  { litres, keep, staveLength }: SizeRequest,
  voice: Voice,
  io: Io,
): 1 {
  if (spec) return whyNot(spec, io, voice);
  const { size: say, typeset } = voice.words;
  const kept = staveLength === undefined ? say.keeps[keep] : say.withLength(say.keeps[keep]);
  const reach = nearest === null ? say.no : say.noNearer(typeset(nearest.toFixed(1)));
  io.err(oneLine(say.unreachable(kept, typeset(String(litres)), reach)));
  return exitCode.no;
}
