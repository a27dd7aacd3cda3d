/** The boards of a head, where they lie in the vessel. They run along `x`, towards the first stave. */
import type { Vessel } from '../../../index.js';
import { boardEdge, type BoardEdge } from './board-edge.js';
import { byHeight, rung, type ChainPlace } from './chain.js';
import { MeshMaker, type Mesh, type Place } from './mesh.js';

type Head = Vessel['heads']['bottom'];

/** Where a corner of the cut at a line lies in the vessel, on either hand of the board's middle. */
type Placing = (corner: ChainPlace, y: number, hand: 1 | -1) => Place;

/** One mesh a board, in the order of `head.boards`. The bottom head's are counted as seen from below. */
export function boardMeshes(head: Head): Mesh[] {
  const edge = boardEdge(head);
  const side = head.groove.towardsEnd;
  const place: Placing = ({ radius, height }, y, hand) => [
    hand * radius,
    side * y,
    head.insideFace + side * height,
  ];
  return head.boards.map(({ from, to }) => {
    const make = new MeshMaker();
    const lines = edge.lines(from, to);
    round(make, edge, lines, place);
    cornersRound(make, edge, lines, place);
    sawn(make, edge.at(from), from, place, 'lower');
    sawn(make, edge.at(to), to, place, 'upper');
    return make.made();
  });
}

/** Both faces and both ends. */
function round(make: MeshMaker, edge: BoardEdge, lines: readonly number[], place: Placing): void {
  const cuts = lines.map((y) => ({ y, corners: edge.at(y) }));
  const last = cuts[0]!.corners.length - 1;
  const patch = (to: (corners: ChainPlace[], y: number) => Place[]): void =>
    make.patch(cuts.map(({ corners, y }) => to(corners, y)));
  for (const [from, to] of edge.surfaces) {
    const end = (corners: ChainPlace[], y: number, hand: 1 | -1): Place[] =>
      corners.slice(from, to + 1).map((corner) => place(corner, y, hand));
    patch((corners, y) => end(corners, y, 1).reverse());
    patch((corners, y) => end(corners, y, -1));
  }
  patch((corners, y) => [place(corners[0]!, y, 1), place(corners[0]!, y, -1)]);
  patch((corners, y) => [place(corners[last]!, y, -1), place(corners[last]!, y, 1)]);
}

/** The lines that are seen: round the ends where one surface meets the next, and round the section at both joints. */
function cornersRound(
  make: MeshMaker,
  edge: BoardEdge,
  lines: readonly number[],
  place: Placing,
): void {
  const cuts = lines.map((y) => ({ y, corners: edge.at(y) }));
  const seen = [0, ...edge.surfaces.map(([, to]) => to)];
  for (const hand of [1, -1] as const) {
    for (const i of seen) {
      // beyond a corner's own circle nothing is left of it
      const there = cuts.filter((_, k) =>
        [k - 1, k, k + 1].some((n) => (cuts[n]?.corners[i]!.radius ?? 0) > 0),
      );
      make.edge(there.map(({ corners, y }) => place(corners[i]!, y, hand)));
    }
  }
  for (const { corners, y } of [cuts[0]!, cuts.at(-1)!]) {
    const right = corners.map((corner) => place(corner, y, 1));
    const left = corners.map((corner) => place(corner, y, -1));
    make.edge([...right, ...left.reverse(), right[0]!]);
  }
}

/** The joint along one side of the board. */
function sawn(
  make: MeshMaker,
  corners: readonly ChainPlace[],
  y: number,
  place: Placing,
  side: 'lower' | 'upper',
): void {
  const levels = byHeight(corners);
  const across = (level: ChainPlace[]): Place[] => [
    ...level.map((corner) => place(corner, y, -1)),
    ...level.toReversed().map((corner) => place(corner, y, 1)),
  ];
  for (let k = 0; k + 1 < levels.length; k++) {
    const below = across(rung(levels[k]!, 'above', -1));
    const above = across(rung(levels[k + 1]!, 'below', -1));
    if (side === 'lower') make.strip(below, above);
    else make.strip(above, below);
  }
}
