import { expect, test } from 'vitest';
import { label } from '../../src/drawing/build.js';
import type { Drawing } from '../../src/drawing/drawing.js';
import type { Form } from '../../src/drawing/form.js';
import { typesetDrawing, typesetForm } from '../../src/drawing/typeset.js';
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

test('all that a form says is set, but not what it belongs to, its name and its language', () => {
  const entry = { name: 'of 1.5', value: '2.5' };
  const form: Form = {
    name: 'form-1.5',
    language: 'x-1.5',
    title: 'Form 1.5',
    subject: 'No. 7.5',
    numbers: { heading: 'in 3.5', entries: [entry] },
    list: { title: 'at 3.5', headings: ['from 4.5'], rows: [['5.5']] },
    steps: {
      heading: 'steps of 2.5',
      steps: [{ title: 'step 1.5', text: 'to 2.5', measures: [entry], caution: 'over 3.5' }],
    },
    labels: { heading: 'labels 1.5', texts: ['1 ↑ 76.6'] },
  };
  const { name, language, subject, ...said } = typesetForm(form, decimalComma);
  expect({ name, language, subject }).toEqual({
    name: 'form-1.5',
    language: 'x-1.5',
    subject: 'No. 7.5',
  });
  expect(JSON.stringify(said)).not.toMatch(/\d\.\d/);
  expect(JSON.stringify(said).match(/\d,\d/g)).toHaveLength(
    JSON.stringify({ ...form, name, language, subject }).match(/\d\.\d/g)!.length - 3,
  );
});

test('a comma takes up the place of a point', () => {
  expect(textWidth('12,34', 3.5)).toBeCloseTo(textWidth('12.34', 3.5), 1);
});
