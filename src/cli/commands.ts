/** The commands. Each is loaded only when it is asked for: loading is most of what a short command takes. */
import type { Command } from 'commander';
import type { Answer } from './exit-code.js';
import type { Io } from './io.js';

/** Adds a command to the program, with its options and what it does. */
type Add = (program: Command, io: Io, answer: Answer) => void;

interface Known {
  readonly name: string;
  readonly takes: string;
  /** one line for the list */
  readonly summary: string;
  readonly load: () => Promise<Add>;
}

const commands: readonly Known[] = [
  {
    name: 'new',
    takes: '[template]',
    summary: 'begin a spec from a template',
    load: async () => (await import('./new.js')).addNew,
  },
  {
    name: 'size',
    takes: '<spec>',
    summary: 'find dimensions for a capacity',
    load: async () => (await import('./size.js')).addSize,
  },
  {
    name: 'check',
    takes: '<spec...>',
    summary: 'check specs',
    load: async () => (await import('./check.js')).addCheck,
  },
  {
    name: 'figures',
    takes: '<spec>',
    summary: 'show every number of a vessel',
    load: async () => (await import('./figures.js')).addFigures,
  },
  {
    name: 'draw',
    takes: '<spec...>',
    summary: 'draw full-size patterns',
    load: async () => (await import('./draw.js')).addDraw,
  },
  {
    name: 'prove',
    takes: '<folder>',
    summary: 'prove that drawings close',
    load: async () => (await import('./prove.js')).addProve,
  },
  {
    name: 'match',
    takes: '<spec>',
    summary: 'choose staves from a rack that close',
    load: async () => (await import('./match.js')).addMatch,
  },
  {
    name: 'page',
    takes: '',
    summary: 'show the workshop page in a browser',
    load: async () => (await import('./page.js')).addPage,
  },
  {
    name: 'dip',
    takes: '<spec>',
    summary: 'show what a dip means in litres',
    load: async () => (await import('./dip.js')).addDip,
  },
  {
    name: 'recut',
    takes: '<spec>',
    summary: 'cut a worn vessel down to new grooves',
    load: async () => (await import('./recut.js')).addRecut,
  },
];

/** Adds those that the command line names; of the others just what the list of commands says of them. */
export async function addCommands(
  program: Command,
  argv: readonly string[],
  io: Io,
  answer: Answer,
): Promise<void> {
  for (const { name, takes, summary, load } of commands) {
    if (argv.includes(name)) (await load())(program, io, answer);
    else program.command(`${name} ${takes}`.trim()).description(summary);
  }
}
