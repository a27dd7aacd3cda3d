/** `staveloft new`: begins a spec from one of the templates. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Command } from 'commander';
import { nearest } from '../index.js';
import { exitCode, type Answer } from './exit-code.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { refuse } from './refuse.js';
import { oneLine } from './say.js';
import { writeWhole } from './write-whole.js';

interface Options {
  readonly list?: true;
  readonly out?: string;
  readonly replace?: true;
  readonly quiet?: true;
}

const help = helpText(
  examples(
    'staveloft new --list',
    'staveloft new keg-30 --out my-keg.yaml',
    'staveloft new keg-30 > my-keg.yaml',
  ),
  'The templates are invented examples in the usual proportions of the trade. Change what you like, then: staveloft check.',
);

export function addNew(program: Command, io: Io, answer: Answer): void {
  program
    .command('new')
    .description('Begin a spec from a template.')
    .argument('[template]', 'one of the templates')
    .option('--list', 'list the templates')
    .option('--out <file>', 'write to this file, not to standard output')
    .option('--replace', 'write over a file that is there already')
    .addHelpText('after', help)
    .action((template: string | undefined, _options, command: Command) => {
      answer(begin(template, command.optsWithGlobals<Options>(), io));
    });
}

function begin(template: string | undefined, options: Options, io: Io): 0 | 2 {
  const folder = join(io.packageFolder, 'templates');
  const names = templateNames(folder);
  if (options.list) {
    io.out(listText(folder, names));
    return exitCode.done;
  }
  if (template === undefined) return refuseName('which template?', names, io);
  if (!names.includes(template)) {
    const meant = nearest(template, names);
    const hint = meant ? ` (did you mean ${meant}?)` : '';
    return refuseName(`there is no template ${template}${hint}.`, names, io);
  }
  return give(readFileSync(join(folder, `${template}.yaml`), 'utf8'), options, io);
}

function templateNames(folder: string): string[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
  return files.map((name) => name.slice(0, -'.yaml'.length)).sort();
}

function listText(folder: string, names: readonly string[]): string {
  const width = Math.max(...names.map((name) => name.length)) + 2;
  const lines = names.map(
    (name) => `${name.padEnd(width)}${titleIn(join(folder, `${name}.yaml`))}\n`,
  );
  return lines.join('');
}

function titleIn(path: string): string {
  const title = /^title:\s*(.*)$/m.exec(readFileSync(path, 'utf8'));
  return title?.[1]?.replace(/^(['"])(.*)\1$/, '$2') ?? '';
}

function refuseName(text: string, names: readonly string[], io: Io): 2 {
  return refuse(`${text} The templates: ${names.join(', ')}`, io);
}

function give(text: string, { out, replace, quiet }: Options, io: Io): 0 | 2 {
  if (out === undefined) {
    io.out(text);
    return exitCode.done;
  }
  const refusal = writeWhole([{ path: resolve(io.folder, out), content: text }], replace === true);
  if (refusal !== null) return refuse(refusal, io);
  if (!quiet) io.out(oneLine(`wrote ${out}; next: staveloft check ${out}`));
  return exitCode.done;
}
