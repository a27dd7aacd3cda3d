import { expect, test } from 'vitest';
import { label } from '../../src/drawing/build.js';
import type { Drawing } from '../../src/drawing/drawing.js';
import { typesetDrawing } from '../../src/drawing/typeset.js';
import { textWidth } from '../../src/drawing/lettering.js';
import { decimalComma } from '../../src/language.js';

const view = {
  ...label('1.5 up', { x: 0, y: 0 }),
  legend: {
    notes: ['a note of 2.5'],
    tables: [{ title: 'at 3.5', headings: ['from 4.5'], rows: [['5.5']] }],
  },
};
const drawing: Drawing = {
  ...view,
  name: 'piece-1',
  title: 'Piece 6.5',
  subject: 'No. 7.5',
  forPaper: view,
};

test('all that a drawing says is set, but not what it belongs to nor its name', () => {
  const set = typesetDrawing(drawing, decimalComma);
  for (const part of [set, set.forPaper!]) {
    expect(part.letterings.map(({ text }) => text)).toEqual(['1,5 up']);
    expect(part.legend).toEqual({
      notes: ['a note of 2,5'],
      tables: [{ title: 'at 3,5', headings: ['from 4,5'], rows: [['5,5']] }],
    });
  }
  expect({ title: set.title, subject: set.subject, name: set.name }).toEqual({
    title: 'Piece 6,5',
    subject: 'No. 7.5',
    name: 'piece-1',
  });
});

test('a comma takes up the place of a point', () => {
  expect(textWidth('12,34', 3.5)).toBeCloseTo(textWidth('12.34', 3.5), 1);
});
