import { describe, expect, it } from 'vitest';
import { nominalHeights } from '../../src/drawing/heights.js';
import type { Ink } from '../../src/sheets/sheet.js';
import { holds } from '../../src/sheets/rectangle.js';
import type { TitleBlockEntry } from '../../src/sheets/title-block.js';
import { titleBlockBox, titleBlockInk } from '../../src/sheets/title-block.js';
import { english } from '../../src/sheets/words.en.js';
import { boxOf, faultsOn } from './ink-faults.js';

const space = { minX: 20, minY: 10, maxX: 200, maxY: 287 };
const entry: TitleBlockEntry = {
  owner: 'Owner',
  number: 'N-17',
  date: '2026-01-31',
  title: 'Stave',
  subtitle: 'Wine cask',
  creator: 'Creator',
  approved: 'Approver',
  units: 'mm',
  sheet: 3,
  sheets: 14,
};

const faults = (ink: Ink) =>
  faultsOn({ width: 210, height: 297, correction: { x: 1, y: 1 }, content: [], furniture: ink });

const wordsIn = (ink: Ink) => ink.letterings.map(({ text }) => text);

describe('the title block', () => {
  // ISO 7200:2004: the mandatory data fields (seen in a secondary source)
  it('has the mandatory fields of ISO 7200, and scale and units', () => {
    expect(wordsIn(titleBlockInk(entry, space, english)).sort()).toEqual(
      [
        ...['Legal owner', 'Owner', 'Identification number', 'N-17', 'Date of issue', '2026-01-31'],
        ...['Sheet', '3 / 14', 'Title', 'Stave', 'Wine cask', 'Approval person', 'Approver'],
        ...[
          'Creator',
          'Creator',
          'Document type',
          'Full-size pattern',
          'Scale',
          '1:1',
          'Units',
          'mm',
        ],
      ].sort(),
    );
  });

  it('is 180 mm wide at the lower right, its frame 0.7 mm', () => {
    const wide = { ...space, maxX: 410 };
    expect(titleBlockBox(wide)).toMatchObject({ minX: 230, maxX: 410, minY: 10 });
    const [frame] = titleBlockInk(entry, wide, english).strokes;
    expect(frame!.width).toBe(0.7);
  });

  it('keeps every text in its cell, however long, in lettering of ISO 3098', () => {
    const long = 'An extremely long entry that nobody would write, Ångström ĄĘ (gjpqy) '.repeat(4);
    const filled = Object.fromEntries(
      Object.entries(entry).map(([key, value]) => [key, typeof value === 'string' ? long : value]),
    ) as unknown as TitleBlockEntry;
    for (const area of [space, { ...space, maxX: 182 }]) {
      const ink = titleBlockInk({ ...filled, units: 'in', sheets: 12345678 }, area, english);
      expect(faults(ink)).toEqual([]);
      for (const lettering of ink.letterings) {
        expect(holds(titleBlockBox(area), boxOf(lettering))).toBe(true);
        expect(nominalHeights).toContain(lettering.height);
      }
    }
  });

  it('leaves empty fields blank', () => {
    const ink = titleBlockInk({ ...entry, owner: '', approved: ' ', number: '' }, space, english);
    expect(wordsIn(ink)).toHaveLength(21 - 3);
    expect(wordsIn(ink)).toContain('Legal owner');
  });
});
