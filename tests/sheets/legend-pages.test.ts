import { describe, expect, it } from 'vitest';
import type { Legend } from '../../src/drawing/drawing.js';
import { isEmpty, legendPages } from '../../src/sheets/legend-pages.js';
import type { Ink } from '../../src/sheets/sheet.js';
import { grown, holds } from '../../src/sheets/rectangle.js';
import { boxOf } from './ink-faults.js';
import { longLegend } from './synthetic.js';

const space = { minX: 26, minY: 60, maxX: 194, maxY: 281 };
const wordsIn = (pages: readonly Ink[]) =>
  pages.flatMap(({ letterings }) => letterings.map(({ text }) => text));

describe('a legend on pages', () => {
  it('has each note and each row once, in order, within the space', () => {
    const pages = legendPages(longLegend, space);
    const words = wordsIn(pages);
    expect(pages.length).toBeGreaterThan(1);
    const notes = words.filter((text) => text.startsWith('Note'));
    expect(notes).toEqual(longLegend.notes);
    const rows = words.filter((text) => text.startsWith('row'));
    expect(rows).toEqual(
      longLegend.tables.flatMap(({ rows: each }) => each.map(([first]) => first)),
    );
    for (const lettering of pages.flatMap(({ letterings }) => letterings)) {
      // a T reaches a trifle to the left of its origin
      expect(holds(grown(space, 0.1), boxOf(lettering))).toBe(true);
    }
  });

  it('keeps a table in one piece where a page can hold it', () => {
    const tables = longLegend.tables.map((table) => ({ ...table, rows: table.rows.slice(0, 20) }));
    const titles = legendPages({ ...longLegend, tables }, space).map((page) =>
      wordsIn([page]).filter((text) => text.startsWith('Table')),
    );
    expect(titles.flat()).toEqual(['Table 1', 'Table 2']);
  });

  it('cuts a table that no page can hold, and heads both parts', () => {
    const rows = Array.from({ length: 100 }, (_, i) => [`row ${i}`, '1']);
    const table = { title: 'Long', headings: ['place', 'number'], rows };
    const pages = legendPages({ notes: [], tables: [table] }, space);
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages)
      expect(wordsIn([page])).toEqual(expect.arrayContaining(['Long', 'place']));
    expect(wordsIn(pages).filter((text) => text.startsWith('row'))).toHaveLength(100);
  });

  it('uses two columns on wide paper', () => {
    const wide = { ...space, maxX: 500 };
    expect(legendPages(longLegend, wide).length).toBeLessThan(
      legendPages(longLegend, space).length,
    );
  });

  it('needs no page when it is empty', () => {
    const nothing: Legend = { notes: [], tables: [] };
    expect(isEmpty(nothing)).toBe(true);
    expect(legendPages(nothing, space)).toEqual([]);
  });
});
