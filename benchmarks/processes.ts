/** Whole processes, measured by turns: a busy machine is then busy for all of them. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const usage = fileURLToPath(new URL('usage.cjs', import.meta.url));

export interface Cost {
  /** medians, milliseconds */
  readonly wall: number;
  readonly cpu: number;
  /** the greatest, megabytes */
  readonly memory: number;
}

/** A command line of node, or what gives one for each run, such as with a folder that isn't there yet. */
type CommandLine = readonly string[] | (() => readonly string[]);

/** What each command line costs, in `rounds` runs; the first round only warms the disk. */
export function costs<Name extends string>(
  commands: Readonly<Record<Name, CommandLine>>,
  rounds: number,
): Record<Name, Cost> {
  const names = Object.keys(commands) as Name[];
  const runs = Array.from({ length: rounds + 1 }, () =>
    names.map((name) => {
      const wall = wallOf(lineOf(commands[name]));
      return { name, wall, used: usedBy(lineOf(commands[name])) };
    }),
  );
  const measured = runs.slice(1).flat();
  const costOf = (name: Name): Cost => {
    const own = measured.filter((run) => run.name === name);
    return {
      wall: median(own.map(({ wall }) => wall)),
      cpu: median(own.map(({ used }) => (used.userCPUTime + used.systemCPUTime) / 1000)),
      memory: Math.max(...own.map(({ used }) => used.maxRSS / 1024)),
    };
  };
  return Object.fromEntries(names.map((name) => [name, costOf(name)])) as Record<Name, Cost>;
}

function lineOf(command: CommandLine): readonly string[] {
  return typeof command === 'function' ? command() : command;
}

export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
}

/** The 95th percentile. */
export function late(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(0.95 * values.length)]!;
}

function wallOf(parts: readonly string[]): number {
  const start = performance.now();
  const { status } = spawnSync(process.execPath, parts, { stdio: 'ignore' });
  if (status !== 0) throw new Error(`exit code ${status}: node ${parts.join(' ')}`);
  return performance.now() - start;
}

function usedBy(parts: readonly string[]): NodeJS.ResourceUsage {
  const { output } = spawnSync(process.execPath, ['--require', usage, ...parts], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
  });
  return JSON.parse(output[3] ?? '') as NodeJS.ResourceUsage;
}
