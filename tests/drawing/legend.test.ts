import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawingBounds } from '../../src/drawing/bounds.js';
import { drawingOf, strokes } from '../../src/drawing/build.js';
import type { Legend, Table } from '../../src/drawing/drawing.js';
import { legendBlock, legendHeight, withLegend } from '../../src/drawing/legend.js';
import { overlaps } from '../../src/drawing/overlap.js';
import { polygon } from '../../src/geometry/curve.js';

const box = polygon([
  { x: -30, y: -10 },
  { x: 30, y: -10 },
  { x: 30, y: 10 },
  { x: -30, y: 10 },
]);
const table: Table = {
  title: 'Boards',
  headings: ['Board', 'Width', 'Length'],
  rows: [
    ['cant', '92.7', '410.2'],
    ['middle', '92.7', '556.4'],
  ],
};
const legend: Legend = {
  notes: ['All lengths in mm. '.repeat(12).trim(), 'Invented figures.'],
  tables: [table, { ...table, title: 'Boards of the other head' }],
};

describe('a legend as a block', () => {
  it('fills just the size it states, downwards from the origin', () => {
    const block = legendBlock(legend, 120);
    const bounds = drawingBounds(block);
    expect(bounds.minX).toBeCloseTo(0, 9);
    expect(bounds.maxX).toBeCloseTo(block.width, 9);
    expect(bounds.maxY).toBeCloseTo(0, 9);
    expect(bounds.minY).toBeCloseTo(-block.height, 9);
    expect(block.width).toBeLessThanOrEqual(120);
  });

  it('is as high as was measured before it was set', () => {
    for (const parts of [legend, { notes: [], tables: [table] }, { notes: ['One.'], tables: [] }]) {
      for (const width of [60, 85, 120, 180, 400]) {
        expect(legendHeight(parts, width)).toBeCloseTo(legendBlock(parts, width).height, 9);
      }
    }
    expect(legendHeight({ notes: [], tables: [] }, 100)).toBe(0);
  });

  it('has every note, title, heading and cell, and only those', () => {
    const block = legendBlock(legend, 1000);
    const cells = [...table.headings, ...table.rows.flat()];
    expect(block.letterings.map((lettering) => lettering.text).sort()).toEqual(
      [...legend.notes, 'Boards', 'Boards of the other head', ...cells, ...cells].sort(),
    );
  });

  it('rules each table with a frame and lines inside it, none of them twice', () => {
    const { strokes: rules } = legendBlock({ notes: [], tables: [table] }, 200);
    expect(rules.map((stroke) => stroke.layer)).toEqual(Array(5).fill('dimension'));
    expect(rules.filter((stroke) => stroke.curve.closed)).toHaveLength(1);
  });

  it('sets figures to the right and words to the left', () => {
    const { letterings } = legendBlock({ notes: [], tables: [table] }, 200);
    const align = Object.fromEntries(letterings.map(({ text, align }) => [text, align]));
    expect(align).toMatchObject({ cant: 'left', Board: 'left', '410.2': 'right', Length: 'right' });
  });

  it('of nothing is nothing', () => {
    expect(legendBlock({ notes: [], tables: [] }, 100)).toMatchObject({ width: 0, height: 0 });
    expect(legendBlock({ notes: [''], tables: [] }, 100).letterings).toEqual([]);
  });

  it('keeps text clear of rules and of other text, within its width, whatever it says', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 40 });
    const row = fc.tuple(text, text, text);
    const any = fc.record({
      notes: fc.array(text, { maxLength: 3 }),
      tables: fc.array(
        fc.record({ title: text, headings: row, rows: fc.array(row, { maxLength: 4 }) }),
        { maxLength: 2 },
      ),
    });
    fc.assert(
      fc.property(any, fc.double({ min: 60, max: 400, noNaN: true }), (content, width) => {
        const block = legendBlock(content, width);
        expect(overlaps(block)).toEqual([]);
        expect(block.width).toBeLessThanOrEqual(width + 1e-9);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a drawing with its legend set', () => {
  const drawing = drawingOf('head', 'Head', strokes('outline', box), legend);
  const set = withLegend(drawing);

  it('has it below, clear of what was there, and lined up with its left edge', () => {
    const added = {
      strokes: set.strokes.filter((stroke) => stroke.layer !== 'outline'),
      letterings: set.letterings,
    };
    expect(drawingBounds(added).maxY).toBeLessThan(-10 - 5);
    expect(drawingBounds(added).minX).toBeCloseTo(-30, 9);
    expect(overlaps(set)).toEqual([]);
  });

  it('keeps its own strokes as they were and has nothing left to set', () => {
    expect(set.strokes.filter((stroke) => stroke.layer === 'outline')).toEqual(drawing.strokes);
    expect(set.legend).toEqual({ notes: [], tables: [] });
    expect(set.name).toBe('head');
  });

  it('carries its title, 7 mm high', () => {
    expect(set.letterings.find((lettering) => lettering.text === 'Head')!.height).toBe(7);
  });

  it('is as wide as asked', () => {
    const narrow = withLegend(drawing, { width: 80 });
    expect(drawingBounds(narrow).maxX).toBeLessThanOrEqual(-30 + 80);
    expect(drawingBounds(narrow).minY).toBeLessThan(drawingBounds(set).minY);
  });
});
