/** The page in English. */
import { fields } from './fields.en.js';
import { rack } from './rack.en.js';
import { space } from './space.en.js';
import { tables } from './tables.en.js';
import type { Words } from './words.js';

export const en: Words = {
  skip: 'To the vessel',
  close: 'Close',
  bar: {
    begin: 'Begin anew from …',
    open: 'Open',
    save: 'Save',
    undo: 'Undo',
    redo: 'Redo',
    toInches: 'Change mm to inches',
    toMillimetres: 'Change inches to mm',
    habits: 'Units, language, look',
    language: 'Language',
    look: 'Light or dark',
    languages: { en: 'English', de: 'Deutsch', fr: 'Français' },
    looks: { device: 'As the device', light: 'Light', dark: 'Dark' },
  },
  files: {
    tooLarge: 'this file is too large to be a spec.',
    notText: 'this is not a text file in UTF-8, as specs are.',
  },
  vessel: {
    picture: 'The vessel with its figures',
    litres: 'litres',
    outOfDate: 'This is the last vessel that could be built. See what is said below.',
  },
  notes: { errors: 'Cannot be built:', warnings: 'Mind:', goThere: 'Go there' },
  strip: { title: 'Patterns and gauges' },
  parts: {
    title: 'More about this vessel',
    settings: 'Settings',
    sizing: 'Size for a capacity',
    space: 'In the round',
    numbers: 'Numbers',
    dip: 'Dips',
    slips: 'Small errors',
    output: 'Print and cut',
    text: 'As text',
  },
  settings: {
    about:
      'Numbers in slanted type follow from the others until you type your own. An emptied box goes back to that.',
    heads: 'Top and bottom head',
    headsAlike: 'alike',
    headsApart: 'each by itself',
    headOf: { top: 'Top head', bottom: 'Bottom head' },
    stavesAre: 'Staves are',
    staveWays: { even: 'of one width', uneven: 'of uneven widths' },
    boardsAre: 'Boards are',
    boardWays: { even: 'of one width', uneven: 'of uneven widths' },
    bung: 'Bung',
    bungs: { bored: 'with a hole', none: 'without' },
  },
  ...fields,
  hoops: {
    add: 'Add a hoop',
    remove: (name) => `Take away the hoop ${name}`,
    name: (name) => name,
  },
  problems: {
    empty: 'A number is missing here.',
    'not-a-length': 'This is no length. Write 37 3/8, 37.375 or 949,5; mm, cm or in may follow.',
    'two-readings':
      'This can mean two numbers. Leave out the comma for thousands, or write a point for the decimals.',
    'odd-fraction': 'This fraction cannot be read. Write it like 37 3/8, in inches.',
    'not-a-number': 'This is no number.',
    'broken-text':
      'The text of the spec is broken, so nothing can be changed in it from here. Mend it under “As text” first, or undo.',
  },
  textPart: {
    label: (file) => `The spec as it is saved: ${file}`,
    line: (line, column) => `Line ${line}, column ${column}`,
  },
  viewer: {
    before: 'Previous',
    after: 'Next',
    larger: 'Larger',
    smaller: 'Smaller',
    whole: 'All of it',
    trueSize: 'True size',
    measure: 'Measure',
    canvas:
      'Drawing. Arrow keys move it, plus and minus zoom, 0 shows all of it, Enter marks the middle when measuring.',
    takePoints: 'Touch two points.',
    notes: 'Notes and tables',
    place: (x, y) => `x ${x}, y ${y}`,
    station: (station, width, bevel, thickness) =>
      `station ${station}: width ${width}, bevel ${bevel}, blank ${thickness}`,
    measured: (distance, dx, dy) => `${distance} apart: ${dx} along x, ${dy} along y`,
  },
  output: {
    caution:
      'Print at actual size, 100 %, and measure the square before you cut. Saws, jointers and routers: follow their makers’ instructions and your local rules.',
    paper: 'Paper',
    across: 'My printer draws 100 mm across as … mm',
    along: 'and 100 mm along the page as … mm',
    printed:
      'Measure the square on a printed sheet and type its sides here: the next prints are corrected.',
    badSide: 'Write what 100 mm measured, from 90 to 110 mm. More than that is another scale.',
    formats: 'Files in the pack',
    lettering: 'Lettering in DXF',
    pack: 'The whole pack (zip)',
    packing: 'Drawing …',
    spec: 'The spec as it stands (YAML)',
    wholeSpec: 'The spec with every default',
    jobSheet: (format) => `The job sheet (${format})`,
    papers: (name) => (name === 'full' ? 'one full-size sheet' : name),
    fan: {
      title: 'Widths of the stave fan',
      boxes: ['Narrowest stave', 'Widest stave'],
      about:
        'For staves of uneven width: one line each 5 mm, or each quarter of an inch, in the fan, the joint gauge and the listing jig. Empty boxes leave the widths as usual. For the files; the pictures here keep the usual widths.',
    },
    plank: {
      title: 'Plank or sheet for the boards of the heads',
      boxes: ['Length along the grain', 'Width'],
      about:
        'What the router cuts the boards from. Empty boxes take the shortest plank that will do. For the files; the pictures here keep that plank.',
    },
    sizeProblems: {
      'one-alone': 'Fill in both boxes, or neither.',
      'not-above-0': 'This has to be above 0.',
      'fan-order': 'The widest stave cannot be narrower than the narrowest.',
      'fan-too-wide': 'A stave of this width is more than half of the vessel’s diameter.',
      'fan-too-many':
        'These are more than 60 widths. Bring the narrowest and the widest nearer together.',
      'plank-too-large': 'This is more than 20 m.',
    },
    use: { svg: 'to look at', dxf: 'for a router', pdf: 'to print' },
    letterings: { text: 'as text', outlines: 'as outlines, to engrave' },
    give: (format) => `Save as ${format}`,
  },
  ...tables,
  space,
  rack,
};
