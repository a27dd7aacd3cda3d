/** `staveloft check`: is everything in the specs right, and can they be built? */
import type { Command } from 'commander';
import { exitCode, type Answer } from './exit-code.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { addLanguage, type Speaking } from './language-option.js';
import { planSpecs, sayWarnings } from './plans.js';
import { oneLine } from './say.js';
import { voiceOf } from './voice.js';

const help = helpText(
  examples(
    'staveloft check my-cask.yaml',
    'staveloft check *.yaml --quiet',
    'cat my-cask.yaml | staveloft check -',
  ),
  'Errors and warnings go to standard error as file:line:column: key: text.',
);

export function addCheck(program: Command, io: Io, answer: Answer): void {
  const command = program
    .command('check')
    .description('Check specs and say all that is wrong or doubtful in them, with line and column.')
    .argument('<spec...>', 'YAML files, or - for standard input')
    .addHelpText('after', help)
    .action(async (specs: string[], _options, command: Command) => {
      answer(await check(specs, command.optsWithGlobals<Options>(), io));
    });
  addLanguage(command);
}

interface Options extends Speaking {
  readonly quiet?: true;
}

async function check(
  specs: readonly string[],
  { quiet, language }: Options,
  io: Io,
): Promise<0 | 2> {
  const voice = await voiceOf(language);
  const planned = await planSpecs(specs, io, voice);
  if (!planned) return exitCode.badInput;
  if (quiet) return exitCode.done;
  sayWarnings(planned, io, voice);
  const { good, warned } = voice.words.check;
  for (const { file, warnings } of planned)
    io.out(oneLine(`${file}: ${warnings.length === 0 ? good : warned(warnings.length)}`));
  return exitCode.done;
}
