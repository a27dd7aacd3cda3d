/** Sets that were chosen, and what they were chosen for: the vessel on the page may change afterwards. Knows nothing of the page. */
import {
  planVessel,
  setFiles,
  setsTable,
  type ChosenSet,
  type MatchResult,
  type Message,
  type OutFile,
  type SetFileOptions,
  type Vessel,
  type Wishes,
} from '../../index.js';

export interface Chosen {
  readonly spec: string;
  readonly title: string;
  readonly measured: 'blank' | 'backed';
  readonly wanted: number | null;
  readonly result: MatchResult;
  /** what was asked for; sets that an older page kept lack it */
  readonly wishes?: Wishes;
  /** marks of staves that stand */
  readonly setUp: readonly string[];
}

/** Null where what was kept is none. */
export function keptChosen(text: string | null): Chosen | null {
  try {
    const chosen = JSON.parse(text ?? 'null') as Chosen | null;
    return chosen && Array.isArray(chosen.result.sets) && Array.isArray(chosen.setUp)
      ? chosen
      : null;
  } catch {
    return null;
  }
}

/** What the sets were chosen for; null where the spec is no vessel any more. */
export const vesselFor = ({ spec }: Chosen): Vessel | null => planVessel(spec, '').vessel;

/** `number` from 1; null where there is no such set, or the spec is no vessel any more. */
export function chosenSet(chosen: Chosen, number: number): ChosenSet | null {
  const { measured, result } = chosen;
  const vessel = vesselFor(chosen);
  const set = result.sets[number - 1];
  return vessel && set ? { spec: vessel.spec, measured, set, number } : null;
}

/** What `match --out` writes of one set, and the table of all; or why it makes no vessel. */
export async function filesOfSet(
  chosen: Chosen,
  number: number,
  options: Omit<SetFileOptions, 'patterns' | 'file'>,
): Promise<OutFile[] | { readonly refused: readonly Message[] }> {
  const own = chosenSet(chosen, number);
  if (!own) return { refused: [] };
  const file = `set-${number}/spec.yaml`;
  const files = await setFiles(own, { ...options, file, patterns: true });
  return 'refused' in files ? files : [setsTable(chosen.result.sets, own.spec), ...files];
}
