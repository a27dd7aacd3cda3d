/**
 * Where the bodies go when the vessel is taken apart along its axis: staves stay, and beyond either end follow its head, then
 * its hoops, those that come off first furthest out.
 */
import type { Vessel } from '../../index.js';
import type { PartId } from './parts.js';

type End = 'top' | 'bottom';

/** Room between bodies, as a share of the height. */
const room = 0.11;

/** How far a body is moved along the axis, mm, upwards positive, when `share` (0 to 1) of the way is gone. */
export function shiftOf(vessel: Vessel, id: PartId, share: number): number {
  if (id.kind === 'stave') return 0;
  const end = id.kind === 'board' ? id.end : vessel.hoops[id.index]!.end;
  const side = end === 'top' ? 1 : -1;
  const place = side * (vessel.spec.height / 2 + room * vessel.spec.height * rankOf(vessel, id));
  return share * (place - middleOf(vessel, id, end));
}

/** Half the length of the vessel with its bodies moved, mm. */
export function halfLength(vessel: Vessel, share: number): number {
  const { spec, hoops } = vessel;
  const ranks = (['top', 'bottom'] as const).map(
    (end) => hoops.filter((hoop) => hoop.end === end).length + (vessel.heads[end] ? 1 : 0),
  );
  return spec.height * (0.5 + share * room * (Math.max(...ranks) + 0.5));
}

/** 1 for the body nearest to the staves. */
function rankOf(vessel: Vessel, id: PartId): number {
  if (id.kind !== 'hoop') return 1;
  const own = vessel.hoops[id.index]!;
  const offEarlier = vessel.hoops.filter(
    ({ end, spec }) => end === own.end && spec.offset > own.spec.offset,
  );
  return offEarlier.length + (vessel.heads[own.end] ? 2 : 1);
}

function middleOf({ heads, hoops }: Vessel, id: PartId, end: End): number {
  if (id.kind === 'hoop') return (hoops[id.index]!.nearHeight + hoops[id.index]!.farHeight) / 2;
  const head = heads[end]!;
  return (head.insideFace + head.outsideFace) / 2;
}
