/** Every word of the page that shows a vessel's patterns, in English. */
import type { IndexPageWords } from './index-page.words.js';

export const english: IndexPageWords = {
  language: 'en',
  intro: 'The pictures on this page are small, not to scale. Work from the files under them.',
  noPicture: 'no picture: SVG was not asked for',
  spec: 'The spec, with every default written out:',
  jobSheet: 'The job sheet, numbers and steps to take to the bench:',
  formats: { svg: 'SVG, full size', dxf: 'DXF, millimetres', pdf: 'PDF, to print' },
  sections: [
    {
      heading: 'To print',
      lines: [
        'Print the PDF at actual size, 100 %, with no “fit to page”.',
        'Measure the 100 mm square and the bar on the sheet before you cut; measure the joined pattern too.',
        'If the square is off, draw again with what it measured: --printed 99.6x99.8.',
      ],
    },
    {
      heading: 'To rout or saw',
      lines: [
        'In DXF and SVG one unit is one millimetre. Only the layer “outline” is cut through.',
        'Joint bevels and end cuts need the work turned, a tilted tool, or a plane afterwards; each drawing gives the angles.',
        'Cut one from scrap and measure it first.',
      ],
    },
    {
      heading: 'Take care',
      lines: [
        'Jointer, saw, router: guards on, push blocks, eyes, ears and dust looked after; follow the maker’s instructions.',
        'Firing: outdoors or under a hood, water at hand, gloves; no embers left inside; follow local fire rules.',
        'Raising and bending: hot wet staves and hoops stand under tension; keep face and fingers out of their way.',
        'Hoops: steel edges are sharp and driven hoops can spring; gloves, and eyes covered.',
        'Lifting: a full 225-litre cask weighs over 250 kg; use a hoist or a second pair of hands.',
        'Fermenting or sulphured vessels: gas can kill without a smell; never put your head in, air the room.',
        'Test for leaks with water, never with air under pressure.',
        'Wood, metal and anything else that touches food or drink: follow local food rules.',
      ],
    },
  ],
};
