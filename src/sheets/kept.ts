/** What is the same on the sheets of every piece is set once in each language. */
import type { SheetWords } from './words.js';

/** Far more than the papers of one job; past it the store starts anew. */
const most = 50;

/** Keeps what is made of the words of a language, by a key that tells all else that it depends on. */
export function keeper<T>(): (terms: SheetWords, key: string, make: () => T) => T {
  const known = new WeakMap<SheetWords, Map<string, T>>();
  return (terms, key, make) => {
    const kept = known.get(terms) ?? new Map<string, T>();
    known.set(terms, kept);
    const before = kept.get(key);
    if (before !== undefined) return before;
    if (kept.size >= most) kept.clear();
    const made = make();
    kept.set(key, made);
    return made;
  };
}
