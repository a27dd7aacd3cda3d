/** `staveloft match`: which staves of a rack make which vessel, and in which order. */
import { join } from 'node:path';
import type { Command } from 'commander';
import {
  checkRequest,
  describeStockIssue,
  matchStaves,
  readStock,
  requestFor,
  stockWords,
  wordsIn,
} from '../index.js';
import type { MatchRequest, MatchResult, Stock, StockIssue, Vessel } from '../index.js';
import { exitCode, type Answer, type ExitCode } from './exit-code.js';
import { examples, helpText } from './help-text.js';
import type { Io } from './io.js';
import { addLanguage } from './language-option.js';
import { matchFiles, setsWithPatterns } from './match-files.js';
import { requestFaults, swapFaults } from './match-faults.js';
import { matchJson } from './match-json.js';
import {
  countOf,
  marksOf,
  seedOf,
  vesselsOf,
  wishesOf,
  type MatchOptions,
} from './match-options.js';
import { swap } from './match-swap.js';
import { matchText } from './match-text.js';
import { matchWords, type MatchWords } from './match-words.js';
import { oneOf } from './option-values.js';
import { planSpecs } from './plans.js';
import { refuse } from './refuse.js';
import { messageLine, oneLine } from './say.js';
import { fetchSource, mostOfRackList } from './source.js';
import { voiceOf, type Voice } from './voice.js';
import { writeWhole } from './write-whole.js';

const help = helpText(
  'The rack list is CSV with a heading: mark, width, and if you like length, thickness, bung (yes or no), note. Comma, semicolon or tab; decimal point or comma; in the units of the spec, or as the heading says: width (in). A width is measured at the widest place; two readings with a stroke between them (71.5/72) count as their mean.',
  "Unless given: one vessel; the spec's count within two, for a wine cask 25 to 30; tolerance 1.5 mm or 1/16 in; planing 2 mm or 1/16 in; a bung stave 1.8 times as wide as the bung hole.",
  examples(
    'staveloft match my-cask.yaml --stock rack.csv',
    'staveloft match my-cask.yaml --stock rack.csv --vessels 3 --out sets',
    'staveloft match my-cask.yaml --stock rack.csv --vessels max --tolerance 0.1 --plane 0 --json > sets.json',
    'staveloft match my-cask.yaml --stock rack.csv --standing A4,B17,A9    complete a ring that is begun',
    'staveloft match sets/set-1/spec.yaml --stock rack.csv --swap 7    stave 7 of a set is broken',
  ),
  'Exit codes: 0 as many sets as wanted; 1 fewer; 2 something in the input is wrong.',
);

export function addMatch(program: Command, io: Io, answer: Answer): void {
  const command = program
    .command('match')
    .description('Choose staves from a rack that close at the right girth, and put them in order.')
    .argument('<spec>', 'a YAML file, or - for standard input')
    .requiredOption('--stock <file>', 'the rack list, CSV; or - for standard input')
    .action(async (spec: string, _options, command: Command) => {
      answer(await match(spec, command.optsWithGlobals<MatchOptions>(), io));
    });
  addChoices(command).addHelpText('after', help);
}

function addChoices(command: Command): Command {
  return addLanguage(command)
    .option('--vessels <number>', 'how many sets, or max', vesselsOf)
    .option('--count <range>', 'how many staves a set may have: 28 or 25-30', countOf)
    .option('--tolerance <length>', 'how far the bilge diameter may be from the spec')
    .option('--plane <length>', 'the most to be planed off the widths of one set')
    .option('--bung <length>', 'least width of the bung stave, or none')
    .option(
      '--measured <how>',
      'widths across the flat face (blank) or corner to corner after backing (backed); blank unless given',
      oneOf(['blank', 'backed'] as const),
    )
    .option('--standing <marks>', 'staves that stand already, in their order: A4,B17', marksOf)
    .option('--swap <mark>', 'the stave of the ring that is broken: what takes its place')
    .option('--seed <number>', 'begin the search elsewhere', seedOf)
    .option('--json', 'as JSON, for programs')
    .option('--out <folder>', 'write plans, checklists, specs and patterns of the sets')
    .option('--replace', 'write over files that are there already');
}

interface Bench {
  readonly words: MatchWords;
  readonly voice: Voice;
  readonly vessel: Vessel;
  readonly stock: Stock;
  readonly issues: readonly StockIssue[];
  readonly request: MatchRequest;
}

async function match(spec: string, options: MatchOptions, io: Io): Promise<ExitCode> {
  const bench = await benchOf(spec, options, io);
  if (!bench) return exitCode.badInput;
  if (isSwap(options)) return swap(bench, options, bench.words, io);
  const { request } = bench;
  const result = await search(bench, options, io);
  const code = await give(bench, result, options, io);
  if (code !== exitCode.done) return code;
  const wanted = request.vessels === 'max' ? 1 : request.vessels;
  return result.sets.length >= wanted ? exitCode.done : exitCode.no;
}

const isSwap = (options: MatchOptions): options is MatchOptions & { readonly swap: string } =>
  options.swap !== undefined;

/** All that is wrong with spec, list and options is said by then. */
async function benchOf(name: string, options: MatchOptions, io: Io): Promise<Bench | null> {
  if (name === '-' && options.stock === '-') {
    io.err('standard input (-) can be only one of spec and rack list\n');
    return null;
  }
  if (isSwap(options) && options.out !== undefined) {
    io.err(`${swapFaults.noFiles}\n`);
    return null;
  }
  const voice = await voiceOf(options.language);
  const words = await wordsIn(matchWords, options.language);
  const planned = (await planSpecs([name], io, voice))?.[0];
  const units = planned?.vessel.spec.units ?? 'mm';
  const { stock, issues } = await stockOf(options, units, { voice, words }, io);
  if (!planned || !stock) return null;
  const wishes = wishesOf(options, units);
  if (typeof wishes === 'string') {
    io.err(oneLine(wishes));
    return null;
  }
  const request = requestFor(planned.vessel, wishes);
  const wrong = checkRequest(stock, request);
  for (const { code, found, allowed } of wrong)
    io.err(oneLine(requestFaults[code](found, allowed)));
  return wrong.length > 0 ? null : { words, voice, vessel: planned.vessel, stock, issues, request };
}

async function stockOf(
  { stock: name, quiet, language }: MatchOptions,
  units: 'mm' | 'in',
  { voice, words }: Pick<Bench, 'voice' | 'words'>,
  io: Io,
) {
  const said = { ...voice.words.files, ...words.list };
  const { file, text, refusal } = await fetchSource(name, io, said, mostOfRackList);
  if (text === null) {
    io.err(oneLine(`${file}: ${refusal}`));
    return { stock: null, issues: [] };
  }
  const reading = readStock(text, units);
  const told = reading.issues.filter(({ severity }) => severity === 'error' || !quiet);
  const sentences = await wordsIn(stockWords, language);
  for (const issue of told) io.err(oneLine(describeStockIssue(issue, file, sentences)));
  return reading;
}

/** Until it is done, or Ctrl-C asks for the best so far. */
async function search(
  { stock, request, words }: Bench,
  { quiet }: MatchOptions,
  io: Io,
): Promise<MatchResult> {
  let stopped = false;
  const restore = io.onInterrupt?.(() => (stopped = true));
  const show = quiet ? undefined : io.progress;
  try {
    return await matchStaves(stock, request, {
      ...(io.now && { now: io.now }),
      shouldStop: () => stopped,
      breathe: () => new Promise((resolve) => setImmediate(resolve)),
      ...(show && {
        onProgress: ({ stage, done, of }) => show(words.progress[stage](done, of)),
      }),
    });
  } finally {
    show?.('');
    restore?.();
    if (stopped) io.err(`${words.interrupted}\n`);
  }
}

async function give(
  { words, voice, vessel, stock, issues, request }: Bench,
  result: MatchResult,
  options: MatchOptions,
  io: Io,
): Promise<ExitCode> {
  const { spec } = vessel;
  const staves = stock.staves.length;
  if (options.json) io.out(matchJson(spec.title, request, result, issues));
  else if (!options.quiet || options.out === undefined)
    io.out(matchText({ spec, request, result, words, staves }));
  const { out } = options;
  if (out === undefined || result.sets.length === 0) return exitCode.done;
  const files = await matchFiles({ vessel, request, result, out, language: options.language }, io);
  if ('refused' in files) {
    for (const message of files.refused) io.err(messageLine(message, voice.words));
    return exitCode.no;
  }
  const refusal = writeWhole(files, options.replace === true, voice.words.files);
  if (refusal !== null) return refuse(refusal, io);
  if (!options.quiet && !options.json) io.out(wrote(files.length, result.sets.length, out, words));
  return exitCode.done;
}

function wrote(files: number, sets: number, out: string, words: MatchWords): string {
  const lines = [words.wrote(files, out), words.carry(join(out, 'set-1.pdf'))];
  if (sets > setsWithPatterns) {
    const next = `set-${setsWithPatterns + 1}`;
    const [spec, folder] = [join(out, next, 'spec.yaml'), join(out, next)];
    const command = `staveloft draw ${spec} --out ${folder} --pieces stave-each --replace`;
    lines.push(words.noPatterns(setsWithPatterns + 1, command));
  }
  return lines.map(oneLine).join('');
}
