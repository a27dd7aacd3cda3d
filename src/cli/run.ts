/** Runs one command line and answers with its exit code. Whatever goes wrong inside, nobody sees a stack trace unasked. */
import { CommanderError } from 'commander';
import { exitCode, type ExitCode } from './exit-code.js';
import type { Io } from './io.js';
import { programFor } from './program.js';

/** `argv` without the names of node and of the program. */
export async function run(argv: readonly string[], io: Io): Promise<ExitCode> {
  let code: ExitCode = exitCode.done;
  try {
    const program = await programFor(argv, io, (answer) => (code = answer));
    await program.parseAsync(argv, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError)
      return error.exitCode === 0 ? exitCode.done : exitCode.badInput;
    io.err(failureText(error, io.env['STAVELOFT_TRACE'] === '1'));
    return exitCode.failure;
  }
}

function failureText(error: unknown, trace: boolean): string {
  const { message, stack } = error instanceof Error ? error : new Error(String(error));
  const remedy = trace ? (stack ?? '') : 'STAVELOFT_TRACE=1 in the environment shows where.';
  return `staveloft: this is a failure of ours, not of your spec: ${message}\n${remedy}\n`;
}
