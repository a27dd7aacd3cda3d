/** What a stave is at a place along it. */
import type { Vessel } from '../../index.js';

export interface StaveStation {
  readonly station: number;
  readonly width: number;
  readonly bevelDegrees: number;
  readonly thickness: number;
}

/** Null beyond the ends of the finished stave, and for pieces whose `x` is no station of the vessel's one stave. */
export function staveStation(vessel: Vessel, piece: string, x: number): StaveStation | null {
  if (piece !== 'stave' && piece !== 'stave-backed') return null;
  const { meanStave: stave, bend } = vessel;
  if (x < stave.ends.bottom.outerStation || x > stave.ends.top.outerStation) return null;
  const z = bend.sectionAtStation(x);
  return {
    station: x,
    width: 2 * stave.halfWidth(z, 0),
    bevelDegrees: (stave.bevel(z) * 180) / Math.PI,
    thickness: stave.blankThicknessAt(z),
  };
}
