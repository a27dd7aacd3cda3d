/** Sizing, dips, numbers and small errors in English. */
import type { Words } from './words.js';

export const tables: Pick<Words, 'sizing' | 'dip' | 'numbers' | 'slips'> = {
  sizing: {
    litres: 'It is to hold, litres',
    staveLength: 'With staves of this length (may stay empty)',
    keep: 'What stays',
    keeps: {
      proportions: 'the proportions: height and diameters change by one factor',
      heads: 'the heads, and the bilge or the rim: the height changes',
      height: 'the height: the diameters change by one factor',
    },
    notLitres: 'Write litres above 0, such as 225 or 37.5.',
    apply: 'Make it so',
    nearby: 'Round sizes near it',
    take: 'Take this',
    now: (litres) => `It holds ${litres} litres between the heads.`,
    found: (litres) => `With these changes it holds ${litres} litres:`,
    unreachable: (nearest) =>
      nearest === null
        ? 'No vessel can be made so.'
        : `This cannot be reached so: it comes no nearer than about ${nearest} litres, or what comes of it cannot be built.`,
  },
  dip: {
    posture: 'How it stands',
    postures: { lying: 'lying, bung upwards', standing: 'standing' },
    depth: (unit) => `Wet on the rod (${unit})`,
    holds: (litres) => `It holds ${litres} litres.`,
    tooDeep: (full) => `The rod gets wet from 0 to ${full}.`,
    table: 'Dips',
    headings: (unit) => [`wet, ${unit}`, 'litres', 'of the depth', 'old gauging rule, litres'],
    notForSale: 'For making and for the cellar, not for sale by measure.',
  },
  numbers: {
    whole: 'The whole, and one stave',
    capacity: 'Holds between the heads',
    recess: 'Grooves and bevels hold beside that',
    empty: 'Mass, empty',
    full: 'Mass, full of water',
    count: 'Staves',
    blank: 'Blank, thick',
    outerLength: 'Outer face, long',
    innerLength: 'Inner face, long',
    bilgeWidth: 'Width at the widest place',
    laidWidth: 'All staves laid edge to edge',
    endCut: 'End cut, top and bottom',
    gap: 'A single gauge leaves open at the ends',
    stretch: 'Outer face stretches',
    stations: 'Along the stave',
    stationHeadings: ['station', 'width', 'bevel', 'blank'],
    heads: 'Heads',
    headHeadings: ['head', 'diameter', 'radius of the groove', 'chime opens by'],
    hoops: 'Hoops',
    hoopHeadings: [
      'hoop',
      'cut length',
      'girth, near edge',
      'girth, far edge',
      'long edge longer by',
    ],
    ends: { top: 'top', bottom: 'bottom' },
  },
  slips: {
    about: 'What a small error of the bench, made on every piece, does to the finished vessel.',
    title: 'Small errors and what they do',
    headings: ['slip', 'joints open', 'diameter', 'girth', 'head looser by', 'litres'],
    names: {
      'bevels-steep': (size) => `every bevel ${size} too much`,
      'bevels-flat': (size) => `every bevel ${size} too little`,
      'staves-wide': (size) => `every stave ${size} too wide`,
      'one-stave-wide': (size) => `one stave ${size} too wide`,
      'groove-inset': (size) => `groove ${size} further in`,
      'groove-depth': (size) => `groove ${size} deeper`,
    },
    opens: (gap, where) => `${gap} ${where}`,
  },
};
