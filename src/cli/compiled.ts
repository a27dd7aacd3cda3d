/**
 * Loads the bundles of the program with the code that V8 has compiled from them before. Reading that back is quicker
 * than compiling anew, which is most of the time that a short command takes. The build keeps it beside each bundle; a
 * node of another version takes no notice of it and compiles as usual.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Script } from 'node:vm';

export interface Compiled {
  readonly name: string;
  readonly script: Script;
}

export const cacheName = (name: string): string => `${name}.cache`;

/** Runs the CommonJS bundle `name` of `folder`; `loaded` is told of it and of each bundle that it fetches. */
export function runBundle(
  folder: string,
  name: string,
  loaded?: (bundle: Compiled) => void,
): unknown {
  const file = join(folder, name);
  const cache = join(folder, cacheName(name));
  // bundles are plain ASCII
  const source = `(function (exports, require, module, __dirname) {${readFileSync(file, 'latin1')}\n})`;
  const cachedData = existsSync(cache) ? readFileSync(cache) : undefined;
  const script = new Script(source, { filename: file, ...(cachedData && { cachedData }) });
  loaded?.({ name, script });
  // built-in modules; this file is only ever run as CommonJS
  // eslint-disable-next-line @typescript-eslint/no-require-imports
  const builtIn = (id: string): unknown => require(id);
  const fetch = (id: string): unknown =>
    id.startsWith('./') ? runBundle(folder, id.slice(2), loaded) : builtIn(id);
  const module = { exports: {} };
  const start = script.runInThisContext() as (...parts: unknown[]) => void;
  start(module.exports, fetch, module, folder);
  return module.exports;
}
