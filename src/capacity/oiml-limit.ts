/** What a wooden cask that is sold by measure may be off: shown beside a capacity, for information. */

/** OIML R 138:2007, wooden casks: 1.0 % either way, at least 0.15 l. */
export function oimlLimitLitres(litres: number): number {
  return Math.max(0.15, 0.01 * litres);
}
