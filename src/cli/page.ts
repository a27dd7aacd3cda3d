/** `staveloft page`: the workshop page in a browser, from this machine to this machine. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Command } from 'commander';
import { InvalidArgumentError } from 'commander';
import { exitCode, type Answer, type ExitCode } from './exit-code.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { servePage, type PageServer } from './page-server.js';
import { reasonOf } from './reason.js';
import { refuse } from './refuse.js';
import { cliWords } from './words.js';

interface Options {
  readonly port: number;
  readonly open: boolean;
}

const help = helpText(
  'The page answers this machine only, needs no network and sends nothing anywhere. It stops with Ctrl+C. The same page in one file, to open without a server or to copy to a tablet: dist/staveloft.html in the package.',
  examples('staveloft page', 'staveloft page --port 8080 --no-open'),
);

export function addPage(program: Command, io: Io, answer: Answer): void {
  program
    .command('page')
    .description(
      'Show the workshop page: type figures, see the vessel change, print and save patterns.',
    )
    .option('--port <number>', 'serve it on this port; a free one unless given', portOf, 0)
    .option('--no-open', 'open no browser, only say the address')
    .addHelpText('after', help)
    .action(async (options: Options) => {
      answer(await page(options, io));
    });
}

function portOf(text: string): number {
  const port = /^\d{1,5}$/.test(text) ? Number(text) : NaN;
  if (port >= 1 && port <= 65_535) return port;
  throw new InvalidArgumentError('Give a number from 1 to 65535.');
}

async function page({ port, open }: Options, io: Io): Promise<ExitCode> {
  const folder = join(io.packageFolder, 'dist', 'page');
  if (!existsSync(join(folder, 'index.html'))) {
    io.err('the page is not built yet: run npm run build in the folder of this program\n');
    return exitCode.failure;
  }
  let server: PageServer;
  try {
    server = await servePage(folder, port);
  } catch (error) {
    return refuse(`port ${port} cannot be used: ${reasonOf(error, cliWords.en.files)}`, io);
  }
  io.out(`the page is at ${server.address} until you press Ctrl+C\n`);
  if (open) io.show(server.address);
  await io.untilStopped();
  await server.close();
  return exitCode.done;
}
