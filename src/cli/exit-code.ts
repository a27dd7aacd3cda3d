/** What a command's exit code says to the shell. */
export const exitCode = {
  done: 0,
  /** it ran, and the answer is no */
  no: 1,
  badInput: 2,
  /** a failure of ours */
  failure: 3,
} as const;

export type ExitCode = (typeof exitCode)[keyof typeof exitCode];

/** How a command gives its answer. */
export type Answer = (code: ExitCode) => void;
