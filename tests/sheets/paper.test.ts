import { describe, expect, it } from 'vitest';
import { framedPage, framedPaper, plainPage, trulyPrinted } from '../../src/sheets/page.js';
import { paperSizes } from '../../src/sheets/paper.js';

describe('paper', () => {
  // ISO 216:2007, A series: each size is half of the one before, its sides in the ratio of the square root of two
  it('of the A series halves from size to size, to the millimetre below', () => {
    const series = [paperSizes.a0, paperSizes.a1, paperSizes.a2, paperSizes.a3, paperSizes.a4];
    expect(paperSizes.a0).toEqual({ width: 841, height: 1189 });
    series.slice(1).forEach(({ width, height }, i) => {
      expect(height).toBe(series[i]!.width);
      expect(width).toBe(Math.floor(series[i]!.height / 2));
      expect(height / width).toBeCloseTo(Math.SQRT2, 2);
    });
  });

  it('of North America is whole and half inches', () => {
    const inches = [paperSizes.letter, paperSizes.legal, paperSizes.tabloid].map(
      ({ width, height }) => [width / 25.4, height / 25.4].map((side) => side.toFixed(9)),
    );
    expect(inches.map((sides) => sides.map(Number))).toEqual([
      [8.5, 11],
      [8.5, 14],
      [11, 17],
    ]);
  });
});

describe('a framed page', () => {
  // ISO 5457:1999, drawing spaces (from memory), upright for A4 and sideways for the others
  it.each([
    ['a4', 'upright', 180, 277],
    ['a3', 'sideways', 390, 277],
    ['a2', 'sideways', 564, 400],
    ['a1', 'sideways', 811, 574],
    ['a0', 'sideways', 1159, 821],
  ] as const)('of %s %s has the drawing space of ISO 5457', (paper, lying, width, height) => {
    const { area } = framedPage(paperSizes[paper], lying, trulyPrinted);
    expect([area.maxX - area.minX, area.maxY - area.minY]).toEqual([width, height]);
    expect(area.minX).toBe(20);
  });

  it('is made for a drawing space in whole millimetres', () => {
    expect(framedPaper({ width: 1000.2, height: 300 })).toEqual({ width: 1031, height: 320 });
  });
});

describe('a page for a printer that is not true', () => {
  const { a4 } = paperSizes;

  it('stretches by what the square lacks, across the paper and along it', () => {
    const printed = { across: 99, along: 98 };
    const upright = plainPage(a4, 'upright', printed);
    expect([upright.correction.x, upright.correction.y]).toEqual([100 / 99, 100 / 98]);
    const sideways = plainPage(a4, 'sideways', printed);
    expect([sideways.correction.x, sideways.correction.y]).toEqual([100 / 98, 100 / 99]);
    expect([upright.across, sideways.across]).toEqual(['x', 'y']);
  });

  it('keeps the margins in the file where it stretches, and on paper where it shrinks', () => {
    const stretched = plainPage(a4, 'upright', { across: 95, along: 100 });
    const leftInTheFile = 105 + (100 / 95) * (stretched.area.minX - 105);
    expect(leftInTheFile).toBeCloseTo(10, 9);
    const shrunk = plainPage(a4, 'upright', { across: 105, along: 100 });
    expect(shrunk.area.minX).toBe(10);
    expect(shrunk.area.maxX).toBe(200);
  });
});
