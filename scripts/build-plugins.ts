/** What the build leaves out of bundles or puts off, since every command would pay for it at its start. */
import { readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Plugin } from 'esbuild';

/**
 * Takes the place of packages of which we never use what they are there for. A use throws, so that it cannot pass
 * unnoticed: the tests make every kind of file with the bundle.
 */
export function leftOut(name: string, filter: RegExp): Plugin {
  const contents = `module.exports = new Proxy(function () {}, {
    get: (_, key) => key === 'then' ? undefined : key === '__esModule' ? false : module.exports,
    apply() { throw new Error(${JSON.stringify(`${name}: not in this bundle`)}); },
    construct() { throw new Error(${JSON.stringify(`${name}: not in this bundle`)}); },
  });`;
  return {
    name: `without-${name}`,
    setup({ onResolve, onLoad }) {
      onResolve({ filter }, ({ path }) => ({ path, namespace: name }));
      onLoad({ filter: /.*/, namespace: name }, () => ({ contents }));
    },
  };
}

/**
 * fontkit carries tables of all scripts' characters, and unpacks them when it is loaded. Of these it only ever asks for
 * us whether a character is a mark, which the language itself knows; the rest is for scripts that are shaped, and throws.
 */
export const unicodeByLanguage: Plugin = {
  name: 'unicode-by-language',
  setup({ onResolve, onLoad }) {
    const own = { path: 'unicode-properties', namespace: 'unicode' };
    onResolve({ filter: /^unicode-properties$/ }, () => own);
    onLoad({ filter: /.*/, namespace: 'unicode' }, () => ({
      contents: `const no = () => { throw new Error('shaping: not in this bundle'); };
        export const isMark = (code) => /^\\p{M}$/u.test(String.fromCodePoint(code));
        export { no as getCategory, no as getCombiningClass, no as getScript, no as isDigit };`,
    }));
  },
};

/** fontkit unpacks tables of all scripts when it is loaded; here each is unpacked when it is first looked into. */
export const lazyTries: Plugin = {
  name: 'lazy-tries',
  setup({ onResolve, onLoad, resolve }) {
    const itself = { namespace: 'file' };
    onResolve({ filter: /^unicode-trie$/ }, async ({ path, pluginData, resolveDir, kind }) => {
      if (pluginData === itself) return null;
      const found = await resolve(path, { kind, resolveDir, pluginData: itself });
      return { path: found.path, namespace: 'lazy-trie' };
    });
    onLoad({ filter: /.*/, namespace: 'lazy-trie' }, ({ path }) => ({
      contents: `const Trie = require(${JSON.stringify(path)});
        module.exports = class {
          constructor(data) { this.data = data; }
          get(code) { return (this.trie ??= new Trie(this.data)).get(code); }
        };`,
      resolveDir: dirname(path),
    }));
  },
};

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
