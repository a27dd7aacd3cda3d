/** Says on one line what is wrong with what was given, and answers for it. */
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { oneLine } from './say.js';

export function refuse(text: string, io: Io): 2 {
  io.err(oneLine(text));
  return exitCode.badInput;
}
