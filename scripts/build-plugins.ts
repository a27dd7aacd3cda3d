/** What the build leaves out of bundles or puts off, since every command would pay for it at its start. */
import { readFileSync } from 'node:fs';
import type { Plugin } from 'esbuild';

/**
 * Takes the place of packages of which we never use what they are there for. A use throws, so that it cannot pass
 * unnoticed: the tests make every kind of file with the bundle. `by` are the files that do without.
 */
export function leftOut(name: string, filter: RegExp, by = /./): Plugin {
  const contents = standIn(name);
  return {
    name: `without-${name}`,
    setup({ onResolve, onLoad }) {
      onResolve({ filter }, ({ path, importer }) =>
        by.test(importer) ? { path, namespace: name } : null,
      );
      onLoad({ filter: /.*/, namespace: name }, () => ({ contents }));
    },
  };
}

/** A module, in CommonJS, of which everything may be named and nothing used. */
export function standIn(name: string): string {
  return `module.exports = new Proxy(function () {}, {
    get: (_, key) => key === 'then' ? undefined : key === '__esModule' ? false : module.exports,
    apply() { throw new Error(${JSON.stringify(`${name}: not in this bundle`)}); },
    construct() { throw new Error(${JSON.stringify(`${name}: not in this bundle`)}); },
  });`;
}

/**
 * The commands import from the library's index alone, which imports everything; what a command doesn't use would be
 * loaded with it. Here each import from the index becomes one from the file that the index has it from.
 */
export function pastIndex(index: string): Plugin {
  const homes = new Map<string, string>();
  for (const [, names, home] of readFileSync(index, 'utf8').matchAll(
    /^export \{([^}]*)\} from '(.*)';$/gm,
  ))
    for (const name of wordsIn(names!)) homes.set(name, home!.replace('./', '../'));
  const direct = (name: string): string => {
    const home = homes.get(name);
    if (home === undefined) throw new Error(`${index} has no ${name}`);
    return `import { ${name} } from '${home}';`;
  };
  return {
    name: 'past-index',
    setup({ onLoad }) {
      onLoad({ filter: /[\\/]cli[\\/][^\\/]*\.ts$/ }, ({ path }) => ({
        contents: readFileSync(path, 'utf8').replace(
          /^import \{([^}]*)\} from '\.\.\/index\.js';$/gm,
          (_, names: string) => wordsIn(names).map(direct).join(' '),
        ),
        loader: 'ts',
      }));
    },
  };
}

/** Names between commas, types left out. */
function wordsIn(names: string): string[] {
  const all = names.split(',').map((name) => name.trim());
  return all.filter((name) => name !== '' && !name.startsWith('type '));
}
