/** `staveloft check`: is everything in the specs right, and can they be built? */
import type { Command } from 'commander';
import { exitCode, type Answer } from './exit-code.js';
import type { Io } from './io.js';
import { planSpecs, sayWarnings } from './plans.js';

import { oneLine } from './say.js';

const examples = `
Examples:
  staveloft check my-cask.yaml
  staveloft check *.yaml --quiet
  cat my-cask.yaml | staveloft check -

Errors and warnings go to standard error as file:line:column: key: text.`;

export function addCheck(program: Command, io: Io, answer: Answer): void {
  program
    .command('check')
    .description('Check specs and say all that is wrong or doubtful in them, with line and column.')
    .argument('<spec...>', 'YAML files, or - for standard input')
    .addHelpText('after', examples)
    .action(async (specs: string[], _options, command: Command) => {
      const quiet = command.optsWithGlobals()['quiet'] === true;
      answer(await check(specs, quiet, io));
    });
}

async function check(specs: readonly string[], quiet: boolean, io: Io): Promise<0 | 2> {
  const planned = await planSpecs(specs, io);
  if (!planned) return exitCode.badInput;
  if (quiet) return exitCode.done;
  sayWarnings(planned, io);
  for (const { file, warnings } of planned) io.out(oneLine(`${file}: ${verdict(warnings.length)}`));
  return exitCode.done;
}

function verdict(warnings: number): string {
  if (warnings === 0) return 'can be built';
  return `can be built, with ${warnings} ${warnings === 1 ? 'warning' : 'warnings'}`;
}
