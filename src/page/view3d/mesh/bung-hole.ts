/** The bung hole: a round hole through the bung stave, its axis square to the vessel's at mid-height. */
import type { Vessel } from '../../../index.js';
import type { MeshMaker, Place } from './mesh.js';
import type { InsidePlace } from './stave-inside.js';

const facets = 48;
/** So much of the radius, at least, is whole above, below and beside the hole; a wider hole is not shown. */
const rest = 0.04;

export interface BungHole {
  readonly radius: number;
  /** round the hole on one face, of which `radiusAt` tells how far out it is at each height */
  readonly ring: (radiusAt: (height: number) => number, isRound: boolean) => Place[];
}

/** Null for a vessel without one. */
export function bungHoleOf({ spec }: Vessel): BungHole | null {
  if (!spec.bung) return null;
  const radius = spec.bung.diameter / 2;
  return {
    radius,
    ring: (radiusAt, isRound) =>
      Array.from({ length: facets }, (_, i): Place => {
        const turn = (i / facets) * 2 * Math.PI;
        const [y, z] = [radius * Math.cos(turn), radius * Math.sin(turn)];
        const out = radiusAt(z);
        return [isRound ? Math.sqrt(out ** 2 - y ** 2) : out, y, z];
      }),
  };
}

/** Whether a face of this half-angle has room beside the hole, which lies between these rows; and the rows. */
export function roomFor(
  { radius }: BungHole,
  face: readonly InsidePlace[],
  alpha: number,
): readonly [low: number, high: number] | null {
  const least = radius * (1 + rest);
  const low = face.findLastIndex(({ height }) => height <= -least);
  const high = face.findIndex(({ height }) => height >= least);
  if (low < 0 || high < 0) return null;
  const halfWidth = ({ radius: out, isRound }: InsidePlace): number =>
    out * (isRound ? Math.sin(alpha) : Math.tan(alpha));
  const isWide = face.slice(low, high + 1).every((place) => halfWidth(place) >= least);
  return isWide ? [low, high] : null;
}

/** The wall of the hole, from face to face. */
export function boreWall(
  make: MeshMaker,
  outside: readonly Place[],
  inside: readonly Place[],
): void {
  make.edgedPatch([outside, inside].map((ring) => [...ring, ring[0]!]));
}
