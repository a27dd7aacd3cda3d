/** A chosen set as a vessel of its own. */
import { planVessel, specOfSet, writeSpec, type MatchedSet, type Vessel } from '../../index.js';
import { words } from '../words/index.js';
import type { Chosen } from './choosing.js';

/** The spec that it was chosen for, with the widths of the set. */
export function setSpec(chosen: Chosen, set: MatchedSet, number: number): string {
  const { vessel } = planVessel(chosen.spec, '');
  const title = `${chosen.title}, ${words.value.rack.set(number)}`;
  return vessel ? writeSpec(specOfSet(vessel.spec, set, chosen.measured, title)) : chosen.spec;
}

/** Null where the set makes no vessel: the spec's own rules refuse it. */
export const setVessel = (chosen: Chosen, set: MatchedSet, number: number): Vessel | null =>
  planVessel(setSpec(chosen, set, number), '').vessel;
