import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/measure.js';
import { proofBlock, proofLines } from '../../src/sheets/proof.js';
import type { Ink } from '../../src/sheets/sheet.js';
import { english } from '../../src/sheets/words.en.js';

const lengths = ({ strokes }: Ink) =>
  strokes
    .map(({ curve }) => boundsOf(curve)!)
    .map(({ minX, maxX, minY, maxY }) =>
      [maxX - minX, maxY - minY].map((side) => +side.toFixed(9)),
    );

describe('the proof of scale', () => {
  it('is a square of 100 mm and a bar of 4 in', () => {
    const { ink } = proofBlock({ across: 'x' }, english);
    expect(lengths(ink)).toContainEqual([100, 100]);
    expect(lengths(ink)).toContainEqual([4 * 25.4, 0]);
    expect(ink.letterings.map(({ text }) => text)).toContain('4 in');
  });

  it('calls the direction of the short edge across, however the paper lies', () => {
    const level = (across: 'x' | 'y') =>
      proofBlock({ across }, english).ink.letterings.find(
        ({ text, angle }) => angle === 0 && /^a/.test(text),
      );
    expect(level('x')!.text).toBe('across 100 mm');
    expect(level('y')!.text).toBe('along 100 mm');
  });

  it('at the foot of a sheet is a line of 100 mm, and one of 4 in for inches', () => {
    expect(lengths(proofLines('mm', english).ink)).toContainEqual([100, 0]);
    expect(lengths(proofLines('mm', english).ink)).not.toContainEqual([101.6, 0]);
    expect(lengths(proofLines('in', english).ink)).toContainEqual([101.6, 0]);
  });

  it('takes up no more room than it says', () => {
    for (const block of [
      proofBlock({ across: 'x' }, english),
      proofLines('mm', english),
      proofLines('in', english),
    ]) {
      const { minX, minY, maxX, maxY } = boundsOf(...block.ink.strokes.map(({ curve }) => curve))!;
      expect(Math.min(minX, minY)).toBeGreaterThanOrEqual(0);
      expect(maxX).toBeLessThanOrEqual(block.width);
      expect(maxY).toBeLessThanOrEqual(block.height);
    }
  });
});
