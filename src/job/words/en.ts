/** The job sheet in English. */
import type { JobWords } from './job-words.js';

export const en: JobWords = {
  language: 'en',
  title: 'Job sheet',
  ends: { top: 'top', bottom: 'bottom' },
  atEnd: (end, text) => `${end}: ${text}`,
  numbers: {
    heading: (unit) => `The vessel, all lengths in ${unit === 'mm' ? 'mm' : 'inches'}`,
    capacity: 'capacity',
    height: 'height',
    bilge: '⌀ outside, bilge',
    ends: '⌀ outside, ends',
    top: '⌀ outside, top',
    bottom: '⌀ outside, bottom',
    wall: 'wall',
    staves: 'staves',
    empty: 'mass, empty',
    full: 'mass, full of water',
  },
  list: {
    title: 'Cut list, widths when jointed',
    headings: ['piece', 'count', 'length', 'width', 'thick'],
    stave: 'stave blank, with spares',
    heads: { both: 'head', top: 'top head', bottom: 'bottom' },
    boards: (head, numbers) => `${head}: board ${numbers}`,
    dowels: (head) => `${head}: dowels`,
    strap: (hoop, end) => `strap, ${hoop} hoop${end === '' ? '' : `, ${end}`}`,
  },
  steps: {
    heading: 'Order of work: tick when done, write what you measure beside its aim',
    wood: {
      title: 'Billets',
      text: (bolt, count, width, thickness) =>
        `From bolts ${bolt} long split ${count} radially, green ${width}\u00a0×\u00a0${thickness}; air-dry.`,
      caution: 'Wedges, froe: eyes covered, feet clear.',
    },
    plane: {
      title: 'Plane the blanks',
      text: (length) => `Saw square to ${length}, plane flat. Stick the labels on.`,
      thickness: 'thickness',
      caution: 'Saw, planer: guards, push blocks, ears, eyes, dust; maker’s rules.',
    },
    joint: {
      title: 'Joint',
      cask: (bilge, ends, bilgeBevel, endBevel) =>
        `Bilge ${bilge} wide, bevel ${bilgeBevel}; ends ${ends} wide, bevel ${endBevel}.`,
      tub: (top, bottom, bevel, tilt) =>
        `Top ${top} wide, bottom ${bottom}; bevel ${bevel}, saw square to the edge ${tilt}.`,
      mixed: 'Each stave to the width on its label; bevels by the joint gauge.',
      before: 'girth before jointing',
      laid: 'laid width on the bench',
      caution: 'Jointer: push block, hands behind the cutter.',
    },
    hollow: {
      title: 'Hollow inside',
      text: (radius) => `Radius ${radius} at the widest place; joints keep their thickness.`,
      thickness: 'left at the middle',
    },
    raise: {
      title: 'Raise',
      text: (count) => `Set up ${count} staves in the raising hoop, arrows upwards.`,
      bung: 'The widest is the bung stave.',
      beforeFire: (down) => `girth before fire, ${down} down the stave`,
      inHoop: (down) => `girth in the hoop, ${down} down the stave`,
      caution: 'Staves fall, hoops slip: a helper, fingers out.',
    },
    fire: {
      title: 'Fire and bend',
      text: (stretch, girth) =>
        `Wet, heat through, draw in slowly, truss hoops on (quarter: girth ${girth}). Outside stretches ${stretch} %. Let it set; toast if wanted.`,
      girth: 'girth at the bilge',
      caution:
        'Outdoors or under a hood, water at hand, gloves, no ember left; local fire rules. Hot staves are under tension: stand out of line.',
    },
    trim: {
      title: 'Trim, chime',
      titlePlain: 'Trim the ends',
      text: (bevel, flat) =>
        `Square to the axis; chime bevel ${bevel} from the end, ${flat} left flat.`,
      plain: 'Square to the axis, both ends.',
      height: 'height',
    },
    groove: {
      title: 'Croze',
      howel: (depth) => `Howel ${depth} deep.`,
      text: (inset, width, depth) =>
        `Groove ${width} wide, ${depth} deep, middle ${inset} from the end.`,
      compass: 'Six steps of the compass close.',
      radius: (end) => `compass, ${end}`,
    },
    round: {
      title: 'Round the outside',
      text: (radius) => `By the backing gauge, radius ${radius} at the widest place.`,
      girth: 'girth',
    },
    head: {
      title: 'Heads',
      titleOpen: 'Bottom',
      joints: 'Joint, dowel, flag.',
      text: (land, depth, fromInside, outer, inner) =>
        `Land ${land}\u00a0×\u00a0${depth}, middle ${fromInside} from inside; bevels ${outer} outside, ${inner} inside.`,
      diameter: (end) => `⌀ ${end}`,
      caution: 'Saw, drill, router: clamp the work; maker’s rules.',
    },
    setHead: {
      title: 'Set the heads',
      titleOpen: 'Set the bottom',
      text: (opening, girth) =>
        `Hoops of that end off; it opens ${opening} in radius, ${girth} in girth.`,
      caution: 'Loose staves spring: fingers out of the groove.',
    },
    hoop: {
      title: 'Hoops',
      place: (name, offset) => `${name} ${offset}`,
      text: (places) => `Rivet, splay, drive. From the end: ${places}.`,
      caution: 'Steel edges cut, hoops fly: gloves, eyes covered.',
    },
    bung: { title: 'Bung hole', text: (diameter) => `⌀ ${diameter}, middle of the bung stave.` },
    test: {
      title: 'Test with water',
      text: 'A little hot water, shake over each head; then fill and wait.',
      open: 'Fill to the rim, let the wood take up, wait a day.',
      litres: 'filled',
      leaks: 'leaks',
      caution: 'Water only, never air under pressure. Hot water spurts: vent it.',
      openCaution: 'On a firm, level stand.',
    },
    handOver: {
      title: 'Finish',
      text: 'Brand and number; dry, shaded store.',
      lifting: (mass) => `Full of water ${mass}: hoist or helpers.`,
      gas: 'Fermenting or sulphured: gas kills, keep your head out, air the room.',
      food: 'Wood, metal, wax for food: local food rules; licensed trades where the law asks.',
    },
  },
  labels: 'Labels to cut out and stick on: place in the ring, ↑ top end, width; + spare',
  takeCare: (caution) => `Care: ${caution}`,
};
