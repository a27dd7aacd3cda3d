/** `staveloft draw`: the full-size patterns of one spec or several, written to a folder. */
import type { Command } from 'commander';
import {
  aboutJobSheet,
  formats,
  jobSheetName,
  letteringWays,
  paperNames,
  pieces,
} from '../index.js';
import { drawMany } from './draw-many.js';
import {
  fanThatCannotBe,
  optionWithoutUse,
  plankThatCannotBe,
  type DrawingOptions,
} from './draw-options.js';
import { drawReport } from './draw-report.js';
import { exitCode, type Answer } from './exit-code.js';
import { foldersFor } from './folders.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { addLanguage } from './language-option.js';
import { fanOf, oneOf, plankOf, printedOf, someOf } from './option-values.js';
import { planSpecs, sayWarnings, type Planned } from './plans.js';
import { refuse } from './refuse.js';
import { voiceOf, type Voice } from './voice.js';
import { writeAsTheyCome } from './write-whole.js';

/** What `--pieces` takes: the drawings and the job sheet. */
const named = [...pieces, { name: jobSheetName, about: aboutJobSheet, onRequest: undefined }];

const pieceNames = named.map(
  ({ name, about, onRequest }) =>
    [name, onRequest ? `${about} (only if asked for by name)` : about] as const,
);

const help = helpText(
  { heading: 'Pieces:', names: pieceNames },
  examples(
    'staveloft draw my-cask.yaml --out my-cask',
    'staveloft draw my-cask.yaml --out my-cask --pieces stave,head --formats dxf',
    'staveloft draw my-cask.yaml --out my-cask --paper a3 --printed 99.6x99.8 --replace',
    'staveloft draw my-cask.yaml --out mein-fass --language de',
    'staveloft draw keg.yaml bucket.yaml --out patterns     a folder for each: patterns/keg ...',
  ),
  'Print PDF files at actual size, 100 %, and measure the square on the sheet before you cut.',
);

export function addDraw(program: Command, io: Io, answer: Answer): void {
  const command = program
    .command('draw')
    .description(
      'Draw the full-size patterns of a vessel as SVG, DXF and PDF, with its spec and a page that shows them.',
    )
    .argument('<spec...>', 'YAML files, or - for standard input')
    .requiredOption('--out <folder>', 'the folder to write to; made if it is missing')
    .action(async (specs: string[], _options, command: Command) => {
      answer(await draw(specs, command.optsWithGlobals<DrawingOptions>(), io));
    });
  addChoices(command).addHelpText('after', help);
}

function addChoices(command: Command): Command {
  const names = named.map(({ name }) => name);
  return addLanguage(command)
    .option('--formats <list>', 'some of svg, dxf, pdf; all unless given', someOf(formats))
    .option('--pieces <list>', 'some of the pieces below', someOf(names))
    .option(
      '--paper <size>',
      `PDF: ${paperNames.join(', ')}; a4 unless given, letter for inches`,
      oneOf(paperNames),
    )
    .option(
      '--printed <mm>',
      'PDF: what the 100 mm square measures as printed, across x along the page',
      printedOf,
    )
    .option('--fan <range>', 'stave-fan: widths in the units of the spec, such as 60-110', fanOf)
    .option(
      '--plank <size>',
      'head-router: length x width to cut boards from, in the units of the spec, such as 2000x250',
      plankOf,
    )
    .option(
      '--lettering <how>',
      'DXF: lettering as text or as outlines; text unless given',
      oneOf(letteringWays),
    )
    .option('--replace', 'write over files that are there already');
}

async function draw(
  specs: readonly string[],
  given: Partial<DrawingOptions> & Pick<DrawingOptions, 'out' | 'language'>,
  io: Io,
): Promise<0 | 2> {
  const options = { ...given, formats: given.formats ?? formats };
  const folders = foldersFor(specs);
  if ('clash' in folders) return refuse(folders.clash, io);
  const idle = optionWithoutUse(options);
  if (idle) return refuse(idle, io);
  const voice = await voiceOf(options.language);
  const planned = await planSpecs(specs, io, voice);
  if (!planned) return exitCode.badInput;
  const unfit = unfitSizes(planned, options);
  if (unfit) return refuse(unfit, io);
  if (!options.quiet) sayWarnings(planned, io, voice);
  return write(planned, folders.names, options, voice, io);
}

function unfitSizes(planned: readonly Planned[], { fan, plank }: DrawingOptions): string | null {
  const faults = planned.flatMap(({ vessel }) => [
    fan ? fanThatCannotBe(fan, vessel) : null,
    plank ? plankThatCannotBe(plank, vessel) : null,
  ]);
  return faults.find((text) => text !== null) ?? null;
}

async function write(
  planned: readonly Planned[],
  folders: readonly string[],
  options: DrawingOptions,
  { words }: Voice,
  io: Io,
): Promise<0 | 2> {
  const shown: string[][] = planned.map(() => []);
  const refusal = await writeAsTheyCome(
    options.replace === true,
    (writing) =>
      drawMany(planned, folders, options, io, {
        files: (files) => writing.add(files),
        spec: (files, i) => {
          shown[i] = files.map((file) => file.shown);
          return files.length > 0 ? writing.obstacle() : words.draw.none(planned[i]!.file);
        },
      }),
    words.files,
  );
  if (refusal !== null) return refuse(refusal, io);
  if (!options.quiet) io.out(drawReport(shown.flat(), words));
  return exitCode.done;
}
