import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { inkOnSheet } from '../../src/sheets/ink.js';
import type { PaperName } from '../../src/sheets/paper.js';
import { paperNames, paperSizes } from '../../src/sheets/paper.js';
import type { SheetOptions } from '../../src/sheets/sheets.js';
import { toSheets } from '../../src/sheets/sheets.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { english } from '../../src/sheets/words.en.js';
import { line } from '../../src/geometry/curve.js';
import type { Bounds } from '../../src/geometry/measure.js';
import { holds } from '../../src/sheets/rectangle.js';
import { boxOf, faultsOn } from './ink-faults.js';
import { big, drawings, longAndThin, longLegend, round, tiny, wordy } from './synthetic.js';

const titleBlock = {
  owner: 'A cooperage that does not exist',
  number: 'T-1',
  date: '2026-01-31',
  title: 'A piece',
  subtitle: 'Invented cask',
  creator: 'A. Nobody',
  approved: '',
};

function sheetsOf(drawing: Drawing, options: Partial<SheetOptions> = {}): Sheet[] {
  return toSheets(drawing, { paper: 'a4', units: 'mm', titleBlock, ...options });
}

const wordsOn = (sheet: Sheet) =>
  [...sheet.content, sheet.furniture].flatMap(({ letterings }) =>
    letterings.map(({ text }) => text),
  );

describe.each(Object.entries(drawings))('%s', (_, make) => {
  it.each(paperNames)('has clear lettering within the margins on %s', (paper) => {
    for (const units of ['mm', 'in'] as const) {
      const faults = sheetsOf(make(), { paper, units }).map((sheet) => faultsOn(sheet));
      expect(faults.flat()).toEqual([]);
    }
  });

  it.each([
    ['a4', 99.6, 99.8],
    ['letter', 101, 98.5],
    ['a3', 90, 110],
    ['full', 110, 90],
  ] as const)('keeps within the margins when corrected on %s, %d by %d', (paper, across, along) => {
    for (const sheet of sheetsOf(make(), { paper, printed: { across, along } })) {
      expect(faultsOn(sheet)).toEqual([]);
      const printable = { minX: 9.9, minY: 9.9, maxX: sheet.width - 9.9, maxY: sheet.height - 9.9 };
      expect(boxesInTheFile(sheet).filter((box) => !holds(printable, box))).toEqual([]);
    }
  });

  it('shows every lettering whole, once', () => {
    const drawing = make();
    const shown = sheetsOf(drawing).flatMap(({ content }) =>
      content.flatMap(({ letterings }) => letterings.map(({ text }) => text)),
    );
    expect(shown.sort()).toEqual(drawing.letterings.map(({ text }) => text).sort());
  });
});

/** The boxes of all lettering where the file has them. */
function boxesInTheFile({ width, height, correction, content, furniture }: Sheet): Bounds[] {
  const x = (value: number) => width / 2 + correction.x * (value - width / 2);
  const y = (value: number) => height / 2 + correction.y * (value - height / 2);
  return [...content.map(inkOnSheet), furniture]
    .flatMap(({ letterings }) => letterings.map(boxOf))
    .map((box) => ({ minX: x(box.minX), maxX: x(box.maxX), minY: y(box.minY), maxY: y(box.maxY) }));
}

describe('a piece that fits', () => {
  it('has one sheet with proof, legend and title block', () => {
    const [sheet, ...rest] = sheetsOf(tiny());
    expect(rest).toEqual([]);
    const words = wordsOn(sheet!);
    for (const text of [
      'gauge',
      'across 100 mm',
      'along 100 mm',
      '4 in',
      'Sizes',
      'T-1',
      '1 / 1',
    ]) {
      expect(words).toContain(text);
    }
    expect(words.join(' ')).toContain(
      'Print at actual size, 100 %; measure the square before you cut.',
    );
  });

  it('has its legend on a second sheet when there is no room for it', () => {
    const sheets = sheetsOf({ ...tiny(), legend: longLegend });
    expect(sheets.length).toBeGreaterThan(1);
    expect(wordsOn(sheets[0]!)).toContain('gauge');
    expect(wordsOn(sheets[0]!)).toContain('across 100 mm');
    expect(sheets.slice(1).flatMap(wordsOn)).toContain(longLegend.notes[39]);
  });

  it('comes after a cover when there is no room for the square', () => {
    const { strokes, ...rest } = tiny();
    const larger = strokes.map(({ layer, curve: { closed, vertices } }) => ({
      layer,
      curve: { closed, vertices: vertices.map(({ x, y }) => ({ x: 2.5 * x, y: 4 * y, bulge: 0 })) },
    }));
    const sheets = sheetsOf({ ...rest, strokes: larger });
    expect(sheets).toHaveLength(2);
    expect(wordsOn(sheets[0]!)).toContain('across 100 mm');
    expect(wordsOn(sheets[1]!)).toEqual(expect.arrayContaining(['gauge', '100 mm', '2 / 2']));
  });

  it('is one sheet as large as it must be on paper of its own size', () => {
    for (const make of [longAndThin, round, tiny, big]) {
      const sheets = sheetsOf(make(), { paper: 'full' });
      expect(sheets).toHaveLength(1);
      expect(wordsOn(sheets[0]!)).toContain('across 100 mm');
    }
    const [sheet] = sheetsOf(longAndThin(), { paper: 'full' });
    expect(sheet!.width).toBeGreaterThan(980);
    expect(sheet!.width).toBeLessThan(1500);
    expect(sheet!.height).toBeLessThan(500);
  });

  it('refuses a legend that is longer than any sheet', () => {
    const legend = { notes: Array.from({ length: 8000 }, (_, i) => `Note ${i}`), tables: [] };
    const drawn = (): Sheet[] => sheetsOf({ ...tiny(), legend }, { paper: 'full' });
    expect(drawn).toThrow('no sheet holds');
  });
});

describe('a set of tiles', () => {
  it('numbers its sheets, and only its first pages have a title block', () => {
    const sheets = sheetsOf(longAndThin());
    expect(wordsOn(sheets[0]!)).toContain(`1 / ${sheets.length}`);
    const last = wordsOn(sheets.at(-1)!);
    expect(last).toContain(`Sheet ${sheets.length} of ${sheets.length}, scale 1:1`);
    expect(last).not.toContain('Legal owner');
  });

  it('opens with the words about scale and the square, and has a line to measure on every sheet', () => {
    const sheets = sheetsOf(longAndThin());
    expect(wordsOn(sheets[0]!).join(' ')).toContain(
      'Print at actual size, 100 %; measure the square before you cut.',
    );
    for (const sheet of sheets.filter(({ content }) => content.length > 0)) {
      expect(wordsOn(sheet)).toContain('100 mm');
      expect(wordsOn(sheet)).not.toContain('4 in');
    }
    const inches = sheetsOf(longAndThin(), { units: 'in' }).at(-1)!;
    expect(wordsOn(inches)).toEqual(expect.arrayContaining(['100 mm', '4 in']));
  });

  it('has each sheet of the size of its paper', () => {
    for (const paper of paperNames.filter(
      (name): name is Exclude<PaperName, 'full'> => name !== 'full',
    )) {
      const size = paperSizes[paper];
      for (const { width, height } of sheetsOf(big(), { paper })) {
        expect([width, height].sort((a, b) => a - b)).toEqual([size.width, size.height]);
      }
    }
  });

  it('shortens lettering that is longer than any sheet', () => {
    const sheets = sheetsOf(wordy());
    expect(sheets.flatMap((sheet) => faultsOn(sheet))).toEqual([]);
    const shown = sheets.flatMap(({ content }) => content.flatMap(({ letterings }) => letterings));
    expect(shown).toHaveLength(1);
    expect(shown[0]!.text).toMatch(/^a line of lettering.*…$/);
  });
});

it('takes its words from the language that it is given', () => {
  const words = { ...english, titleBlock: { ...english.titleBlock, title: 'Benennung' } };
  const [sheet] = sheetsOf(tiny(), { words });
  expect(wordsOn(sheet!)).toContain('Benennung');
  expect(wordsOn(sheet!)).not.toContain('Title');
});

it('gives the same sheets for the same drawing', () => {
  expect(sheetsOf(round())).toEqual(sheetsOf(round()));
});

it('throws for a drawing without anything on it, without an end, or of a thousand metres', () => {
  const lined = (x: number) => ({
    ...tiny(),
    strokes: [{ layer: 'outline' as const, curve: line({ x: 0, y: 0 }, { x, y: 0.8 * x }) }],
  });
  expect(() => sheetsOf({ ...tiny(), strokes: [], letterings: [] })).toThrow(RangeError);
  for (const x of [NaN, Infinity, 1e6]) expect(() => sheetsOf(lined(x))).toThrow(RangeError);
});

it('throws for a square of 100 mm that measures 0, NaN or 300', () => {
  for (const across of [0, NaN, 300]) {
    expect(() => sheetsOf(tiny(), { printed: { across, along: 100 } })).toThrow(RangeError);
  }
});
