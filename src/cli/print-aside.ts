/** A thread that prints while the program draws. */
import { availableParallelism } from 'node:os';
import type { Printing } from '../index.js';
import { Thread } from './thread.js';

export type PrintAside = Thread<Printing, Uint8Array>;

/** Options with which a pack is not whole, or nothing is drawn: the thread would hardly be ready before all is done. */
const forLess = /^(--pieces|--formats|--help|--version|-h)/;

/**
 * For command lines that ask for whole packs, started before anything else is fetched, so that it is ready when there is
 * something to print. Null where it wouldn't pay.
 */
export function printAside(argv: readonly string[], script: string): PrintAside | null {
  if (argv[0] !== 'draw' || argv.some((word) => forLess.test(word))) return null;
  return availableParallelism() > 1 ? new Thread(script, 'print-thread') : null;
}
