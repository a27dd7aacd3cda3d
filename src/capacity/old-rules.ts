/**
 * The gauger's rules for a part-filled cask (Rules and tables for gauging, The Builder-Mechanic, 19th century). They take the
 * wet share of the depth and give the share of the capacity; both are meant for casks near half full, and leave the range from
 * empty to full well before either end.
 */

/** Lying: of the bung diameter; a quarter of what is wanting to half is taken off. 15 of 32 in makes 0.4609375. */
export function lyingRule(wetShare: number): number {
  return wetShare - (0.5 - wetShare) / 4;
}

/** Standing: of the length between the heads; a tenth in place of a quarter. 21 of 40 in makes 0.5275. */
export function standingRule(wetShare: number): number {
  return wetShare - (0.5 - wetShare) / 10;
}
