import { describe, expect, test } from 'vitest';
import type { Form } from '../../src/drawing/form.js';
import { formSheets } from '../../src/sheets/form-sheets.js';
import { paperNames, type PaperName } from '../../src/sheets/paper.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { english } from '../../src/sheets/words.en.js';
import { faultsOn } from './ink-faults.js';

const many = <T>(count: number, make: (i: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => make(i));

const long =
  'words that go on and on until they have to be set on a line of their own, and then some';

const form: Form = {
  name: 'form',
  language: 'en',
  title: 'A form',
  subject: 'An invented vessel',
  numbers: {
    heading: 'Numbers',
    entries: many(7, (i) => ({ name: `size ${i}`, value: `${i}.0` })),
  },
  list: {
    title: 'List',
    headings: ['piece', 'count', 'length'],
    rows: [[long, '12', '345.6'], ...many(5, (i) => [`piece ${i}`, '2', '34.5'])],
  },
  steps: {
    heading: 'Steps',
    steps: [
      { title: 'Short', text: 'Little to do.', measures: [], caution: '' },
      {
        title: 'Long',
        text: `${long}; ${long}; ${long}`,
        measures: many(6, (i) => ({ name: `measure number ${i}`, value: '1234.5 (48 19/32)' })),
        caution: `Care: ${long}; ${long}`,
      },
      {
        title: 'A title that leaves no room for a box beside it',
        text: 'Measure.',
        measures: [{ name: 'what is to be measured here, said at length', value: '1234.5' }],
        caution: 'Care: one line',
      },
    ],
  },
  labels: { heading: 'Labels', texts: many(40, (i) => `${i + 1} ↑ 76.6`) },
};

const titleBlock = {
  owner: 'Cooperage at a place with a rather long name that does not exist',
  number: 'A-NUMBER-OF-MANY-FIGURES-0123456789',
  date: '2026-01-31',
  title: 'A form',
  subtitle: 'An invented vessel with a title so long that it can hardly stand in its field at all',
  creator: 'A. Nobody',
  approved: '',
};

const set = (paper: PaperName, units: 'mm' | 'in' = 'mm', of: Form = form): Sheet[] =>
  formSheets(of, { paper, titleBlock, units, words: english });

const sizes = (paper: PaperName, units: 'mm' | 'in' = 'mm'): number[] => {
  const [{ width, height }] = set(paper, units) as [Sheet];
  return [width, height];
};

describe('the paper', () => {
  // ISO 216:2007, table 1; Letter is 8 1/2 by 11 in
  test('is A4 or Letter, upright, whatever the patterns are printed on', () => {
    for (const paper of ['a4', 'a3', 'a2', 'a1', 'a0'] as const)
      expect(sizes(paper)).toEqual([210, 297]);
    for (const paper of ['letter', 'legal', 'tabloid'] as const)
      expect(sizes(paper)).toEqual([215.9, 279.4]);
    expect(sizes('full', 'mm')).toEqual([210, 297]);
    expect(sizes('full', 'in')).toEqual([215.9, 279.4]);
  });
});

test.each(paperNames)('long texts, many boxes and long names stay clear on %s', (paper) => {
  expect(set(paper).flatMap((sheet) => faultsOn(sheet))).toEqual([]);
});

test('each sheet says which it is, and to what it belongs', () => {
  const labels = { ...form.labels, texts: many(300, (i) => `${i + 1} ↑ 76.6`) };
  const sheets = set('a4', 'mm', { ...form, labels });
  expect(sheets.length).toBeGreaterThan(2);
  const said = sheets.map(({ furniture }) => furniture.letterings.map(({ text }) => text));
  expect(said[0]).toContain(`1 / ${sheets.length}`);
  for (const [i, texts] of said.entries())
    if (i > 0)
      expect(
        texts.some((text) => text.startsWith(`Sheet ${i + 1} / ${sheets.length} · A form`)),
      ).toBe(true);
  for (const label of labels.texts)
    expect(said.flat().filter((text) => text === label)).toEqual([label]);
  expect(sheets.flatMap((sheet) => faultsOn(sheet))).toEqual([]);
});

test('a measure has a box beside it, as high as a hand writes', () => {
  const { strokes, letterings } = set('a4')[0]!.furniture;
  const boxes = strokes
    .map(({ curve }) => curve)
    .filter(({ closed }) => closed)
    .map(({ vertices }) => ({
      left: Math.min(...vertices.map(({ x }) => x)),
      bottom: Math.min(...vertices.map(({ y }) => y)),
      right: Math.max(...vertices.map(({ x }) => x)),
      top: Math.max(...vertices.map(({ y }) => y)),
    }))
    .filter(({ left, right, bottom, top }) => right - left < 60 && right - left > top - bottom);
  const measures = letterings.filter(({ text }) => text.startsWith('measure number'));
  expect(measures).toHaveLength(6);
  for (const { at } of measures) {
    const beside = boxes.filter(({ bottom, top }) => bottom < at.y && top > at.y);
    expect(beside.length).toBeGreaterThan(0);
    for (const { bottom, top } of beside) expect(top - bottom).toBeGreaterThan(6);
  }
});
