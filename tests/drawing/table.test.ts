import { describe, expect, it } from 'vitest';
import { ruledTable, tableHeight } from '../../src/drawing/table.js';
import { overlaps } from '../../src/drawing/overlap.js';

const table = {
  title: 'Stations',
  headings: ['s', 'Width', 'Remark'],
  rows: [
    ['-473.5', '64.4', 'a remark that is a good deal longer than any of the figures beside it'],
    ['0', '76.4', 'bilge'],
  ],
};

describe('a ruled table', () => {
  it('is as wide as its text where there is room', () => {
    expect(ruledTable(table, 1000).width).toBeLessThan(250);
    expect(ruledTable(table, 1000).letterings).toHaveLength(9);
  });

  it('narrows only its widest column where there is none, and wraps that', () => {
    const wide = ruledTable(table, 1000);
    const narrow = ruledTable(table, 90);
    expect(narrow.width).toBeCloseTo(90, 9);
    expect(narrow.height).toBeGreaterThan(wide.height);
    const uprights = (block: typeof wide) =>
      block.strokes
        .filter(({ curve }) => !curve.closed && curve.vertices[0]!.x === curve.vertices[1]!.x)
        .map(({ curve }) => curve.vertices[0]!.x);
    expect(uprights(narrow)).toEqual(uprights(wide));
    expect(overlaps(narrow)).toEqual([]);
  });

  it('is lower when it is close, and as clear', () => {
    const close = ruledTable({ ...table, close: true }, 90);
    expect(close.height).toBeLessThan(ruledTable(table, 90).height - 3);
    expect(close.height).toBeCloseTo(tableHeight({ ...table, close: true }, 90), 9);
    expect(overlaps(close)).toEqual([]);
  });

  it('sets nothing in an empty or missing cell', () => {
    const { letterings, strokes } = ruledTable({ ...table, rows: [['1', '']] }, 200);
    expect(letterings.map((lettering) => lettering.text)).toEqual([...table.headings, '1']);
    expect(strokes).toHaveLength(1 + 1 + 2);
  });
});
