/** What the plan and checklist of a chosen set say, in English. */

export const settingWords = {
  title: (set: number) => `Set ${set}: the ring from above, in setting order`,
  /** of the vessel that a set makes, in its spec */
  vesselTitle: (title: string, set: number) => `${title}, set ${set}`,
  bung: 'bung',
  label: (mark: string, width: string) => `${mark} · ${width}`,
  diameter: (size: string) => `⌀ ${size}`,
  staves: (count: number) => `${count} staves`,
  notes: {
    picture: (scale: string) =>
      `A picture at ${scale}, cut at the widest place. Take sizes from its figures, never by measuring it.`,
    order: (first: string) =>
      `Set the staves up in the order of their numbers, ${first} first, clockwise as seen from the top end.`,
    bungStave: (mark: string) => `the bung stave ${mark}`,
    firstStave: (mark: string) => `stave ${mark}`,
    closes: (diameter: string, off: string, sure: string) =>
      `The ring closes at an outside diameter of ${diameter} at the widest place, ${off}, sure to ${sure} (one standard deviation, from the step the widths were read to).`,
    wider: (by: string) => `${by} above the spec`,
    narrower: (by: string) => `${by} below the spec`,
    exact: 'as in the spec',
    bench: (laid: string) =>
      `Lay the staves edge to edge on the bench, faces flat, after planing: the running total must come out as listed, ${laid} in all. A slip shows at the first stave that differs.`,
    asMarked: 'No width needs planing.',
    plane: (count: string, most: string) =>
      `Plane ${count} before jointing, ${most} together; the list says which and by how much.`,
    planeCount: (count: number) => (count === 1 ? 'one stave' : `${count} staves`),
    cureLarge: (takeOut: string, putIn: string, by: string) =>
      `Spare at hand: if the ring closes large, take out ${takeOut} and put in ${putIn}; the diameter falls by ${by}.`,
    cureSmall: (takeOut: string, putIn: string, by: string) =>
      `Spare at hand: if the ring closes small, take out ${takeOut} and put in ${putIn}; the diameter grows by ${by}.`,
    measure: (measure: string, joints: string, balance: string, pairs: number, inLine: string) =>
      `Order round the ring, ${measure} in all, lower is better: joints stray ${joints} from even ones; widths lean to one side by ${balance}; ${pairs} pairs of the narrowest side by side; joints in line with joints of the head: ${inLine}.`,
    headJoints:
      'Short lines outside the ring: where joints of the head boards meet the groove, if the boards run towards the first stave.',
    flat: (step: string) =>
      `Faces stay flat: unlike neighbours leave a step at their joint, here of ${step} at most.`,
    caution:
      'Staves not yet held can fall: work with a helper or a second hoop, and keep fingers out of the joints when the hoop is driven.',
  },
  checklist: {
    title: 'Checklist for the rack and the bench',
    headings: (unit: string) => [
      'place',
      'mark',
      `width ${unit}`,
      `plane off ${unit}`,
      `laid so far ${unit}`,
      'taken',
      'set',
    ],
  },
};
