/** What the gauges and jigs say, in English. */

/** `Croze gauge`, or `Croze gauge, top` where the two ends differ. */
const ofEnd = (title: string, end: string | null): string => (end ? `${title}, ${end}` : title);

export const gaugeWords = {
  places: {
    bilge: 'at the bilge',
    ends: 'at the ends',
    top: 'at the top end',
    bottom: 'at the bottom end',
    all: 'along the whole stave',
  },
  square:
    'Hold it square to the stave’s face, not square to the vessel’s axis: near the ends the two differ.',
  hook: 'this edge on the stave end',
  held: 'held from inside',
  joint: {
    title: 'Joint gauge for staves of every width',
    plate: (place: string) => `joint ${place}`,
    held: 'round edge: outer face; arm: joint',
    card: (place: string) => `bevel ${place}`,
    stock: 'stock of the bevel on this edge',
    notes: {
      use: 'Set the inner corner of the gauge on the stave’s corner, its round edge across the outer face, its arm along the joint. No light may show along the arm. Try both joints.',
      round:
        'Use it on the backed face: there the joint stands square to the round, whatever the stave’s width.',
      flat: 'The outer face stays flat: the round edge rests on both corners of the face, with a gap at its middle.',
      ticks:
        'The ticks along the round edge are widths at the widest place: the stave’s other corner lies at the tick of its own width, here too.',
      card: 'For a flat face set a sliding bevel by the card: the stock on the lower edge, the blade along the line of the stave’s width. Then hold the stock on the outer face. The dash-dotted line is square.',
    },
    table: {
      title: 'Joint bevels',
      headings: (unit: string, places: readonly string[]) => [
        `width ${unit}`,
        ...places.flatMap((place) => [place, 'per 100']),
      ],
    },
  },
  backing: {
    title: 'Backing gauge, for rounding the outer face',
    plate: (place: string, radius: string) => `backing ${place}: radius ${radius}`,
    edge: 'this edge on the outer face, square across',
    notes: [
      'Back the outer face until the round edge lies on it from joint to joint without light.',
      'It is flatter near the ends than the vessel’s own circle there, because the face leans.',
    ],
  },
  hollowing: {
    title: 'Hollowing gauge, for the inner face',
    plate: (place: string, radius: string) => `hollowing ${place}: radius ${radius}`,
    edge: 'this edge in the hollow, square across',
    notes: {
      use: 'Hollow the inner face until the round edge lies in it without light, from joint to joint or as far as the gauge reaches.',
      depth: (thickness: string) =>
        `Leave ${thickness} of wood at the middle of the bilge; check with calipers, the gauge cannot tell the depth.`,
    },
  },
  sweep: {
    title: 'Bilge sweep, outside and inside',
    outside: 'outside sweep',
    inside: 'inside sweep',
    outsideHeld: 'curved edge along the outer face',
    insideHeld: 'curved edge along the inner face',
    stave: 'stave',
    hoop: (name: string, distance: string) => `${name} hoop, edge, ${distance}`,
    chime: (distance: string) => `chime bevel’s foot, ${distance}`,
    groove: (distance: string) => `groove lip, ${distance}`,
    howel: (distance: string) => `howel’s edge, ${distance}`,
    notes: {
      use: 'Cut both plates out. Hold the outside sweep along the middle of a stave’s outer face, the inside sweep along the middle of its inner face, both upright, in a plane through the vessel’s axis.',
      bend: 'After bending and cooling no light may show anywhere. Outside, light at the bilge means bent too little, light at the ends bent too much; inside it is the other way round. Put it right before the groove is cut.',
      straight:
        'The stave of a tub stays straight: both edges are straight too, and check wind and hollow.',
      ends: 'The plates are as long as the vessel is high: their ends are the end planes.',
      marks:
        'Lines across are heights in the vessel: hoop edges outside; chime, groove and howel inside. The figures are distances from the end, along the axis.',
    },
  },
  listing: {
    title: 'Listing jig: fences for tapered staves',
    blade: 'blade along this edge; the marks are the end planes in the first and the second cut',
    first: 'fence, first cut: raw edge on it',
    second: 'fence, second cut: first cut on it',
    firstAway: (distance: string) => `first cut: ${distance} from the blade`,
    secondAway: (distance: string) => `second cut: ${distance} from the blade`,
    ends: (first: string, second: string) => `${first} first, ${second} second`,
    notes: {
      tilt: (angle: string) =>
        `Tilt the blade ${angle} over the carriage and saw its edge true with it: that edge is the blade’s line. The stave lies with its outer face, the wider one, on the bed.`,
      first: (width: string) =>
        `First cut: a straight raw edge, parallel to the grain, against the fence. The blank is at least ${width} wide.`,
      second:
        'Second cut: move the fence to its other line and turn the stave end for end, its outer face still on the bed: now the first cut lies against the fence.',
      taper: (angle: string, per100: string) =>
        `Each edge runs ${angle} (${per100} per 100) off the stave’s middle line; the second fence stands at twice that to the blade, the other way.`,
      width: (width: string) =>
        `Drawn for a stave ${width} wide at the wider end. For other widths move the fence as the table says, at both ends of a carriage of this length.`,
    },
    table: {
      title: 'Fence from the blade, at both ends of the carriage',
      headings: (unit: string) => [
        `width ${unit}`,
        'taper',
        'blade',
        `first, bottom ${unit}`,
        `first, top ${unit}`,
        `second, bottom ${unit}`,
        `second, top ${unit}`,
      ],
    },
  },
  croze: {
    plate: (end: string | null) => (end ? `croze, ${end}` : 'croze'),
    title: (end: string | null) => ofEnd('Croze gauge', end),
    groove: (width: string, depth: string) => `groove ${width} wide, ${depth} deep from the howel`,
    howel: (depth: string) => `howel, ${depth} deep`,
    foot: 'the howel ends here',
    notes: {
      hold: 'Hold the plate inside the vessel on a line towards its axis, the hook on the trimmed end and flush with the outside, the tongue in the groove.',
      light:
        'Right is: hook, howel above and below the groove, and tongue all touch. A hook that stands off: groove too near the end. A tongue that does not enter: too far from it, or too narrow. A body that stands off: groove too shallow.',
      compass: (radius: string) =>
        `The groove’s bottom lies ${radius} from the axis: the compass check has the last word.`,
      wear: 'Make it of hard wood or sheet: the tongue is as wide as the groove, and paper wears.',
    },
  },
  chime: {
    plate: (end: string | null) => (end ? `chime, ${end}` : 'chime'),
    title: (end: string | null) => ofEnd('Chime gauge', end),
    flat: (flat: string) => `flat, ${flat} left of the end`,
    bevel: (angle: string, per100: string) => `bevel ${angle} from the end, ${per100} per 100`,
    howel: 'howel',
    notes: {
      hold: 'Hold the plate inside the vessel on a line towards its axis, the hook on the trimmed end and flush with the outside.',
      light:
        'Right is: hook, bevel and howel all touch. Light along the bevel: chime cut too deep; a hook that stands off: not deep enough.',
      order: 'Check the chime before the groove is cut: the croze runs on it.',
    },
  },
};
