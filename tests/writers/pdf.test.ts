import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/drawing/lettering.js';
import { circle, line, polygon } from '../../src/geometry/curve.js';
import { type paperNames, paperSizes } from '../../src/sheets/paper.js';
import { toSheets } from '../../src/sheets/sheets.js';
import type { Ink, Sheet } from '../../src/sheets/sheet.js';
import { toPdf } from '../../src/writers/pdf.js';
import { round, tiny } from '../sheets/synthetic.js';
import { latin, pageSizes, pagesOf, streamsOf, textsOf, widthsOf } from './pdf-reading.js';

const fontFile = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
const font = new Uint8Array(readFileSync(fontFile));
const options = { title: 'A test', font };

const entry = {
  owner: '',
  number: '',
  date: '',
  title: 'Round',
  subtitle: 'Invented',
  creator: '',
  approved: '',
};
const sheetsOn = (paper: (typeof paperNames)[number]) =>
  toSheets(round(), { paper, units: 'mm', titleBlock: entry });

function sheetOf(ink: Partial<Ink>, more: Partial<Sheet> = {}): Sheet {
  return {
    width: 210,
    height: 297,
    correction: { x: 1, y: 1 },
    content: [],
    furniture: { strokes: [], letterings: [], ...ink },
    ...more,
  };
}

const text = (words: string) => ({
  text: words,
  at: { x: 20, y: 50 },
  height: 3.5,
  align: 'left' as const,
  angle: 0,
});

describe('a PDF', () => {
  it('asks for no print scaling', async () => {
    const file = latin(await toPdf([sheetOf({})], options));
    const [, reference] = /\/ViewerPreferences (\d+) 0 R/.exec(file)!;
    expect(file).toContain(`\n${reference} 0 obj\n<<\n/PrintScaling /None\n>>\nendobj`);
  });

  it('has pages of the size of the paper', async () => {
    for (const paper of ['a4', 'a3', 'letter', 'tabloid'] as const) {
      for (const size of pageSizes(await toPdf(sheetsOn(paper), options))) {
        const sides = [...size].sort((a, b) => a - b);
        expect(sides[0]).toBeCloseTo(paperSizes[paper].width, 4);
        expect(sides[1]).toBeCloseTo(paperSizes[paper].height, 4);
      }
    }
  });

  it('is the same again, whatever was made before with the same font', async () => {
    const fresh = await toPdf(sheetsOn('a4'), { ...options, font: font.slice() });
    await toPdf([sheetOf({ letterings: [text('zyx')] })], options);
    const again = await toPdf(sheetsOn('a4'), options);
    expect(Buffer.compare(fresh, again)).toBe(0);
    expect(latin(again)).not.toMatch(/\/CreationDate(?! \d+ 0 R)|\(D:20/);
  });

  it('is the same, whoever deflates in the same way, and the font is deflated once for all files', async () => {
    const sizes: number[] = [];
    const pack = (bytes: Uint8Array): Uint8Array => {
      sizes.push(bytes.length);
      return deflateSync(bytes);
    };
    const fresh = font.slice();
    for (const word of ['abc', 'xyz']) {
      const sheets = [...sheetsOn('a4'), sheetOf({ letterings: [text(word)] })];
      const own = await toPdf(sheets, options);
      expect(Buffer.compare(await toPdf(sheets, { ...options, font: fresh, pack }), own)).toBe(0);
    }
    expect(sizes.length).toBeGreaterThan(6);
    expect(sizes.filter((size) => size > 20_000)).toHaveLength(1);
  });

  it('carries its title, and its font as a subset', async () => {
    const file = latin(await toPdf([sheetOf({ letterings: [text('abc')] })], options));
    expect(file).toContain('(A test)');
    expect(file).toMatch(/\/BaseFont \/[A-Z]{6}\+DejaVuSans/);
    expect(file).toContain('/FontFile2');
    // the basic letters with their hints; the whole font is twenty times as large
    expect(file.length).toBeLessThan(30_000);
    expect(font.length).toBeGreaterThan(600_000);
  });

  it('draws every word as real text', async () => {
    const sheets = sheetsOn('a4');
    const words = sheets.flatMap(({ content, furniture }) =>
      [...content, furniture].flatMap(({ letterings }) => letterings.map((each) => each.text)),
    );
    expect(textsOf(await toPdf(sheets, options))).toEqual(words);
  });

  it('sets text as wide as drawings measure it, kerned and without ligatures', async () => {
    const words = 'AVATAR Tofu office fi, 225 litres';
    const bytes = await toPdf([sheetOf({ letterings: [text(words)] })], options);
    const [page] = pagesOf(bytes);
    const [, size] = /Tf|\/F1 ([\d.]+) Tf/.exec(page!)!;
    const [, operand] = /\[([^\]]*)\] TJ/.exec(page!)!;
    const widths = widthsOf(bytes);
    const codes = [...operand!.matchAll(/<([0-9a-f]*)>/g)].flatMap(([, hex]) =>
      hex!.match(/.{4}/g)!,
    );
    const kerns = [...operand!.matchAll(/> ([-\d.]+) </g)].map(([, kern]) => Number(kern));
    const thousandths =
      codes.reduce((sum, code) => sum + widths.get(parseInt(code, 16))!, 0) -
      kerns.reduce((sum, kern) => sum + kern, 0);
    expect(codes).toHaveLength([...words].length);
    expect(kerns.some((kern) => kern > 0)).toBe(true);
    expect((thousandths / 1000) * Number(size)).toBeCloseTo(textWidth(words, 3.5), 3);
  });

  it('lets no text become an operator or markup', async () => {
    const hostile = [
      ') Tj ET 0 0 m 9 9 l S (',
      '> ] TJ ET q <',
      '\\) endstream endobj',
      'line\nbreak\r1 0 0 RG',
      '</dc:title> %%EOF \u0000 \u202e',
      'lone \ud800 surrogate',
      '𝔘 Ω → ½ ⌀',
    ];
    const bytes = await toPdf([sheetOf({ letterings: hostile.map(text) })], {
      ...options,
      title: '\\) endstream\nendobj (',
    });
    const [page] = pagesOf(bytes);
    const lines = page!.trim().split('\n').slice(2);
    expect(lines).toHaveLength(hostile.length);
    for (const operators of lines) {
      expect(operators).toMatch(
        /^BT \/F1 [\d.]+ Tf 1 0 0 1 20 50 Tm \[<[0-9a-f]*>( [-\d.]+ <[0-9a-f]*>)*\] TJ ET$/,
      );
    }
    expect(textsOf(bytes)[0]).toBe(hostile[0]);
    const file = latin(bytes);
    expect(file).toContain('\n(\\\\\\) endstreamendobj \\()\nendobj');
    expect(file.match(/\nendstream\n/g)).toHaveLength(streamsOf(bytes).length);
    const titled = await toPdf([sheetOf({})], { ...options, title: 'Fässer ) \u0000 𝔘 \ud800' });
    expect(latin(titled)).toContain('(\u00fe\u00ff\0F\0\u00e4\0s\0s\0e\0r\0 \0\\)\0 \0 \u00d8');
  });
});

describe('a page', () => {
  it('is drawn in millimetres, y upwards, to the micrometre', async () => {
    const path = line({ x: 12.3456, y: 280.0001 }, { x: 1000.00004, y: 1188.9999 });
    const strokes = [{ curve: path, lineType: 'continuous' as const, width: 0.35 }];
    const [page] = pagesOf(
      await toPdf([sheetOf({ strokes }, { width: 841, height: 1189 })], options),
    );
    const lines = page!.trim().split('\n');
    expect(lines.slice(2)).toEqual(['0.35 w [] 0 d', '12.3456 280.0001 m 1000 1188.9999 l', 'S']);
    const [x, y] = onPaper(page!, { x: 1000, y: 1188.9999 });
    expect(x).toBeCloseTo(1000, 3);
    expect(y).toBeCloseTo(1188.9999, 3);
  });

  it('is stretched about its middle for a printer that is not true', async () => {
    const sheet = sheetOf({}, { correction: { x: 100 / 99, y: 100 / 101 } });
    const [page] = pagesOf(await toPdf([sheet], options));
    const [left, low] = onPaper(page!, { x: 55, y: 98.5 });
    const [right, high] = onPaper(page!, { x: 155, y: 198.5 });
    expect(right - left).toBeCloseTo(100 * (100 / 99), 4);
    expect(high - low).toBeCloseTo(100 * (100 / 101), 4);
    expect((left + right) / 2).toBeCloseTo(105, 4);
    expect((low + high) / 2).toBeCloseTo(148.5, 4);
  });

  it('closes closed paths, without drawing their last side twice', async () => {
    const square = polygon(
      [0, 1, 2, 3].map((i) => ({ x: i === 1 || i === 2 ? 9 : 0, y: i > 1 ? 9 : 0 })),
    );
    const strokes = [{ curve: square, lineType: 'continuous' as const, width: 0.5 }];
    const [page] = pagesOf(await toPdf([sheetOf({ strokes })], options));
    expect(page).toContain('0 0 m 9 0 l 9 9 l 0 9 l h\nS');
  });

  it('has dashes in multiples of the line’s width', async () => {
    const curve = line({ x: 0, y: 0 }, { x: 100, y: 0 });
    const strokes = [
      { curve, lineType: 'dashed' as const, width: 0.25 },
      { curve, lineType: 'long-dash-dot' as const, width: 0.25 },
      { curve, lineType: 'continuous' as const, width: 0.25 },
    ];
    const [page] = pagesOf(await toPdf([sheetOf({ strokes })], options));
    const styles = page!.split('\n').filter((operators) => operators.endsWith(' d'));
    expect(styles).toEqual([
      '0.25 w [3 0.75] 0 d',
      '0.25 w [6 0.75 0.125 0.75] 0 d',
      '0.25 w [] 0 d',
    ]);
  });

  it('clips what is placed at its window, and nothing else', async () => {
    const stroke = {
      curve: circle({ x: 0, y: 0 }, 500),
      lineType: 'continuous' as const,
      width: 0.5,
    };
    const window = { minX: 10, minY: 21, maxX: 200, maxY: 287 };
    const at = { x: 5.25, y: -40 };
    const content = [{ strokes: [stroke], letterings: [], at, window }];
    const [page] = pagesOf(
      await toPdf([sheetOf({ letterings: [text('foot')] }, { content })], options),
    );
    const lines = page!.trim().split('\n');
    expect(lines[2]).toBe('q');
    expect(lines[3]).toBe('10 21 190 266 re W n');
    expect(lines[4]).toBe('1 0 0 1 5.25 -40 cm');
    expect(lines.indexOf('Q')).toBe(lines.length - 2);
  });

  it('longer than PDF allows has a larger unit', async () => {
    const bytes = await toPdf([sheetOf({}, { width: 6000, height: 300 })], options);
    expect(latin(bytes)).toContain('/UserUnit 2');
    expect(pageSizes(bytes)[0]![0]).toBeCloseTo(3000, 3);
  });

  it('refuses what is not a number', async () => {
    for (const x of [NaN, Infinity]) {
      const curve = line({ x: 0, y: 0 }, { x, y: 0 });
      const bad = sheetOf({ strokes: [{ curve, lineType: 'continuous', width: 0.5 }] });
      await expect(toPdf([bad], options)).rejects.toThrow(RangeError);
      const astray = sheetOf({ letterings: [{ ...text('a'), at: { x, y: 0 } }] });
      await expect(toPdf([astray], options)).rejects.toThrow(RangeError);
    }
  });
});

it('a gauge on A4 is one page', async () => {
  const sheets = toSheets(tiny(), { paper: 'a4', units: 'mm', titleBlock: entry });
  expect(pagesOf(await toPdf(sheets, options))).toHaveLength(1);
});

/** Where a point of the sheet lies on paper: pdfkit's own matrix, then ours; mm from the lower left. */
function onPaper(page: string, { x, y }: { x: number; y: number }): [number, number] {
  const [outer, inner] = page
    .split('\n')
    .slice(0, 2)
    .map((operators) => operators.replace(' cm', '').split(' ').map(Number));
  const apply = ([a, b, c, d, e, f]: number[], px: number, py: number) =>
    [a! * px + c! * py + e!, b! * px + d! * py + f!] as const;
  const [px, py] = apply(outer!, ...apply(inner!, x, y));
  return [(px / 72) * 25.4, (py / 72) * 25.4];
}
