/** What the proof allows, by name. Millimetres unless the name says otherwise. */

export const tolerance = {
  /** one joint, both staves counted, at any station and depth */
  joint: 0.02,
  /** a drawn edge against the exact one, square to it */
  outline: 0.01,
  /** where a drawn end or line lies, on the blank or after bending */
  place: 0.01,
  /** radius and roundness of a head, and its diameter against its groove */
  head: 0.01,
  /** lengths of straps, which are drawn with straight lines or two arcs */
  strap: 0.02,
  /** share of the capacity */
  capacityShare: 0.001,
  /** a contour is closed when its ends are nearer than a file's last decimal */
  closed: 0.0001,
  /** two lines that lie nearer together than this are one line, drawn twice */
  doubled: 0.002,
  /** and run together for longer than this */
  doubledLength: 0.05,
} as const;

/** What a file may hold before it is no drawing of a vessel's part. */
export const limits = {
  /** lines and arcs, lettering left out */
  segments: 20_000,
  /** the least and the greatest height of lettering, ISO 3098 with some room for rounding */
  leastLettering: 1.7,
  greatestLettering: 21,
  /** a piece is drawn at another scale when it is this many times too large or too small */
  scale: 2,
} as const;
