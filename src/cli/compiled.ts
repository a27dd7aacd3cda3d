/**
 * Loads the bundles of the program with the code that V8 has compiled from them before. Reading that back is quicker
 * than compiling anew, which is most of the time that a short command takes. The build keeps it beside each bundle; a
 * node of another version takes no notice of it and compiles as usual.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { Script } from 'node:vm';

export interface Compiled {
  readonly name: string;
  readonly script: Script;
}

export const cacheName = (bundle: string): string => `${bundle}.cache`;

/**
 * V8 optimises a function once it has run for a while, by default a very short one; a command is over before that pays,
 * and `draw` of two pieces spends a quarter of its processor time on it (measured). Work of many seconds is still
 * optimised. Only where the flag was tried: a node that didn't know it would complain on the terminal.
 */
function optimiseLater(): void {
  if (process.versions.v8.startsWith('11.')) setFlagsFromString('--interrupt-budget=800000');
}

interface Running {
  /** told of each bundle that is loaded */
  readonly loaded?: (bundle: Compiled) => void;
  /** what was started before, which every bundle knows by the name `started` */
  readonly started?: unknown;
}

/** Runs the CommonJS bundle `name` of `folder`, and those that it asks for, each once. */
export function runBundle(folder: string, name: string, { loaded, started }: Running = {}): void {
  // before anything is compiled: compiled code is only read back under the flags that it was kept under
  optimiseLater();
  const bundles = new Map<string, { exports: unknown }>();
  const fetch = (id: string): unknown => {
    if (!id.startsWith('./')) return builtIn(id);
    const known = bundles.get(id);
    if (known) return known.exports;
    const module = { exports: {} };
    // before it runs, since two bundles may ask for each other
    bundles.set(id, module);
    const script = compile(join(folder, id));
    loaded?.({ name: id.slice(2), script });
    const start = script.runInThisContext() as (...parts: unknown[]) => void;
    start(module.exports, fetch, module, folder, started);
    return module.exports;
  };
  fetch(`./${name}`);
}

function compile(file: string): Script {
  const cache = cacheName(file);
  // bundles are plain ASCII
  const source = `(function (exports, require, module, __dirname, started) {${readFileSync(file, 'latin1')}\n})`;
  const cachedData = existsSync(cache) ? readFileSync(cache) : undefined;
  return new Script(source, { filename: file, ...(cachedData && { cachedData }) });
}

/** This file is only ever run as CommonJS. */
function builtIn(id: string): unknown {
  // eslint-disable-next-line @typescript-eslint/no-require-imports
  return require(id);
}
