import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawingBounds } from '../../src/drawing/bounds.js';
import type { Part } from '../../src/drawing/build.js';
import { merge, strokes } from '../../src/drawing/build.js';
import { dimensionLine } from '../../src/drawing/dimension.js';
import { textWidth } from '../../src/drawing/lettering.js';
import { overlaps } from '../../src/drawing/overlap.js';
import { line } from '../../src/geometry/curve.js';

const at = (x: number, y: number) => ({ x, y });
const ends = (part: Part) =>
  part.strokes.map(({ curve }) => curve.vertices.map(({ x, y }) => [round(x), round(y)]));
const round = (value: number) => Math.round(value * 1e6) / 1e6 + 0;

describe('a dimension line', () => {
  it('has extension lines that start clear of the piece and run past the line', () => {
    const [first, second, main] = ends(
      dimensionLine('80.0', at(0, 0), at(80, 5), at(30, -15), { angle: 0 }),
    );
    expect(first).toEqual([
      [0, -1],
      [0, -16.5],
    ]);
    expect(second).toEqual([
      [80, 4],
      [80, -16.5],
    ]);
    expect(main).toEqual([
      [0, -15],
      [80, -15],
    ]);
  });

  it('has arrowheads of 30 degrees that point outwards, at its ends', () => {
    const [, , , left, right] = ends(dimensionLine('80', at(0, 0), at(80, 0), at(0, -15)));
    expect(left![1]).toEqual([0, -15]);
    expect(right![1]).toEqual([80, -15]);
    expect(left![0]![0]).toBeCloseTo(3, 6);
    const [a, tip, b] = left!.map(([x, y]) => ({ x: x!, y: y! }));
    const angle = Math.abs(
      Math.atan2(a!.y - tip!.y, a!.x - tip!.x) - Math.atan2(b!.y - tip!.y, b!.x - tip!.x),
    );
    expect((angle * 180) / Math.PI).toBeCloseTo(30, 4);
  });

  it('carries its text above the middle', () => {
    const { letterings } = dimensionLine('80', at(0, 0), at(80, 0), at(0, -15));
    const [text] = letterings;
    expect(text!.at.x + textWidth('80', 3.5) / 2).toBeCloseTo(40, 9);
    expect(text!.at.y).toBeGreaterThan(-15 + 1);
  });

  it('without room for the arrows has them outside, pointing inwards, the text still between', () => {
    const part = dimensionLine('8', at(0, 0), at(7, 0), at(0, -15));
    const [, , main, left] = ends(part);
    expect(main).toEqual([
      [-6, -15],
      [13, -15],
    ]);
    expect(left![0]![0]).toBeCloseTo(-3, 6);
    const { at: start } = part.letterings[0]!;
    expect(start.x).toBeGreaterThan(0);
    expect(start.x + textWidth('8', 3.5)).toBeLessThan(7);
  });

  it('without room for the text has it beyond the far end, over a longer line', () => {
    const part = dimensionLine('4.25 measured', at(0, 0), at(4.25, 0), at(0, -15));
    expect(part.letterings[0]!.at.x).toBeCloseTo(5.25, 9);
    const main = ends(part)[2]!;
    expect(main[1]![0]).toBeCloseTo(5.25 + textWidth('4.25 measured', 3.5), 5);
  });

  it('is read from the bottom or the right, whichever way it is given', () => {
    const angles = [
      [at(0, 0), at(0, 50)],
      [at(0, 50), at(0, 0)],
      [at(50, 0), at(0, 0)],
      [at(0, 0), at(-30, -30)],
    ].map(([from, to]) => dimensionLine('1', from!, to!, at(-9, 9)).letterings[0]!.angle);
    expect(angles[0]).toBeCloseTo(Math.PI / 2, 9);
    expect(angles[1]).toBeCloseTo(Math.PI / 2, 9);
    expect(angles[2]).toBeCloseTo(0, 9);
    expect(angles[3]).toBeCloseTo(Math.PI / 4, 9);
  });

  it('may run through its points, and then has no extension lines', () => {
    expect(dimensionLine('80', at(0, 0), at(80, 0), at(0, 0)).strokes).toHaveLength(3);
  });

  it('never has text on its own lines, or on the edge that it measures from outside it', () => {
    const place = fc.record({
      length: fc.double({ min: 0.5, max: 200, noNaN: true }),
      angle: fc.double({ min: -4, max: 4, noNaN: true }),
      offset: fc.double({ min: 12, max: 60, noNaN: true }),
      side: fc.constantFrom(1, -1),
      text: fc.constantFrom('1', '946.9', '12 1/2″ (317.5)', 'Åg'),
      height: fc.constantFrom(2.5, 3.5, 5),
    });
    fc.assert(
      fc.property(place, ({ length, angle, offset, side, text, height }) => {
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        const to = at(length * cos, length * sin);
        const through = at(-side * offset * sin, side * offset * cos);
        const part = dimensionLine(text, at(0, 0), to, through, { height });
        const edge = strokes('outline', line(at(0, 0), to));
        expect(overlaps(merge(part, edge))).toEqual([]);
      }),
    );
  });

  it('turns with its points: the same size whichever way it lies', () => {
    const level = drawingBounds(dimensionLine('80', at(0, 0), at(80, 0), at(0, 15)));
    const upright = drawingBounds(dimensionLine('80', at(0, 0), at(0, 80), at(-15, 0)));
    expect(upright.maxY - upright.minY).toBeCloseTo(level.maxX - level.minX, 9);
    expect(upright.maxX - upright.minX).toBeCloseTo(level.maxY - level.minY, 9);
  });
});
