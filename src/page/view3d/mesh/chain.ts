/** A line in the half-plane through the axis, from below upwards, that may step in or out at a height. */

export interface ChainPlace {
  readonly height: number;
  /** distance from the axis */
  readonly radius: number;
}

/** The places at each height, lowest first. */
export function byHeight<T extends ChainPlace>(chain: readonly T[]): T[][] {
  const levels: T[][] = [];
  for (const place of chain) {
    const level = levels.at(-1);
    if (level?.[0]?.height === place.height) level.push(place);
    else levels.push([place]);
  }
  return levels;
}

/**
 * What a cut through solid stuff shows at a height where its boundary steps: the boundary of the band above or below, and
 * the corners further on in the solid, that the two bands share. Sorted from the boundary into the solid, which lies where
 * `inwards` says: towards greater radii (1) or smaller ones (-1).
 */
export function rung<T extends ChainPlace>(
  level: readonly T[],
  band: 'above' | 'below',
  inwards: 1 | -1,
): T[] {
  const edge = band === 'above' ? level.at(-1)! : level[0]!;
  const further = level.filter(({ radius }) => (radius - edge.radius) * inwards > 0);
  const sorted = further.sort((a, b) => (a.radius - b.radius) * inwards);
  return [edge, ...sorted.filter(({ radius }, i) => radius !== sorted[i - 1]?.radius)];
}
