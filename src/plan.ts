/** The first half of the pipeline: from a spec's text to a solved vessel. It knows nothing of drawings, which load later. */
import type { Message } from './spec/issue.js';
import { putIntoWords, readSpec } from './spec/read.js';
import type { Wordings } from './spec/wording.js';
import type { Source } from './spec/yaml-source.js';
import { solveVessel } from './vessel/solve.js';
import type { Vessel } from './vessel/vessel.js';

/** A vessel where the spec can be built; in any case what is to be said about the spec, errors and warnings. */
export interface Plan {
  readonly vessel: Vessel | null;
  readonly messages: readonly Message[];
}

/** Reads and solves a spec, which may have been parsed before. `file` is only named in the messages, which are English unless other wordings are given. */
export function planVessel(text: string | Source, file: string, wordings?: Wordings): Plan {
  const read = readSpec(text);
  if (!read.spec)
    return { vessel: null, messages: putIntoWords(read.issues, read, file, wordings) };
  const solved = solveVessel(read.spec);
  const found = 'vessel' in solved ? solved.vessel.warnings : solved.issues;
  const messages = putIntoWords([...read.issues, ...found], read, file, wordings);
  return { vessel: 'vessel' in solved ? solved.vessel : null, messages };
}
