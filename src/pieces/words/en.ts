/** Every word on a drawing, in English. Another language is another file of the same shape. */
import { asWritten } from '../../language.js';
import { dipWords } from './dip.en.js';
import { gaugeWords } from './gauges.en.js';
import { hoopWords } from './hoops.en.js';
import { jigWords } from './jigs.en.js';
import { routerWords } from './router.en.js';
import { sectionWords } from './section.en.js';
import { settingWords } from './setting.en.js';

export const en = {
  /** what is done to every text before it is drawn */
  typeset: asWritten,
  /** a hoop by the name that the spec gives it: in tables, which have a column of hoops, and in titles */
  hoopName: (name: string) => name,
  ends: { top: 'top', bottom: 'bottom' },
  outerFace: 'outer face',
  grain: 'grain',
  joint: 'joint',
  perHundred: 'per 100',
  unitNames: { mm: 'mm', in: 'in' },
  caution: {
    machines:
      'Jointer, saw and router: guards on, push blocks, ears, eyes and dust looked after; follow the maker’s instructions and local rules.',
    fire: 'Fire inside a cask: outdoors or under a hood, water at hand, gloves; staves are under tension and hot. Follow local fire rules.',
  },
  stave: {
    title: (count: number) => `Stave, ${count} in the ring`,
    backedTitle: 'Stave outline on the backed face',
    mixedTitle: (number: number, count: number, width: string) =>
      `Stave ${number} of ${count}, ${width} wide`,
    marked: (title: string, mark: string) => `${title}, mark ${mark}`,
    station: (s: string, width: string, bevel: string, thickness: string) =>
      `${s}: ${width} · ${bevel} · ${thickness}`,
    outerEnd: (end: string) => `${end} end, outer face`,
    innerEnd: (end: string, angle: string) => `${end} end, inner, ${angle}`,
    cutEnd: (end: string, angle: string) => `${end} end, cut ${angle}`,
    blankEnd: (trim: string) => `blank end, trim ${trim}`,
    groove: 'groove lip, inner',
    howel: 'howel edge, inner',
    hoopEdge: (name: string) => `${name} hoop`,
    notes: {
      closes: (count: number, diameter: string) =>
        `${count} staves like this one close at an outside diameter of ${diameter} at the widest place.`,
      closesMixed: (count: number, diameter: string) =>
        `One of ${count} staves of uneven width that close together at an outside diameter of ${diameter}.`,
      faces: (thickness: string) =>
        `The outer face is towards you. Dashed: the inner face of the flat blank, ${thickness} below it. The top end is on the right.`,
      key: 'Above each station: its distance from the middle, width of the outer face, joint bevel, thickness of the blank. Below: hoop edges on the outer face; groove, howel and end planes on the face that is named.',
      bevel: (bilge: string, bilgeSlope: string, end: string, endSlope: string) =>
        `Joint bevel from square to the face: ${bilge} at the widest place (${bilgeSlope} per 100), ${end} at the end (${endSlope} per 100).`,
      fixedBevel: (gap: string) =>
        `The bevel changes along the stave: one gauge set at the widest place leaves ${gap} open per joint at the end, on the inside.`,
      evenBevel: (angle: string, slope: string) =>
        `Joint bevel from square to the face: ${angle} (${slope} per 100), the same along the whole stave.`,
      blade: (tilt: string) => `A saw blade that is set square to the stave’s edge tilts ${tilt}.`,
      endCut: (end: string, angle: string, longer: string) =>
        `End cut, ${end}: ${angle} from square; the inner face is ${longer} than the outer.`,
      longer: (by: string) => `${by} longer`,
      shorter: (by: string) => `${by} shorter`,
      overlong: (trim: string) =>
        `Both faces run ${trim} past the longer end and are sawn square; trim to the end planes after bending.`,
      squareEnd: (end: string) => `End cut, ${end}: square.`,
      routerLength: (end: string, add: string) =>
        `For a router: “outline” is the outer face, and the inner face is longer at the ${end}. Add ${add} there before routing, or the end cut has no wood.`,
      routerEdges:
        'A router cuts “outline” square: the bevel needs the work turned, a tilting cutter, or a plane afterwards.',
      hollow: (t: string) =>
        `Hollow the inner face to a thickness of ${t} at the middle; the joints keep the blank’s full thickness where the vessel is widest.`,
      flatInside: 'The inner face stays flat.',
      rounded: 'Round the outer face to the vessel’s circle after jointing.',
      flatOutside: 'The outer face stays flat.',
      grain: 'The grain runs along the stave, without run-out.',
      bung: (diameter: string) =>
        `On the bung stave only: bung hole of ${diameter}, its middle at station 0.`,
      backed:
        'The outline on this sheet lies on the backed face: its width is measured along the round.',
    },
    table: {
      title: 'Stations',
      headings: (unit: string) => [
        `station ${unit}`,
        `height ${unit}`,
        `width ${unit}`,
        'bevel',
        'per 100',
        `blank ${unit}`,
      ],
    },
  },
  fan: {
    title: 'Stave fan for uneven widths',
    label: (width: string, bevel: string, thickness: string) =>
      `${width} wide · ${bevel} · blank ${thickness}`,
    notes: {
      use: 'Each pair of lines is the outer face of one width at the widest place. Lay the blank’s middle on the centre line, find its width, mark that pair.',
      cut: 'Only the widest is drawn as an outline; the others are lines to mark along.',
      why: 'All widths of one stave shrink together, so one pattern serves every width on the rack.',
    },
    table: {
      title: 'Widths',
      headings: (unit: string) => [
        `width ${unit}`,
        `at the ends ${unit}`,
        'bevel',
        'bevel at ends',
        `blank ${unit}`,
      ],
    },
  },
  head: {
    title: { both: 'Head', top: 'Top head', bottom: 'Bottom' },
    boardTitle: (title: string, number: number, count: number) =>
      `${title}, board ${number} of ${count}`,
    cant: 'cant',
    board: (number: number, width: string, length: string) =>
      `board ${number}: ${width} × ${length}`,
    diameter: (text: string) => `⌀ ${text}`,
    acrossDiameter: (text: string) => `across the boards ${text}`,
    outerBevel: 'outer bevel ends on this face',
    innerBevel: 'inner bevel ends on the far face',
    land: 'land ends',
    dowel: (diameter: string, length: string) => `dowel ${diameter} × ${length}, at mid-thickness`,
    compass: 'compass point',
    notes: {
      seen: 'Seen from outside. The rim is the outline; board joints run along the grain.',
      groove: (radius: string) =>
        `Set a compass to ${radius}, the radius of the groove’s bottom: it steps round the groove exactly six times.`,
      edge: (land: string, depth: string, outer: string, inner: string) =>
        `Edge: a land ${land} thick and ${depth} deep at the rim, then bevels, ${outer} wide outside and ${inner} inside, measured from the rim.`,
      land: (fromInside: string, thickness: string) =>
        `The land’s middle lies ${fromInside} from the inside face of a head ${thickness} thick.`,
      opening: (radius: string, girth: string) =>
        `To let the head in, the chime must open by ${radius} in radius, ${girth} in girth: take off the hoops of that end down to the quarter.`,
      allowance: (allowance: string) =>
        `Lengths of boards are their longest chord and ${allowance} over; widths are finished.`,
      crossGrain: (allowance: string) =>
        `Across the boards the head is ${allowance} larger than along them, for swelling.`,
      blanks:
        'Flagging may be laid in the joints; no glue touches what is to be drunk unless local food rules allow it.',
    },
    boardNotes: {
      seen: 'Seen from outside, as in the head: the upper edge is towards the higher number. The grain runs along the board.',
      blank: 'The narrow lines beyond the outline are the ends of the blank to saw first.',
      dowels: (diameter: string, depth: string) =>
        `Dowel holes: ${diameter} wide, ${depth} deep into this board, at mid-thickness, square to the joint.`,
    },
    boards: {
      title: 'Boards',
      headings: (unit: string) => ['board', `width ${unit}`, `cut length ${unit}`, `chord ${unit}`],
    },
    dowels: {
      title: 'Dowels',
      headings: (unit: string) => ['joint', `from the middle, along the joint ${unit}`],
    },
  },
  edge: {
    title: 'Head edge in its groove',
    titleOf: (head: string) => `${head}: edge in its groove`,
    groove: (width: string, depth: string) => `groove ${width} wide, ${depth} deep from the howel`,
    howel: (depth: string) => `howel ${depth} deep`,
    chime: (bevel: string, flat: string) => `chime bevel ${bevel} from the end, flat ${flat}`,
    land: (thickness: string, depth: string, fromInside: string) =>
      `land ${thickness} × ${depth}, its middle ${fromInside} from the inside face`,
    outerBevel: (width: string) => `outer bevel ${width} wide from the rim`,
    innerBevel: (width: string) => `inner bevel ${width} wide from the rim`,
    notes: {
      section:
        'A section along the vessel’s axis, full size, at the middle of a stave. The end plane is square to the axis.',
      order:
        'Chime bevel first, then the howel round, then the groove; its depth is measured square to the axis from the howel.',
      compass: (radius: string) => `The groove’s bottom lies ${radius} from the axis.`,
      clear: 'The land enters the groove and is home before any other wood touches.',
      tools:
        'Croze and howel are driven towards the work: hold the cask fast and keep both hands behind the edge.',
    },
  },
  hoops: hoopWords,
  gauges: gaugeWords,
  dip: dipWords,
  jigs: jigWords,
  section: sectionWords,
  setting: settingWords,
  router: routerWords,
  endGauge: {
    title: 'Gauge for bevels and end cuts',
    joint: (place: string, angle: string, slope: string) =>
      `joint bevel ${place}: ${angle}, ${slope} per 100`,
    endCut: (end: string, angle: string, slope: string) =>
      `end cut ${end}: ${angle}, ${slope} per 100`,
    widest: 'at the bilge',
    even: 'along the whole stave',
    atEnd: (end: string) => `at the ${end}`,
    atEnds: 'at the ends',
    bothEnds: 'both ends',
    face: 'this edge lies on the outer face',
    wood: 'stave, outer face up',
    notes: {
      use: 'Cut out each gauge. Its foot lies on the outer face, square across for a joint, lengthwise for an end cut; no light may show along the arm.',
      set: 'Or set a sliding bevel to the corner.',
      blade: (tilt: string) =>
        `A saw that is set square to the stave’s edge tilts ${tilt} instead.`,
    },
  },
};
