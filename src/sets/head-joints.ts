/** Where the joints of a vessel's head boards come to lie in the ring. */
import { boardJointAzimuths } from '../rack/board-joints.js';
import type { Vessel } from '../vessel/vessel.js';

/** The boards of a head stand on end under the bung stave: they run towards it. */
const boardsRunTo = 0;

/** Azimuths from the middle of the first stave at which board joints of either head meet the groove, in `[0, 2 pi)`. */
export function headJoints({ heads }: Vessel): readonly number[] {
  const turn = 2 * Math.PI;
  const all = [heads.top, heads.bottom].flatMap((head) => {
    if (!head) return [];
    const widths = head.boards.map(({ from, to }) => to - from);
    return boardJointAzimuths(widths, 2 * head.rim.across, boardsRunTo);
  });
  const within = all.map((azimuth) => ((azimuth % turn) + turn) % turn);
  // two heads alike have their joints at the same places
  return within.filter(
    (angle, i) => within.findIndex((other) => Math.abs(other - angle) < 1e-9) === i,
  );
}
