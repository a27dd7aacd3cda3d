/** Where the joints of head boards meet the groove, seen as azimuths round the ring. */

/**
 * Azimuths (radians) of both ends of every joint between boards `widths` wide, laid side by side across a head
 * of this diameter. `turn` is the azimuth towards which the boards run: 0 for boards that stand on end under the
 * bung stave, pi/2 for boards that lie level.
 */
export function boardJointAzimuths(
  widths: readonly number[],
  diameter: number,
  turn: number,
): readonly number[] {
  const total = widths.reduce((sum, width) => sum + width, 0);
  const azimuths: number[] = [];
  let across = -total / 2;
  for (const width of widths.slice(0, -1)) {
    across += width;
    const off = Math.asin(Math.max(-1, Math.min(1, (2 * across) / diameter)));
    azimuths.push(turn + off, turn + Math.PI - off);
  }
  return azimuths;
}
