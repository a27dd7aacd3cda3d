/** A helper is sent specs of vessels that the page has solved itself. */
import { solveVessel, type Spec, type Vessel } from '../../index.js';

/** Throws for a spec that is no vessel. */
export function vesselOf(spec: Spec): Vessel {
  const solved = solveVessel(spec);
  if ('vessel' in solved) return solved.vessel;
  throw new Error('a spec that is no vessel was sent to a helper');
}
