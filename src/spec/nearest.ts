/** Finds the word that a slip of the keyboard was meant to be. */

/** The nearest of `words`, or null when none is near enough to be worth naming: two letters in five may differ. */
export function nearest(word: string, words: readonly string[]): string | null {
  const typed = plain(word.slice(0, 40));
  let best: string | null = null;
  let least = Math.max(1, Math.floor(0.4 * typed.length)) + 1;
  for (const candidate of words) {
    const distance = isStartOf(typed, plain(candidate)) ? 1 : editDistance(typed, plain(candidate));
    if (distance < least) [best, least] = [candidate, distance];
  }
  return best;
}

/** `thick` for thickness, `bilgeDiameter` for bilge. */
function isStartOf(a: string, b: string): boolean {
  return Math.min(a.length, b.length) >= 3 && (a.startsWith(b) || b.startsWith(a));
}

/** Case, spaces, hyphens and underlines are no difference worth a letter. */
const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]/g, '');

/** Levenshtein's distance: the fewest letters put in, taken out or exchanged. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const exchange = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(exchange, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
