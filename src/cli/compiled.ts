/**
 * Loads the bundles of the program with the code that V8 has compiled from them before. Reading that back is quicker
 * than compiling anew, which is most of the time that a short command takes. The build keeps it beside each bundle, as
 * much of it as a command uses; a node of another version takes no notice of it and compiles as usual.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Script } from 'node:vm';

export interface Compiled {
  readonly name: string;
  readonly script: Script;
}

/** Drawing uses most of the code, everything else much less. */
export function cacheName(bundle: string, argv: readonly string[]): string {
  return `${bundle}.${argv.includes('draw') ? 'draw' : 'figures'}.cache`;
}

/** Runs the CommonJS bundle `name` of `folder`; `loaded` is told of it and of each bundle that it fetches. */
export function runBundle(
  folder: string,
  name: string,
  loaded?: (bundle: Compiled) => void,
): unknown {
  const script = compile(join(folder, name), join(folder, cacheName(name, process.argv)));
  loaded?.({ name, script });
  const fetched = new Map<string, unknown>();
  const fetch = (id: string): unknown => {
    if (!id.startsWith('./')) return builtIn(id);
    if (!fetched.has(id)) fetched.set(id, runBundle(folder, id.slice(2), loaded));
    return fetched.get(id);
  };
  const module = { exports: {} };
  const start = script.runInThisContext() as (...parts: unknown[]) => void;
  start(module.exports, fetch, module, folder);
  return module.exports;
}

function compile(file: string, cache: string): Script {
  // bundles are plain ASCII
  const source = `(function (exports, require, module, __dirname) {${readFileSync(file, 'latin1')}\n})`;
  const cachedData = existsSync(cache) ? readFileSync(cache) : undefined;
  return new Script(source, { filename: file, ...(cachedData && { cachedData }) });
}

/** This file is only ever run as CommonJS. */
function builtIn(id: string): unknown {
  // eslint-disable-next-line @typescript-eslint/no-require-imports
  return require(id);
}
