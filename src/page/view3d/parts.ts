/** The vessel as the bodies that it is made of. Pure: what shows them is elsewhere. */
import { cutStave, type Vessel } from '../../index.js';
import { boardMeshes } from './mesh/board-mesh.js';
import { hoopMesh } from './mesh/hoop-mesh.js';
import type { Mesh } from './mesh/mesh.js';
import { staveMaker } from './mesh/stave-mesh.js';

type End = 'top' | 'bottom';

/** Which body is meant: counted from 0, staves in setting order, boards as `head.boards`, hoops from the top downwards. */
export type PartId =
  | { readonly kind: 'stave'; readonly index: number }
  | { readonly kind: 'board'; readonly end: End; readonly index: number }
  | { readonly kind: 'hoop'; readonly index: number };

export interface Part {
  readonly id: PartId;
  readonly mesh: Mesh;
  /** about the axis, radians, anticlockwise seen from the top; what the mesh is to be turned by */
  readonly azimuth: number;
}

/** Staves stand clockwise as seen from the top end, the middle of the first at azimuth 0. Equal ones share a mesh. */
export function partsOf(vessel: Vessel): Part[] {
  return [...staveParts(vessel), ...boardParts(vessel), ...hoopParts(vessel)];
}

function staveParts(vessel: Vessel): Part[] {
  const make = staveMaker(vessel);
  const known = new Map<number, Mesh>();
  const bungStave = bungStaveOf(vessel);
  let azimuth = vessel.staves[0]!.alpha;
  return vessel.staves.map((stave, index) => {
    const takesBung = index === bungStave;
    const mesh = (takesBung ? null : known.get(stave.alpha)) ?? make(stave.alpha, takesBung);
    if (!takesBung) known.set(stave.alpha, mesh);
    const middle = azimuth - stave.alpha;
    azimuth -= 2 * stave.alpha;
    return { id: { kind: 'stave', index }, mesh, azimuth: middle };
  });
}

/** The stave that takes the bung, the first of the widest; null where there is no bung. */
export function bungStaveOf(vessel: Vessel): number | null {
  return vessel.spec.bung ? cutStave(vessel) : null;
}

function boardParts({ heads }: Vessel): Part[] {
  return (['top', 'bottom'] as const).flatMap((end) => {
    const head = heads[end];
    if (!head) return [];
    const idOf = (index: number): PartId => ({ kind: 'board', end, index });
    return boardMeshes(head).map((mesh, index) => ({ id: idOf(index), mesh, azimuth: 0 }));
  });
}

function hoopParts(vessel: Vessel): Part[] {
  return vessel.hoops.map((hoop, index) => ({
    id: { kind: 'hoop', index },
    mesh: hoopMesh(vessel, hoop),
    azimuth: 0,
  }));
}

/** One body from another, and the name of it in the page. */
export function keyOfPart(id: PartId): string {
  return id.kind === 'board' ? `board-${id.end}-${id.index}` : `${id.kind}-${id.index}`;
}
