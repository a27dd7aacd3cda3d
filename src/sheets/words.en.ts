/** Every word that sheets add to a drawing. Another language is another value of `SheetWords`. */
import type { PaperName } from './paper.js';

export interface SheetWords {
  readonly titleBlock: {
    readonly owner: string;
    readonly number: string;
    readonly date: string;
    readonly sheet: string;
    readonly title: string;
    readonly approved: string;
    readonly creator: string;
    readonly documentType: string;
    /** the type of a full-size drawing */
    readonly pattern: string;
    /** the type of a drawing that is not full size */
    readonly picture: string;
    readonly scale: string;
    readonly units: string;
    readonly unitNames: { readonly mm: string; readonly in: string };
    sheetOf(sheet: number, sheets: number): string;
  };
  readonly proof: {
    /** two lines, above the square on the first sheet */
    readonly before: readonly [string, string];
    readonly across: string;
    readonly along: string;
    /** inside the square */
    readonly remedy: string;
    readonly hundred: string;
    readonly fourInches: string;
  };
  readonly cover: {
    /** `scale` is `1:1` for full size */
    subtitle(tiles: number, paper: string, scale: string): string;
    readonly paperNames: Readonly<Record<PaperName, string>>;
    readonly howToUse: string;
    /** how to join the sheets of a piece */
    readonly steps: readonly string[];
    /** the same when the piece is on one sheet */
    readonly single: readonly string[];
    readonly plan: string;
    readonly planLeftOut: string;
  };
  readonly tile: {
    identification(sheet: number, sheets: number, scale: string): string;
    /** beside the line where a sheet is cut to lie on its neighbour */
    cutHere(neighbour: string): string;
    /** in the strip that its neighbour covers */
    covered(neighbour: string): string;
  };
}

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
