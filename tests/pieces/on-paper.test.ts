/** The patterns of every template on every paper: lettering stays on the sheet, and touches neither lines nor other lettering. */
import { describe, expect, it } from 'vitest';
import { paperView } from '../../src/drawing/for-paper.js';
import { wordsIn } from '../../src/language.js';
import { drawPieces, pieces } from '../../src/pieces/index.js';
import { en } from '../../src/pieces/words/en.js';
import { pieceWords } from '../../src/pieces/words/index.js';
import { paperNames } from '../../src/sheets/paper.js';
import { toSheets } from '../../src/sheets/sheets.js';
import { sheetWords } from '../../src/sheets/words.js';
import { faultsOn } from '../sheets/ink-faults.js';
import { everyVessel, vesselOf } from './vessels.js';

const templates = everyVessel.filter(([name]) => name.endsWith('.yaml'));
/** The patterns that every vessel is built from; boards of one head differ little, so its own drawing stands for them. */
const built = ['stave', 'stave-fan', 'head', 'head-edge', 'end-gauge'];

describe.each(templates)('%s', (_name, text) => {
  const vessel = vesselOf(text);
  const drawings = drawPieces(vessel, { words: en }, built);

  it.each(paperNames)('has clear lettering on %s', (paper) => {
    for (const drawing of drawings) {
      const titleBlock = { ...vessel.spec.sheet, title: drawing.title, subtitle: drawing.subject };
      const view = paper === 'full' ? drawing : paperView(drawing);
      const sheets = toSheets(view, { paper, titleBlock, units: vessel.spec.units });
      expect(sheets.length).toBeGreaterThan(0);
      expect(
        sheets.flatMap((sheet) => faultsOn(sheet)),
        drawing.name,
      ).toEqual([]);
    }
  });
});

it.each(templates)('%s: every piece goes on one sheet of its own size', (_name, text) => {
  const vessel = vesselOf(text);
  const names = pieces.map((piece) => piece.name);
  for (const drawing of drawPieces(vessel, { words: en }, names)) {
    const titleBlock = { ...vessel.spec.sheet, title: drawing.title, subtitle: drawing.subject };
    const sheets = toSheets(drawing, { paper: 'full', titleBlock, units: vessel.spec.units });
    expect(sheets, drawing.name).toHaveLength(1);
    expect(faultsOn(sheets[0]!), drawing.name).toEqual([]);
  }
});

/** The longest words, on the sheets that most printers hold. */
const inOtherLanguages = (['de', 'fr'] as const).flatMap((language) => [
  { name: 'wine-cask-225.yaml', language, paper: 'a4' as const },
  { name: 'keg-10-inches.yaml', language, paper: 'letter' as const },
]);

it.each(inOtherLanguages)(
  '$name in $language has clear lettering on $paper',
  async ({ name, language, paper }) => {
    const [, text] = templates.find(([each]) => each === name)!;
    const vessel = vesselOf(text);
    const words = await wordsIn(pieceWords, language);
    const terms = await wordsIn(sheetWords, language);
    const names = pieces.map((piece) => piece.name);
    for (const drawing of drawPieces(vessel, { words }, names)) {
      const titleBlock = { ...vessel.spec.sheet, title: drawing.title, subtitle: drawing.subject };
      const options = { paper, titleBlock, units: vessel.spec.units, words: terms };
      const faults = toSheets(paperView(drawing), options).flatMap((sheet) => faultsOn(sheet));
      expect(faults, drawing.name).toEqual([]);
    }
  },
);
