/** What is wrong with a command line of `match`; it is said in English, as of every command. */
import type { RequestCode } from '../index.js';

export const requestFaults: Readonly<
  Record<RequestCode, (found: string, allowed: string) => string>
> = {
  diameter: (found) => `the spec's diameter of ${found} cannot be closed`,
  vessels: (found) => `--vessels: ${found} is no number of vessels`,
  'count-whole': (found) => `--count: ${found} is no whole number`,
  'count-few': (found, allowed) => `--count: ${found} is not within ${allowed}`,
  'count-order': (found) => `--count: ${found} has the larger number first`,
  tolerance: (found, allowed) => `--tolerance: ${found} mm is not within ${allowed} mm`,
  plane: (found, allowed) => `--plane: ${found} mm is not within ${allowed} mm`,
  bung: (found, allowed) => `--bung: ${found} mm is not ${allowed} mm`,
  'standing-unknown': (found) => `--standing: the rack has no stave "${found}"`,
  'standing-doubled': (found) => `--standing: "${found}" is there twice`,
  'standing-many': (found, allowed) =>
    `--standing: ${found} staves are more than a set may have, ${allowed}`,
};

export const swapFaults = {
  noRing:
    '--swap: say which staves stand, all of them, with --standing; or give the spec of a set, whose staves go by their numbers',
  unknown: (mark: string) => `--swap: no stave "${mark}" stands in the ring`,
  open: '--swap: the staves that stand do not make a ring; name all of them with --standing',
  noFiles: '--swap writes no files: leave out --out',
};
