/** A chosen set as a vessel of its own. */
import { planVessel, setSpecText, type Vessel } from '../../index.js';
import { drawingWords } from '../words/index.js';
import { chosenSet, type Chosen } from './chosen.js';

/** The spec that it was chosen for, with the widths of the set. */
export function setSpec(chosen: Chosen, number: number): string {
  const own = chosenSet(chosen, number);
  return own ? setSpecText(own, drawingWords.value) : chosen.spec;
}

/** Null where the set makes no vessel: the spec's own rules refuse it. */
export const setVessel = (chosen: Chosen, number: number): Vessel | null =>
  planVessel(setSpec(chosen, number), '').vessel;
