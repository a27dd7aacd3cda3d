/** A hoop cut from sheet: its surface, a piece of a cone, unrolled to a ring sector. Lengths in mm, angles in radians. */
import { fitTolerance } from '../geometry/tolerance.js';
import { shortEdge, type Hoop } from './hoop.js';

export interface SheetHoop {
  /** radii of the two edges about the cone's point; they differ by the strap's width */
  readonly shortRadius: number;
  readonly longRadius: number;
  /** once round the vessel, without the lap */
  readonly roundSweep: number;
  /** as cut, lap included */
  readonly sweep: number;
  /** angle that the driving takes out of it, by which the overlap is longer than the lap */
  readonly drivingSweep: number;
}

/**
 * Both edges unrolled: girth = radius times sweep, and the radii are the width apart, so that the sweep is
 * `splay / width` (`2 pi sin(psi)` on a round outside) and the radius `(r + t cos(psi) / 2) / sin(psi)`.
 * The lap is measured at the mean radius. Null where the sector cannot be told from a plain strip.
 */
export function sheetHoopOf(hoop: Hoop): SheetHoop | null {
  const { width, lap } = hoop.spec;
  const roundSweep = hoop.splay / width;
  const length = shortEdge(hoop);
  // the rise of an arc is about its length times its sweep / 8
  if ((length * roundSweep) / 8 < fitTolerance) return null;
  const shortRadius = length / roundSweep;
  const meanRadius = shortRadius + width / 2;
  return {
    shortRadius,
    longRadius: shortRadius + width,
    roundSweep,
    sweep: roundSweep + lap / meanRadius,
    drivingSweep: hoop.driving / shortRadius,
  };
}
