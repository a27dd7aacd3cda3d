/** Every word that sheets add to a drawing, in English. */
import type { SheetWords } from './words.js';

export const english: SheetWords = {
  titleBlock: {
    owner: 'Legal owner',
    number: 'Identification number',
    date: 'Date of issue',
    sheet: 'Sheet',
    title: 'Title',
    approved: 'Approval person',
    creator: 'Creator',
    documentType: 'Document type',
    pattern: 'Full-size pattern',
    picture: 'Picture to a scale',
    scale: 'Scale',
    units: 'Units',
    unitNames: { mm: 'mm', in: 'in' },
    sheetOf: (sheet, sheets) => `${sheet} / ${sheets}`,
  },
  proof: {
    before: ['Print at actual size, 100 %;', 'measure the square before you cut.'],
    across: 'across 100 mm',
    along: 'along 100 mm',
    remedy:
      'If a side is not 100 mm long, switch off "fit to page" and print again. If it is still not, draw the sheets anew with what you measured, across and along.',
    hundred: '100 mm',
    fourInches: '4 in',
  },
  cover: {
    subtitle: (tiles, paper, scale) => {
      const size = scale === '1:1' ? 'Full size' : `Scale ${scale}`;
      return tiles === 1
        ? `${size}, on 1 sheet of ${paper}`
        : `${size}, to join from ${tiles} sheets of ${paper}`;
    },
    paperNames: {
      a4: 'A4',
      a3: 'A3',
      a2: 'A2',
      a1: 'A1',
      a0: 'A0',
      letter: 'Letter',
      legal: 'Legal',
      tabloid: 'Tabloid',
      full: 'its own size',
    },
    howToUse: 'Step by step',
    steps: [
      '1. Measure the square, and the line at the foot of every sheet.',
      '2. Cut or fold each sheet at the thin lines on its left and at its top, where it has them.',
      '3. Lay it over its neighbour so that the crosses and the lines of the drawing meet.',
      '4. Join a row from left to right, then the rows from the top downwards.',
      '5. Tape the joins, then measure the whole against the figures of the piece.',
    ],
    single: [
      '1. Measure the square, and the line at the foot of the sheet that follows.',
      '2. Measure the piece on paper against its figures before you cut wood.',
    ],
    plan: 'Where each sheet lies',
    planLeftOut: 'dashed: nothing to draw, no sheet',
  },
  tile: {
    identification: (sheet, sheets, scale) => `Sheet ${sheet} of ${sheets}, scale ${scale}`,
    cutHere: (neighbour) => `cut or fold, lay over ${neighbour}`,
    covered: (neighbour) => `${neighbour} covers this strip`,
  },
};
