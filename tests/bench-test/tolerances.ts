/** What the bench allows, mm unless said otherwise. */

export const tolerance = {
  /** drawn edge against the exact edge, square to it */
  edge: 0.01,
  /** one joint, both staves counted, anywhere */
  joint: 0.02,
  /** length between end cuts, and the height of the finished ends */
  end: 0.01,
  /** diameter and roundness of a head against its groove */
  head: 0.01,
  /** share of the capacity */
  capacity: 0.001,
  /** numbers in `figures`, mm: they are computed, not drawn */
  figure: 0.002,
  /** numbers in `figures`, degrees and percent */
  angle: 0.001,
} as const;
