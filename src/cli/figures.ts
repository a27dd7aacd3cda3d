/** `staveloft figures`: every number of a vessel, for people or for programs. */
import type { Command } from 'commander';
import { figuresOf } from '../index.js';
import { exitCode, type Answer } from './exit-code.js';
import { figuresJson } from './figures-json.js';
import { figuresText } from './figures-text.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { addLanguage, type Speaking } from './language-option.js';
import { planSpecs } from './plans.js';
import { voiceOf } from './voice.js';

const help = helpText(
  examples(
    'staveloft figures my-cask.yaml',
    'staveloft figures my-cask.yaml --json > figures.json',
    'staveloft new bucket | staveloft figures -',
  ),
  'For people: in the units of the spec, inches also as fractions to 1/32.\nFor programs (--json): mm, degrees, litres and kg; schemas/figures.schema.json describes it.',
);

export function addFigures(program: Command, io: Io, answer: Answer): void {
  const command = program
    .command('figures')
    .description('Show every number of a vessel: capacity, staves, stations, heads and hoops.')
    .argument('<spec>', 'a YAML file, or - for standard input')
    .option('--json', 'as JSON, for programs')
    .addHelpText('after', help)
    .action(async (spec: string, options: Options) => {
      answer(await figures(spec, options, io));
    });
  addLanguage(command);
}

interface Options extends Speaking {
  readonly json?: true;
}

async function figures(name: string, { json, language }: Options, io: Io): Promise<0 | 2> {
  const voice = await voiceOf(language);
  const planned = await planSpecs([name], io, voice);
  if (!planned) return exitCode.badInput;
  for (const { vessel, warnings } of planned) {
    const numbers = figuresOf(vessel);
    io.out(
      json
        ? figuresJson(numbers, warnings)
        : figuresText(numbers, vessel.spec, warnings, voice.words),
    );
  }
  return exitCode.done;
}
