/** The patterns of every template on every paper: lettering stays on the sheet, and touches neither lines nor other lettering. */
import { describe, expect, it } from 'vitest';
import { paperView } from '../../src/drawing/for-paper.js';
import { drawPieces } from '../../src/pieces/index.js';
import { languages } from '../../src/pieces/words/index.js';
import { paperNames } from '../../src/sheets/paper.js';
import { toSheets } from '../../src/sheets/sheets.js';
import { faultsOn } from '../sheets/ink-faults.js';
import { everyVessel, vesselOf } from './vessels.js';

const templates = everyVessel.filter(([name]) => name.endsWith('.yaml'));
/** The patterns that every vessel is built from; boards of one head differ little, so its own drawing stands for them. */
const built = ['stave', 'stave-fan', 'head', 'head-edge', 'end-gauge'];

describe.each(templates)('%s', (_name, text) => {
  const vessel = vesselOf(text);
  const drawings = drawPieces(vessel, { words: languages.en }, built);

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
