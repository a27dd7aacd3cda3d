/** What the compass card and the dowel jig say, in English. */

export const jigWords = {
  compass: {
    title: { both: 'Compass card', top: 'Compass card, top', bottom: 'Compass card, bottom' },
    point: 'one leg here',
    zero: (radius: string) => `other leg on 0: ${radius}, the groove’s radius`,
    wide: (degrees: string) => `1 % too wide: six steps overrun by ${degrees}`,
    notes: {
      use: (radius: string) =>
        `Lay the compass on the card, one leg on the cross, the other on the line 0: it is open to ${radius}, from the axis to the groove’s bottom.`,
      step: 'Step round in the groove’s bottom, lightly, point after point on one line. Six steps end where they began.',
      scale: (unit: string) =>
        `The scale beside 0 says how much wider or narrower the compass is set, in ${unit}.`,
      miss: 'If the sixth step runs past the first point, the groove is smaller than drawn; if it ends short, it is larger. Measure the miss along the groove and find it in the table.',
      head: 'Make the head to the groove that is there. Print the card at actual size, and measure its square first.',
    },
    table: {
      title: 'What a miss means',
      headings: (unit: string) => [
        'sixth step',
        `misses by ${unit}`,
        `groove’s radius ${unit}`,
        `head’s diameter ${unit}`,
      ],
      past: 'runs past',
      short: 'ends short',
      meets: 'meets',
    },
  },
  dowel: {
    title: {
      both: 'Dowel jig for all joints of a head',
      top: 'Dowel jig for all joints of the top head',
      bottom: 'Dowel jig for all joints of the bottom',
    },
    hole: (joints: string, x: string) => `joint ${joints}: ${x}`,
    outer: 'this edge flush with the outside face',
    inner: 'inside face of the boards',
    middle: 'middle of the boards',
    notes: {
      hold: 'Clamp the guide on the joint of a board, its middle line on the middle of the head, its marked edge flush with the face that will be outside. Both boards of a joint are drilled so, and their holes meet.',
      middle:
        'Lay the boards together as in the head, middles level, and strike the middle line across all of them first; number the joints from the lowest.',
      which:
        'Drill only the holes that carry the joint’s number. The places are alike on both sides of the middle: the guide may be turned end for end.',
      rows: 'There are several guides, because holes of these joints would run into each other in one.',
      depth: (diameter: string, depth: string) =>
        `Drill ${diameter} wide and ${depth} deep, square to the joint; set a stop on the drill.`,
      make: (thickness: string) =>
        `Make the guide of hard wood or steel ${thickness} thick or more, so that it leads the drill; a strip screwed along the marked edge finds the face.`,
      caution:
        'Clamp board and guide before you drill, keep hands out of the drill’s line, and follow the maker’s instructions and local rules.',
    },
    table: {
      title: 'Holes of each joint',
      headings: (unit: string) => ['joint', `from the middle ${unit}`],
    },
  },
};
