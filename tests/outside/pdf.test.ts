/**
 * Programs that are not ours judge the PDFs: qpdf their structure, poppler their pages, fonts, words and, as a picture, the
 * length of what is to be measured. ISO 32000-1:2008, 8.3.2.3: a unit is 1/72 in, so 1 mm is 72/25.4 of them.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { letteringBox } from '../../src/drawing/lettering.js';
import type { Bounds } from '../../src/geometry/measure.js';
import { boundsOfPoints } from '../../src/geometry/measure.js';
import { lay } from '../../src/sheets/lay.js';
import { trulyPrinted } from '../../src/sheets/page.js';
import { tilesOf } from '../../src/sheets/tile.js';
import { fewestTiles, placementsOf } from '../../src/sheets/tiling.js';
import { paperNames, paperSizes } from '../../src/sheets/paper.js';
import type { SheetOptions } from '../../src/sheets/sheets.js';
import { toSheets } from '../../src/sheets/sheets.js';
import type { Sheet } from '../../src/sheets/sheet.js';
import { toPdf } from '../../src/writers/pdf.js';
import { big, drawings, longAndThin, round, tiny } from '../sheets/synthetic.js';
import type { Raster } from './pdf-programs.js';
import { darkRuns, rasterOf, run, saved } from './pdf-programs.js';

const font = new Uint8Array(
  readFileSync(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')),
);
const titleBlock = {
  owner: 'Invented cooperage',
  number: 'T-1',
  date: '2026-01-31',
  title: 'Trial piece',
  subtitle: 'Fässchen, 10 l',
  creator: 'Nobody',
  approved: 'No one',
};

interface Printed {
  readonly sheets: readonly Sheet[];
  readonly path: string;
}

async function printed(drawing: Drawing, options: Partial<SheetOptions> = {}): Promise<Printed> {
  const sheets = toSheets(drawing, { paper: 'a4', units: 'mm', titleBlock, ...options });
  return { sheets, path: saved(await toPdf(sheets, { title: 'Trial ünd test', font })) };
}

describe.each(Object.entries(drawings))('%s', (_, make) => {
  it('is sound to qpdf on every paper', async () => {
    for (const paper of paperNames) {
      const { path } = await printed(make(), { paper });
      expect(run('qpdf', '--check', path)).toContain('No syntax or stream encoding errors found');
    }
  });
});

describe('pdfinfo', () => {
  it('finds the pages, their size, the title, and no script', async () => {
    for (const paper of ['a4', 'a0', 'letter', 'legal'] as const) {
      const { path, sheets } = await printed(longAndThin(), { paper });
      const info = run('pdfinfo', '-f', '1', '-l', '999', path);
      expect(info).toContain('Trial ünd test');
      expect(info).toMatch(new RegExp(`Pages: +${sheets.length}\n`));
      expect(info).toMatch(/JavaScript: +no/);
      const sizes = [...info.matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+) pts/g)];
      expect(sizes).toHaveLength(sheets.length);
      for (const [, width, height] of sizes) {
        const sides = [Number(width), Number(height)].map((side) => (side * 25.4) / 72);
        sides.sort((a, b) => a - b);
        // pdfinfo prints six digits
        expect(sides[0]!).toBeCloseTo(paperSizes[paper].width, 2);
        expect(sides[1]!).toBeCloseTo(paperSizes[paper].height, 2);
      }
    }
  });

  it('finds the preference for no scaling in the print dialogue', async () => {
    const { path } = await printed(tiny());
    const unpacked = run('qpdf', '--qdf', '--object-streams=disable', path, '-');
    expect(unpacked).toMatch(/\/ViewerPreferences (<<\s*|\d+ 0 R)/);
    expect(unpacked).toMatch(/\/PrintScaling \/None/);
  });
});

it('pdffonts finds one font, embedded, a subset, with a table of characters', async () => {
  const { path } = await printed(round());
  const rows = run('pdffonts', path).trim().split('\n').slice(2);
  expect(rows).toHaveLength(1);
  expect(rows[0]).toMatch(/^[A-Z]{6}\+DejaVuSans +CID TrueType +Identity-H +yes yes yes/);
});

it('pdftotext finds the words of every sheet', async () => {
  const { path, sheets } = await printed(longAndThin());
  sheets.forEach(({ content, furniture }, i) => {
    const page = String(i + 1);
    const found = run('pdftotext', '-f', page, '-l', page, path, '-').replaceAll(/\s+/g, '');
    for (const { text } of [...content, furniture].flatMap(({ letterings }) => letterings)) {
      expect(found).toContain(text.replaceAll(/\s+/g, ''));
    }
  });
});

const dpi = 300;
const pixels = (millimetres: number) => (millimetres * dpi) / 25.4;

const rowAt = (raster: Raster, y: number) =>
  Array.from({ length: raster.width }, (_, x) => raster.at(x, Math.round(y)));
const columnAt = (raster: Raster, x: number) =>
  Array.from({ length: raster.height }, (_, y) => raster.at(Math.round(x), y));

/** Width and height in pixels of the 100 mm square, found by its sides in the picture of the page. */
function squareIn(
  { furniture, height, correction, width }: Sheet,
  raster: Raster,
): [number, number] {
  const square = furniture.strokes.find(
    ({
      curve: {
        closed,
        vertices: [a, b, c],
      },
    }) => {
      const isSide = (from = a!, to = b!) =>
        Math.abs(Math.hypot(to.x - from.x, to.y - from.y) - 100) < 1e-9;
      return closed && isSide(a, b) && isSide(b, c);
    },
  )!;
  const [corner] = square.curve.vertices;
  // a place inside, where no lettering is, tells in which row and column to look
  const inside = { x: corner!.x + 6, y: corner!.y + 92 };
  const x = width / 2 + correction.x * (inside.x - width / 2);
  const y = height / 2 + correction.y * (inside.y - height / 2);
  const gap = (runs: { middle: number }[], at: number) => {
    const before = runs.filter(({ middle }) => middle < at).at(-1)!;
    const after = runs.find(({ middle }) => middle > at)!;
    return after.middle - before.middle;
  };
  const column = pixels(x);
  const row = pixels(height - y);
  return [gap(darkRuns(rowAt(raster, row)), column), gap(darkRuns(columnAt(raster, column)), row)];
}

describe('the picture of a page at 300 dpi', () => {
  it.each([
    ['on one sheet', tiny, 'a4'],
    ['on the cover of a set', longAndThin, 'a4'],
    ['on the cover of a set of Letter', big, 'letter'],
    ['on a sheet of its own size', round, 'full'],
  ] as const)('shows the square of 100 mm %s', async (_, make, paper) => {
    const { path, sheets } = await printed(make(), { paper });
    const [across, along] = squareIn(sheets[0]!, rasterOf(path, 1, dpi));
    expect(Math.abs(across - pixels(100))).toBeLessThan(1);
    expect(Math.abs(along - pixels(100))).toBeLessThan(1);
  });

  it('shows a square that a printer of 99 and 101 % makes true', async () => {
    const { path, sheets } = await printed(longAndThin(), { printed: { across: 99, along: 101 } });
    const [across, along] = squareIn(sheets[0]!, rasterOf(path, 1, dpi));
    expect(Math.abs(across * 0.99 - pixels(100))).toBeLessThan(1);
    expect(Math.abs(along * 1.01 - pixels(100))).toBeLessThan(1);
  });

  it('shows the piece at its true length and place', async () => {
    const { path, sheets } = await printed(tiny());
    const raster = rasterOf(path, 1, dpi);
    const { window } = sheets[0]!.content[0]!;
    const row = rowAt(raster, pixels(sheets[0]!.height - (window.minY + 8)));
    const sides = darkRuns(row).filter(
      ({ middle }) => middle > pixels(window.minX - 1) && middle < pixels(window.maxX + 1),
    );
    expect(sides).toHaveLength(2);
    expect(Math.abs(sides[1]!.middle - sides[0]!.middle - pixels(60))).toBeLessThan(1);
    expect(Math.abs(sides[0]!.middle - pixels(window.minX + 0.5))).toBeLessThan(1);
  });

  it('shows nothing in the margins', async () => {
    const { path, sheets } = await printed(big());
    for (const page of [1, 2, sheets.length]) {
      const raster = rasterOf(path, page, 60);
      const margin = Math.floor((9.4 * 60) / 25.4);
      for (let x = 0; x < raster.width; x++) {
        for (let y = 0; y < margin; y++) {
          expect(raster.at(x, y) + raster.at(x, raster.height - 1 - y)).toBe(510);
        }
      }
      for (let y = 0; y < raster.height; y++) {
        for (let x = 0; x < margin; x++) {
          expect(raster.at(x, y) + raster.at(raster.width - 1 - x, y)).toBe(510);
        }
      }
    }
  });
});

describe('tiles joined as pictures', () => {
  it('show every dark pixel of the sheet of its own size', async () => {
    const drawing = round();
    const tiling = fewestTiles(placementsOf(drawing), paperSizes.a4, trulyPrinted, 'mm');
    expect(tiling.laid.bounds).toEqual(lay(drawing).bounds);
    const set = await printed(drawing);
    const first = set.sheets.findIndex(({ content }) => content.length > 0);
    const tiles = tilesOf(tiling).map(({ window }, i) => {
      const sheet = set.sheets[first + i]!;
      return { window, look: lookAt(rasterOf(set.path, first + i + 1, 60), 60, sheet, window) };
    });
    const whole = await printed(drawing, { paper: 'full' });
    const { bounds } = tiling.laid;
    const isDark = lookAt(rasterOf(whole.path, 1, 60), 60, whole.sheets[0]!, bounds);
    let dark = 0;
    const missing: string[] = [];
    for (let x = bounds.minX; x < bounds.maxX; x += 0.4) {
      for (let y = bounds.minY; y < bounds.maxY; y += 0.4) {
        if (!isDark(x, y, 0, 100) || isLettered(drawing, x, y)) continue;
        dark += 1;
        const shown = tiles.some(({ window, look }) => isIn(window, x, y) && look(x, y, 1, 220));
        if (!shown) missing.push(`${x.toFixed(1)} ${y.toFixed(1)}`);
      }
    }
    expect(dark).toBeGreaterThan(5000);
    expect(missing).toEqual([]);
  });
});

/** Whether a pixel is darker than the threshold at a place of the drawing, or so many pixels from it. */
function lookAt(raster: Raster, resolution: number, sheet: Sheet, window: Bounds) {
  const { minX, minY } = sheet.content[0]!.window;
  return (x: number, y: number, within: number, threshold: number): boolean => {
    const column = Math.floor(((x - window.minX + minX) * resolution) / 25.4);
    const row = Math.floor(((sheet.height - (y - window.minY + minY)) * resolution) / 25.4);
    for (let dx = -within; dx <= within; dx++) {
      for (let dy = -within; dy <= within; dy++) {
        if (raster.at(column + dx, row + dy) < threshold) return true;
      }
    }
    return false;
  };
}

/** Lettering may have been moved: only lines are compared. */
function isLettered({ letterings }: Drawing, x: number, y: number): boolean {
  return letterings.some((each) => isIn(boundsOfPoints(letteringBox(each))!, x, y));
}

function isIn({ minX, maxX, minY, maxY }: Bounds, x: number, y: number): boolean {
  return x >= minX && x <= maxX && y >= minY && y <= maxY;
}
