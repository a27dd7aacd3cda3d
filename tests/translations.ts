/** All that a bundle of words says, with samples in the places of its numbers and names. */

/** The texts of each place in a bundle, by their path: `stave.notes.closes`, `cover.steps.2`. */
export type Said = ReadonlyMap<string, string>;

/** What stands for the first, second ... value that a sentence is given. */
export const samples = ['⟨1⟩', '⟨2⟩', '⟨3⟩', '⟨4⟩', '⟨5⟩'] as const;

export function said(bundle: unknown, path: readonly string[] = []): Said {
  if (typeof bundle === 'string') return new Map([[path.join('.'), bundle]]);
  if (typeof bundle === 'function') return said(spoken(bundle as Sentence), path);
  if (typeof bundle !== 'object' || bundle === null) return new Map();
  return new Map(Object.entries(bundle).flatMap(([key, part]) => [...said(part, [...path, key])]));
}

type Sentence = (...values: unknown[]) => unknown;

/** A sentence may want lists where others want words. */
function spoken(sentence: Sentence): unknown {
  const lists = [samples[0], samples.slice(1)];
  try {
    return sentence(...samples);
  } catch {
    return sentence(...lists);
  }
}

/** The samples that a text shows, in order. */
export function samplesIn(text: string): string[] {
  return samples.filter((sample) => text.includes(sample));
}
