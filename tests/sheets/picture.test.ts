/** Sheets of a drawing that is not full size. */
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { toSheets } from '../../src/sheets/sheets.js';
import { faultsOn } from './ink-faults.js';
import { longAndThin, tiny } from './synthetic.js';

const titleBlock = {
  ...{ owner: '', number: '', date: '', creator: '', approved: '' },
  ...{ title: 'Section', subtitle: 'Invented' },
};
const sheetsOf = (drawing: Drawing, paper: 'a4' | 'full' = 'a4'): Sheet[] =>
  toSheets(drawing, { paper, units: 'mm', titleBlock });
const wordsOn = (sheet: Sheet): string[] => sheet.furniture.letterings.map(({ text }) => text);

describe('a picture to a scale', () => {
  it('says its scale and what it is in the title block, and has no square to measure', () => {
    for (const paper of ['a4', 'full'] as const) {
      const [sheet, ...rest] = sheetsOf({ ...tiny(), scale: 0.2 }, paper);
      expect(rest).toEqual([]);
      const words = wordsOn(sheet!);
      expect(words).toEqual(expect.arrayContaining(['1:5', 'Picture to a scale']));
      expect(words).not.toContain('1:1');
      expect(words.some((text) => text.includes('100 mm'))).toBe(false);
      expect(faultsOn(sheet!)).toEqual([]);
    }
  });

  it('says its scale on the cover and at the foot of every tile', () => {
    const [cover, ...rest] = sheetsOf({ ...longAndThin(), scale: 0.1 });
    const tiles = rest.filter(({ content }) => content.length > 0);
    expect(wordsOn(cover!).some((text) => text.includes('Scale 1:10, to join from'))).toBe(true);
    expect(tiles.length).toBeGreaterThan(0);
    for (const tile of tiles)
      expect(wordsOn(tile).some((text) => text.endsWith('scale 1:10'))).toBe(true);
  });

  it('leaves a drawing without a scale full size', () => {
    const words = wordsOn(sheetsOf(tiny())[0]!);
    expect(words).toEqual(expect.arrayContaining(['1:1', 'Full-size pattern']));
  });
});
