/** Undo and redo: the texts that a spec went through. */

interface Step {
  readonly text: string;
  /** what was being changed; changes of one thing in a row count as one step */
  readonly group: string | null;
}

export interface History {
  readonly past: readonly Step[];
  readonly present: Step;
  readonly future: readonly Step[];
}

const mostSteps = 500;

export const begin = (text: string): History => ({
  past: [],
  present: { text, group: null },
  future: [],
});

/** With a `group`, a change that follows another of the same group replaces it. */
export function record(history: History, text: string, group: string | null = null): History {
  const { past, present } = history;
  if (text === present.text) return history;
  const same = group !== null && group === present.group;
  const before = same ? past : [...past, present].slice(-mostSteps);
  return { past: before, present: { text, group }, future: [] };
}

/** After this, a change starts a step of its own, whatever it changes. */
export const settle = (history: History): History => ({
  ...history,
  present: { ...history.present, group: null },
});

export function undo({ past, present, future }: History): History {
  const last = past.at(-1);
  if (!last) return { past, present, future };
  return settle({ past: past.slice(0, -1), present: last, future: [present, ...future] });
}

export function redo({ past, present, future }: History): History {
  const [next, ...rest] = future;
  if (!next) return { past, present, future };
  return settle({ past: [...past, present], present: next, future: rest });
}
