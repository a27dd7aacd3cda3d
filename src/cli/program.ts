/** The command line: its commands, and what they share. */
import { Command } from 'commander';
import packageFile from '../../package.json' with { type: 'json' };
import { addCommands } from './commands.js';
import type { Answer } from './exit-code.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';

const help = helpText(
  examples(
    'staveloft new --list                          the templates',
    'staveloft new keg-30 --out my-keg.yaml        begin a spec from one',
    'staveloft size my-keg.yaml --litres 25 --out keg-25.yaml    dimensions for a capacity',
    'staveloft check my-keg.yaml                   is everything in it right?',
    'staveloft figures my-keg.yaml                 every number of the vessel',
    'staveloft draw my-keg.yaml --out my-keg       full-size patterns to print or to rout',
    'staveloft prove my-keg                        do the drawings close?',
    'staveloft page                                all of it in a browser, without a network',
    'staveloft dip my-keg.yaml                     what a wet rod means in litres',
    'staveloft match my-keg.yaml --stock rack.csv  which staves of a rack close',
    'staveloft recut my-keg.yaml --shorten 15      what a worn keg is, cut down',
  ),
  'SPEC is a YAML file, or - for standard input.\nExit codes: 0 done; 1 it ran, and the answer is no; 2 something in the input is wrong; 3 a failure of ours.',
);

export async function programFor(
  argv: readonly string[],
  io: Io,
  answer: Answer,
): Promise<Command> {
  const program = new Command('staveloft')
    .description(
      'True numbers and full-size patterns for coopers, from a short spec of a cask or tub.',
    )
    .version(packageFile.version, '--version', 'say which version this is')
    .option('--quiet', 'say nothing but errors')
    .helpOption('-h, --help', 'show this help')
    .helpCommand('help [command]', 'show the help of a command')
    .addHelpText('after', help)
    .configureHelp({ showGlobalOptions: true })
    .configureOutput({ writeOut: io.out, writeErr: io.err })
    .showHelpAfterError('(add --help to see what there is)')
    .exitOverride();
  await addCommands(program, argv, io, answer);
  return program;
}
